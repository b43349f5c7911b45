using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention;

/// <summary>Cells remembered of printed tables, or worked out from the equations by another program. They guard against slips and prove nothing outside.</summary>
public sealed class FromMemoryTests
{
    const double In = 25.4, Lb = 4.4482216152605;

    static readonly double[] Gravities = [0.67, 0.55, 0.50, 0.49, 0.46, 0.43, 0.42, 0.37, 0.36, 0.35];

    // NDS 2015 tables 12.2B and 12.2C, from memory, lb/in
    [Theory]
    [InlineData(WoodFixing.WoodScrew, 0.55, 0.164, 141)]
    [InlineData(WoodFixing.WoodScrew, 0.55, 0.190, 164)]
    [InlineData(WoodFixing.WoodScrew, 0.50, 0.138, 98)]
    [InlineData(WoodFixing.WoodScrew, 0.50, 0.164, 117)]
    [InlineData(WoodFixing.WoodScrew, 0.50, 0.190, 135)]
    [InlineData(WoodFixing.WoodScrew, 0.50, 0.216, 154)]
    [InlineData(WoodFixing.WoodScrew, 0.43, 0.164, 86)]
    [InlineData(WoodFixing.WoodScrew, 0.43, 0.190, 100)]
    [InlineData(WoodFixing.SmoothNail, 0.50, 0.131, 32)]
    [InlineData(WoodFixing.SmoothNail, 0.50, 0.148, 36)]
    [InlineData(WoodFixing.SmoothNail, 0.50, 0.162, 40)]
    public void Withdrawal_is_as_remembered(WoodFixing fixing, double g, double inches, double lbPerIn) =>
        Assert.Equal(lbPerIn, NdsWithdrawal.Of(new(fixing, g, inches * In, In)).AllowableN / Lb, tolerance: 0.5);

    // NDS 2015 table 12L, side member 1/2 in, and 12M, steel 0.036 in, from memory, lb
    [Theory]
    [InlineData(6, 0, new[] { 88, 67, 59, 57, 53, 49, 47, 41, 40, 38 })]
    [InlineData(8, 0, new[] { 107, 82, 73, 71, 66, 61, 59, 51, 50, 48 })]
    [InlineData(10, 0, new[] { 130, 101, 90, 87, 82, 75, 73, 64, 63, 60 })]
    [InlineData(12, 0, new[] { 156, 123, 110, 107, 100, 93, 91, 79, 78, 75 })]
    [InlineData(6, 0.036, new[] { 89, 76, 70, 69, 66, 62, 60, 54, 53, 52 })]
    [InlineData(7, 0.036, new[] { 99, 84, 78, 76, 72, 68, 67, 60, 59, 57 })]
    public void Wood_screws_carry_across_as_remembered(int number, double steelIn, int[] lb)
    {
        double nominal = ScrewSteel.NominalMm(number), root = ScrewSteel.RootMm(WoodFixing.WoodScrew, nominal), yield = ScrewSteel.BendingYieldMPa(WoodFixing.WoodScrew, nominal);
        var found = Gravities.Select(g =>
        {
            var wood = DowelBearing.AsTabledMPa(g, root);
            return NdsLateral.Of(new(root, 10 * nominal, steelIn > 0 ? steelIn * In : In / 2, wood, steelIn > 0 ? DowelBearing.ThinSteelMPa : wood, yield) { NominalMm = nominal }).AllowableN / Lb;
        });
        Assert.All(found.Zip(lb), c => Assert.Equal(c.Second, c.First, tolerance: 1));
    }

    // NDS 2005 table 11N, from memory, lb
    [Theory]
    [InlineData(0.131, 97)]
    [InlineData(0.148, 118)]
    public void Nails_carry_across_as_remembered(double inches, double lb)
    {
        double d = inches * In, wood = DowelBearing.AsTabledMPa(0.50, d);
        Assert.Equal(lb, NdsLateral.Of(new(d, 1.5 * In, 1.5 * In, wood, wood, ScrewSteel.BendingYieldMPa(WoodFixing.SmoothNail, d))).AllowableN / Lb, tolerance: 1);
    }

    // worked out by another program
    [Theory]
    [InlineData(8, 0.75, false, 88.1, NdsLateral.Mode.IIIs)]
    [InlineData(10, 0.75, false, 106.3, NdsLateral.Mode.IIIs)]
    [InlineData(8, 1.5, false, 92.0, NdsLateral.Mode.IV)]
    [InlineData(10, 0.048, true, 113.9, NdsLateral.Mode.IIIs)]
    public void Thicknesses_of_a_van_agree_with_another_program(int number, double sideIn, bool isSteel, double lb, NdsLateral.Mode mode)
    {
        double nominal = ScrewSteel.NominalMm(number), root = ScrewSteel.RootMm(WoodFixing.WoodScrew, nominal), wood = DowelBearing.OfMPa(0.50, root); // not rounded, as that program
        var screw = NdsLateral.Of(new(root, 10 * nominal, sideIn * In, wood, isSteel ? DowelBearing.ThinSteelMPa : wood, ScrewSteel.BendingYieldMPa(WoodFixing.WoodScrew, nominal)) { NominalMm = nominal });
        Assert.Equal(lb, screw.AllowableN / Lb, tolerance: 0.1);
        Assert.Equal(mode, screw.Governing);
    }

    // worked out by another program: nail 3.1 mm of 600 MPa, density 350 both, 38 and 37 mm, without rope; screw 6 mm, 60 mm of thread
    [Fact]
    public void Eurocode_agrees_with_another_program()
    {
        double bearing = Ec5Embedment.TimberMPa(350, 3.1), moment = Ec5Embedment.YieldMomentNmm(Ec5Embedment.Shank.Round, 600, 3.1);
        Assert.Equal(20.44, bearing, tolerance: 0.005);
        Assert.Equal(3_410.5, moment, tolerance: 0.05);
        var nail = Ec5Lateral.Of(new(3.1, 38, 37, bearing, bearing, moment));
        Assert.Equal([2_407.8, 2_344.4, 984.4, 934.5, 914.6, 756.0], nail.ByModeN.OrderBy(m => m.Key).Select(m => Math.Round(m.Value, 1)));
        Assert.Equal(Ec5Lateral.Mode.F, nail.Governing);

        var screw = Ec5Axial.Of(new(6, 4, 60, 350));
        Assert.Equal(15.29, screw.StrengthMPa, tolerance: 0.005);
        Assert.Equal(4_128, screw.CharacteristicN, tolerance: 0.5);
        Assert.Empty(screw.OutsideRange);
    }

    // worked out by another program: 4.8 mm screw in 0.8 mm of 270 MPa
    [Fact]
    public void Pull_out_of_van_sheet_agrees_with_another_program()
    {
        Assert.Equal(881, SheetScrewAisi.PullOutN(SheetScrewAisi.Edition.S100Of2012, 0.8, 270, 4.8), tolerance: 0.5);
        Assert.Equal(771, SheetScrewAisi.PullOutN(SheetScrewAisi.Edition.S100Of2016, 0.8, 270, 4.8), tolerance: 0.6);
    }

    // worked out: 1 kg at 30 mph; 50 km/h; stop within 0.1 m; a drawer of 5 kg
    [Fact]
    public void Energy_and_drawers_agree_with_another_program()
    {
        Assert.Equal(89.9, LooseEnergy.Of(1, 13.4112).EnergyJ, tolerance: 0.05);
        Assert.Equal(96.5, LooseEnergy.Of(1, 50 / 3.6).EnergyJ, tolerance: 0.05);
        Assert.Equal(92, Pulse.MeanG(13.4112, 100), tolerance: 0.5);
        Assert.Equal(98, Pulse.MeanG(50 / 3.6, 100), tolerance: 0.5);
        Assert.Equal(441.3, LatchDemand.ForceN(new(5), 9), tolerance: 0.05);
    }
}
