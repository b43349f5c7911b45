using Wainwright.Methods.Electrics;

namespace Wainwright.Published.Electrics;

public sealed class ConductorResistanceTests
{
    // Source:    IEC 60228 temperature correction, R20 = Kt·R(t): 5 °C 1.064, 10 1.042, 30 0.962, 40 0.926, 50 0.893, 70 0.833, 90 0.781.
    // Seen:      printed by a cable supplier (address withheld).
    // Tolerance: that table is 250/(230 + t), the method 254.5/(234.5 + t): two published forms that part by up to 0.4 %; 0.5 %.
    [Theory]
    [InlineData(5, 1.064)]
    [InlineData(10, 1.042)]
    [InlineData(30, 0.962)]
    [InlineData(40, 0.926)]
    [InlineData(50, 0.893)]
    [InlineData(70, 0.833)]
    [InlineData(90, 0.781)]
    public void Warm_copper_resists_as_the_correction_table_says(double copperC, double toTwenty)
    {
        static double At(double c) => ConductorResistance.Of(new(4, ConductorResistance.Make.FinePlain, c)).OhmPerKm;
        Assert.Equal(toTwenty, At(20) / At(copperC), tolerance: 0.005 * toTwenty);
    }
}
