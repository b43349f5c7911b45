using Wainwright.Methods.Retention;

namespace Wainwright.Published.Retention;

public sealed class LateralTests
{
    // Source:    AWC solved examples, nail in single shear: 0.148 in, bending yield 90 ksi, specific gravity 0.50 both, side 3/4 in, main 2 1/4 in: 467.488 N, mode IIIs.
    // Seen:      as the reference number of a test named after that example in an open program (github xcfem/xc); the AWC print was not opened.
    // Tolerance: 0.01 N, as the test carries it.
    [Fact]
    public void A_nail_carries_across_as_the_solved_example_says()
    {
        var bearing = DowelBearing.OfMPa(0.50, 0.148 * Us.In);
        var nail = NdsLateral.Of(new(0.148 * Us.In, 2.25 * Us.In, 0.75 * Us.In, bearing, bearing, 90 * Us.Ksi));
        Assert.Equal(467.488, nail.AllowableN, tolerance: 0.01);
        Assert.Equal(NdsLateral.Mode.IIIs, nail.Governing);
    }

    // Source:    NDS 2005, table 11N: 16d common nail 0.162 in, side member 1 1/2 in, specific gravity 0.50: 141 lb; with 1.25 of
    //            1.62 in of penetration the factor is 0.772 and 1.6 × 141 × 0.772 = 174 lb.
    // Seen:      both quoted in an engineers' thread (seaintarchive.org 2009c/914).
    // Tolerance: printed to the pound; the tables round the bearing strength to 50 psi.
    [Fact]
    public void A_sixteen_penny_nail_carries_across_as_tabled_and_less_when_it_is_short()
    {
        double d = 0.162 * Us.In, bearing = DowelBearing.AsTabledMPa(0.50, d);
        var nail = NdsLateral.Of(new(d, 1.62 * Us.In, 1.5 * Us.In, bearing, bearing, ScrewSteel.BendingYieldMPa(WoodFixing.SmoothNail, d)));
        Assert.Equal(141, nail.AllowableN / Us.Lb, tolerance: 1);
        var short125 = NdsPenetration.Factor(WoodFixing.SmoothNail, d, 1.25 * Us.In);
        Assert.Equal(0.772, short125, tolerance: 0.0005);
        Assert.Equal(174, 1.6 * short125 * nail.AllowableN / Us.Lb, tolerance: 1);
    }

    // Source:    NDS 2015, table 12K, lag screws with steel side plate, lb, load along and across the grain; columns are specific gravities.
    // Seen:      the table's page, scanned in a building permit of Everett WA (lfportal.everettwa.gov, doc 1614580, p. 114); the first cell of the third row cannot be read.
    // Tolerance: printed to ten pounds: compared after rounding to ten.
    [Theory]
    [InlineData(0.075, 1.0 / 4, new[] { 0.67, 0.55, 0.50, 0.49, 0.46, 0.43, 0.42, 0.37, 0.36 }, new[] { 170, 160, 150, 150, 150, 140, 140, 130, 130 }, new[] { 130, 120, 110, 110, 100, 100, 100, 90, 90 })]
    [InlineData(0.075, 3.0 / 8, new[] { 0.67, 0.55, 0.50, 0.49, 0.46, 0.43, 0.42, 0.37, 0.36, 0.35 }, new[] { 220, 200, 200, 190, 190, 180, 180, 170, 170, 170 }, new[] { 160, 140, 130, 130, 120, 120, 120, 110, 100, 100 })]
    [InlineData(0.105, 1.0 / 4, new[] { 0.55, 0.50, 0.49, 0.46, 0.43, 0.42, 0.37, 0.36, 0.35 }, new[] { 170, 160, 160, 160, 150, 150, 140, 140, 140 }, new[] { 130, 120, 120, 110, 110, 110, 100, 100, 90 })]
    [InlineData(0.105, 3.0 / 8, new[] { 0.67, 0.55, 0.50, 0.49, 0.46, 0.43, 0.42, 0.37 }, new[] { 230, 210, 200, 200, 200, 190, 190, 180 }, new[] { 160, 140, 140, 130, 130, 120, 120, 110 })]
    public void A_lag_screw_under_a_steel_plate_carries_across_as_tabled(double plateIn, double nominalIn, double[] gravities, int[] along, int[] across)
    {
        double nominal = nominalIn * Us.In, root = ScrewSteel.RootMm(WoodFixing.LagScrew, nominal);
        int Tens(double g, double degrees) => (int)Math.Round(NdsLateral.Of(
            new(root, 8 * nominal, plateIn * Us.In, DowelBearing.AsTabledMPa(g, nominal, degrees), DowelBearing.ThinSteelMPa, ScrewSteel.BendingYieldMPa(WoodFixing.LagScrew, nominal))
            { NominalMm = nominal, GrainDegrees = degrees }).AllowableN / Us.Lb / 10) * 10;
        Assert.Equal(along, gravities.Select(g => Tens(g, 0)));
        Assert.Equal(across, gravities.Select(g => Tens(g, 90)));
    }
}
