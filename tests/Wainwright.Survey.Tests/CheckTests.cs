using CsCheck;

namespace Wainwright.Survey.Tests;

public sealed class CheckTests
{
    [Theory]
    [InlineData(10, 0, 11, 0, Verdict.Holds)]
    [InlineData(10, 0, 10, 0, Verdict.Holds)]
    [InlineData(10, 0, 9, 0, Verdict.FallsShort)]
    [InlineData(10, 1, 11, 1, Verdict.CannotTell)]
    [InlineData(10, 0.4, 11, 0.5, Verdict.Holds)]
    public void A_margin_that_spans_zero_cannot_tell(double demand, double demandDoubt, double capacity, double capacityDoubt, Verdict verdict) =>
        Assert.Equal(verdict, Check.Judge(Span.Of(demand, demandDoubt), Span.Of(capacity, capacityDoubt)));

    [Fact]
    public void Margin_and_verdict_say_the_same() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[0, 20], Gen.Double[1, 100], Gen.Double[0, 20]).Sample((d, dd, c, cd) =>
        {
            var (demand, capacity) = (Span.Of(d + 20, dd), Span.Of(c + 20, cd));
            var margin = Check.MarginOf(demand, capacity)!.Value;
            Assert.True(margin.Low <= margin.Likely && margin.Likely <= margin.High);
            Assert.Equal(Check.Judge(demand, capacity), margin.Low >= 0 ? Verdict.Holds : margin.High < 0 ? Verdict.FallsShort : Verdict.CannotTell);
        });

    [Fact]
    public void Without_a_demand_there_is_no_margin() => Assert.Null(Check.MarginOf(Span.Exactly(0), Span.Exactly(5)));

    [Fact]
    public void More_doubt_never_makes_a_pass() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[1, 100], Gen.Double[0, 10], Gen.Double[0, 10]).Sample((d, c, doubt, more) =>
        {
            if (Check.Judge(Span.Exactly(d), Span.Of(c, doubt + more)) == Verdict.Holds)
                Assert.Equal(Verdict.Holds, Check.Judge(Span.Exactly(d), Span.Of(c, doubt)));
        });

    [Fact]
    public void Independent_doubts_add_as_squares()
    {
        var sum = Span.SumOfIndependent([Span.Of(10, 3), Span.Of(20, 4)]);
        Assert.Equal(new(25, 30, 35), sum);
    }

    [Fact]
    public void Times_a_negative_number_the_ends_change_places() => Assert.Equal(new(-6, -4, -2), new Span(1, 2, 3).Times(-2));
}
