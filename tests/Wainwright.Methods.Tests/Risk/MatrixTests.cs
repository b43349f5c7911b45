using Wainwright.Methods;
using Wainwright.Methods.Risk;

namespace Wainwright.Methods.Tests.Risk;

public sealed class MatrixTests
{
    static readonly MilStd882.Severity[] WorstFirst = [MilStd882.Severity.Catastrophic, MilStd882.Severity.Critical, MilStd882.Severity.Marginal, MilStd882.Severity.Negligible];

    [Theory]
    [InlineData(MilStd882.Severity.Catastrophic, MilStd882.Probability.Occasional, MilStd882.Level.High)]
    [InlineData(MilStd882.Severity.Catastrophic, MilStd882.Probability.Remote, MilStd882.Level.Serious)]
    [InlineData(MilStd882.Severity.Critical, MilStd882.Probability.Remote, MilStd882.Level.Medium)]
    [InlineData(MilStd882.Severity.Negligible, MilStd882.Probability.Frequent, MilStd882.Level.Medium)]
    [InlineData(MilStd882.Severity.Catastrophic, MilStd882.Probability.Eliminated, MilStd882.Level.Eliminated)]
    public void Cells_are_those_of_the_standard(MilStd882.Severity severity, MilStd882.Probability probability, MilStd882.Level level) =>
        Assert.Equal(level, MilStd882.Of(severity, probability).Risk);

    [Fact]
    public void Worse_or_likelier_is_never_a_lower_level() =>
        Assert.All(Enum.GetValues<MilStd882.Probability>(), p =>
        {
            var row = WorstFirst.Select(s => MilStd882.Of(s, p).Risk).ToList();
            Assert.Equal(row.OrderDescending(), row);
            if (p > MilStd882.Probability.Eliminated)
                Assert.All(WorstFirst, s => Assert.True(MilStd882.Of(s, p).Risk >= MilStd882.Of(s, p - 1).Risk));
        });

    [Fact]
    public void The_one_remembered_cell_says_so()
    {
        Assert.Equal(Provenance.FromMemory, MilStd882.Of(MilStd882.Severity.Marginal, MilStd882.Probability.Improbable).How);
        Assert.Equal(Provenance.Quoted, MilStd882.Of(MilStd882.Severity.Marginal, MilStd882.Probability.Remote).How);
    }

    [Fact]
    public void The_product_table_never_falls_with_severity_or_probability()
    {
        double[] rising = [0, 5e-7, 5e-6, 5e-5, 5e-4, 5e-3, 0.05, 0.3, 0.9];
        Assert.All(Enumerable.Range(1, 4), s => Assert.All(rising.Zip(rising.Skip(1)), pair =>
            Assert.True(EuProductRisk.Of(s, pair.Second).Risk >= EuProductRisk.Of(s, pair.First).Risk)));
        Assert.All(rising, p => Assert.All(Enumerable.Range(1, 3), s => Assert.True(EuProductRisk.Of(s + 1, p).Risk >= EuProductRisk.Of(s, p).Risk)));
    }

    [Fact]
    public void Only_the_cell_of_the_worked_example_counts_as_seen()
    {
        Assert.Equal(Provenance.Quoted, EuProductRisk.Of(1, 1.0 / 500).How);
        Assert.Equal(Provenance.FromMemory, EuProductRisk.Of(2, 1.0 / 500).How);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MilStd882.Of((MilStd882.Severity)5, MilStd882.Probability.Remote));
        Assert.Throws<ArgumentOutOfRangeException>(() => EuProductRisk.Of(0, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => EuProductRisk.Of(1, 1.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => EuProductRisk.Probability(0.5, 2));
    }
}
