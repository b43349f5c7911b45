using Wainwright.Methods.Risk;

namespace Wainwright.Published.Risk;

public sealed class EuProductRiskTests
{
    // Source:    Decision 2010/15/EU, part IV, worked example: 1/50 × 1/10 × 1 = 1/500, above 1/1 000, severity 1: low risk.
    // Seen:      legislation.gov.uk.
    // Tolerance: a level is right or wrong: none.
    [Fact]
    public void The_guidelines_own_example_comes_out_low()
    {
        var probability = EuProductRisk.Probability(1.0 / 50, 1.0 / 10, 1);
        Assert.Equal(1.0 / 500, probability, tolerance: 1e-12);
        Assert.Equal(EuProductRisk.Level.Low, EuProductRisk.Of(1, probability).Risk);
    }
}
