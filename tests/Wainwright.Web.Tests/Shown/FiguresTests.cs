using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Shown;

public sealed class FiguresTests
{
    [Theory]
    [InlineData("2.9", Measures.Metric, 2.9)]
    [InlineData("2,9 kg", Measures.Us, 2.9)]
    [InlineData("450 g", Measures.Metric, 0.45)]
    [InlineData("10", Measures.Us, 4.5359237)]
    [InlineData("10 lbs", Measures.Metric, 4.5359237)]
    public void A_mass_is_read_in_either_hand(string text, Measures bare, double kg) => Assert.Equal(kg, Figures.Kg(text, bare)!.Value, 9);

    [Theory]
    [InlineData("heavy")]
    [InlineData("-3")]
    [InlineData("")]
    [InlineData("1e3")]
    public void What_is_no_mass_is_none(string text) => Assert.Null(Figures.Kg(text, Measures.Metric));

    [Fact]
    public void Lengths_and_masses_are_shown_in_the_units_asked_for()
    {
        Assert.Equal("812.5 mm", Measures.Metric.Length(812.5));
        Assert.Equal("32 in", Measures.Us.Length(812.8));
        Assert.Equal("2.9 kg", Measures.Metric.Mass(2.9));
        Assert.Equal("6.4 lb", Measures.Us.Mass(2.9));
    }
}
