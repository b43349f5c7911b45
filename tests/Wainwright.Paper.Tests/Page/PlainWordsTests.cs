using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

public sealed class PlainWordsTests
{
    [Theory]
    [InlineData(27.5, "27.5")]
    [InlineData(0.0421, "0.042")]
    [InlineData(13145.4, "13\u202F145")]
    [InlineData(-3, "-3")]
    public void Numbers_keep_what_the_reader_can_use(double value, string read) => Assert.Equal(read, PlainWords.Number(value));

    [Fact]
    public void A_reading_carries_its_unit_its_doubt_and_or_more()
    {
        var reading = SmallJob.Job.Readings[0] with { Value = new Measured(28, 2), AtLeast = true };
        Assert.Equal("at least 28 ± 2 %", PlainWords.Of(reading));
    }

    [Fact]
    public void Money_names_its_currency_or_says_that_there_is_none()
    {
        Assert.Equal("1\u202F240 EUR", PlainWords.Money(1240.4m, "EUR"));
        Assert.Contains("no currency given", PlainWords.Money(5, null), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_word_of_the_model_has_a_plain_one_of_its_own()
    {
        Assert.Distinct(Enum.GetValues<Known>().Select(PlainWords.Of));
        Assert.Distinct(Enum.GetValues<Use>().Select(PlainWords.Of));
        Assert.Distinct(Enum.GetValues<Urgency>().Select(PlainWords.Of));
        Assert.Distinct(Enum.GetValues<Medium>().Select(PlainWords.Of));
        Assert.Distinct(Enum.GetValues<Severity>().Select(PlainWords.Of));
        Assert.Distinct(Enum.GetValues<Likelihood>().Select(PlainWords.Of));
    }
}
