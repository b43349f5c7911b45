using CsCheck;
using Wainwright.Methods.Weight;

namespace Wainwright.Methods.Tests.Weight;

public sealed class CentreHeightTests
{
    static readonly Gen<(double Lift, double Height, double FrontPart)> Case = Gen.Select(Gen.Double[600, 1_500], Gen.Double[50, 1_200], Gen.Double[0.35, 0.65]);

    [Fact]
    public void The_two_published_routes_agree() =>
        Case.Sample(c =>
        {
            const double b = 3_665, m = 2_800;
            var level = c.FrontPart * m;
            var tan = c.Lift / Math.Sqrt((b * b) - (c.Lift * c.Lift));
            // the front is raised: its load falls by the height above the wheel centres
            var raised = level - (c.Height * m * tan / b);
            var turning = CentreHeightByTurning.Of(new(b, level, raised, m, c.Lift)).AboveWheelCentresMm;
            // the scale route weighs the axle that stays down: here the rear
            var lifting = CentreHeightByLifting.Of(new(b, m - level, m - raised, m, c.Lift, 0)).CentreHeightMm;
            Assert.Equal(c.Height, turning, tolerance: 1e-6);
            Assert.Equal(lifting, turning, tolerance: 1e-6);
        });

    [Fact]
    public void A_lift_of_600_mm_gives_the_height_and_its_doubt()
    {
        // regression: front 1480 -> 1532 kg of 2800 kg
        var lift = CentreHeightByLifting.Of(new(3_665, 1_480, 1_532, 2_800, 600, 345));
        Assert.Equal(755.2, lift.CentreHeightMm, tolerance: 0.5);
        Assert.Equal(7.9, lift.MmPerKgOfScaleError, tolerance: 0.05);
        Assert.Empty(lift.OutsideRange);
    }

    [Fact]
    public void A_small_lift_leaves_the_range() => Assert.NotEmpty(CentreHeightByLifting.Of(new(3_665, 1_480, 1_500, 2_800, 300, 345)).OutsideRange);

    [Fact]
    public void A_lift_as_long_as_the_wheelbase_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CentreHeightByLifting.Of(new(3_000, 1_480, 1_500, 2_800, 3_000, 345)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CentreHeightByTurning.Of(new(3_000, 1_480, 1_500, 2_800, 3_000)));
    }
}
