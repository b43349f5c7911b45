using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention.Statics;

/// <summary>Values of our own arithmetic or from memory: they prove that nothing changed, and where two methods must agree.</summary>
public sealed class GroupRegressionTests
{
    static double Coefficient(double[] ys, double eccentricity, double[]? xs = null) =>
        InstantaneousCentre.Of(new([.. from x in xs ?? [0] from y in ys select (x, y)], 0, -1, (xs ?? [0]).Average() + eccentricity, 0)).Coefficient;

    // own arithmetic; a public page gives "about 2.10" for four bolts at 6: wrong, 2.12 is the elastic value at 4
    [Theory]
    [InlineData(3, 6, 0.9673)]
    [InlineData(4, 4, 2.3645)]
    [InlineData(4, 6, 1.7299)]
    [InlineData(6, 6, 3.5453)]
    public void Bolts_in_a_line(int bolts, double eccentricity, double expected) =>
        Assert.Equal(expected, Coefficient([.. Enumerable.Range(0, bolts).Select(i => 3.0 * i)], eccentricity), tolerance: 1e-4);

    // two columns: found again by halving on the one unknown (the centre lies level with the middle); another sum of ours gave 2.2518, which does not balance
    [Fact]
    public void Two_columns_of_three() => Assert.Equal(2.24964, Coefficient([0, 3, 6], 6, [0, 3]), tolerance: 1e-5);

    // closed form: two bolts s apart, load e off: C = (1 − e^−3.4)^0.55 / √(1/4 + (e/s)²)
    [Theory, InlineData(3, 3, 0.8779), InlineData(3, 6, 0.4761)]
    public void Two_bolts_have_a_closed_form(double apart, double eccentricity, double expected)
    {
        Assert.Equal(expected, Coefficient([0, apart], eccentricity), tolerance: 1e-4);
        Assert.Equal(Math.Pow(1 - Math.Exp(-3.4), 0.55) / Math.Sqrt(0.25 + eccentricity * eccentricity / apart / apart), Coefficient([0, apart], eccentricity), tolerance: 1e-7);
    }

    // from memory: the manual's 11.3 in for a pure moment on four bolts, 3 in apart; approached by a load far away
    [Fact]
    public void A_load_far_away_is_a_moment() => Assert.Equal(11.256, 1e5 * Coefficient([0, 3, 6, 9], 1e5), tolerance: 1e-3);

    // own arithmetic on a published worked example's data: four bolts 200 by 150 mm, 10 kN at 500 mm
    [Fact]
    public void Four_bolts_of_the_second_textbook() =>
        Assert.Equal(12_090, ElasticGroup.Of(new([new(-100, -75), new(-100, 75), new(100, -75), new(100, 75)], 0, -10_000, 500, 0)).LargestN, tolerance: 5);

    // rigid-plastic bolts in the plane: the limit analysis with shear alone
    [Theory, InlineData(2, 0.7022), InlineData(3, 1.4598)]
    public void Bolts_that_yield_at_a_constant_force_carry_what_the_limit_analysis_says(int bolts, double expected)
    {
        var bolt = new FixingStrength(1e6, 1000, Sharing.Apart, 1000, 1000);
        var plate = Some.One(10, new(400, 0, 150 * (bolts - 1)), [.. Enumerable.Range(0, bolts).Select(i => Some.Screw(0, 300 * i, bolt))], []);
        Assert.Equal(expected, (1 + LoadFactor.Of(plate, Some.Down).LowG) * 10 * Some.GravityMPerS2 / 1000, tolerance: 1e-4);
    }

    // two rows of two, 1 kN each, 0.7 and 0.1 m above the edge: elastic 1.4286, limit 1.6 kN m; and the springs and the limit analysis say the same
    [Fact]
    public void Tension_rows_and_the_whole_part_agree_at_first_yield_and_at_the_limit()
    {
        var rows = TensionRows.Of(new([new(700, 2, 1000), new(100, 2, 1000)], 0, 0));
        Assert.Equal(1_428_571, rows.FirstYieldNmm, tolerance: 1);
        Assert.Equal(1_600_000, rows.LimitNmm, tolerance: 1e-6);
        var screw = new FixingStrength(1000, 1e7, Sharing.Apart, 500, 500);
        var cupboard = Some.One(20, new(0, 0.001, 900), [.. from x in (double[])[-200, 200] from z in (double[])[100, 700] select Some.Screw(x, z, screw)], [Some.Rest(-300, 0), Some.Rest(300, 0)]);
        var factor = LoadFactor.Of(cupboard, Some.OffWall);
        Assert.Equal(1_600_000, factor.LowG * 20 * Some.GravityMPerS2 * 900, tolerance: 5);
        Assert.Equal(1_428_571, factor.FirstYieldG * 20 * Some.GravityMPerS2 * 900, tolerance: 5);
    }

    // exact rational arithmetic elsewhere, g taken as 9.81: cupboard A of 30 kg, region N/1500 + (|Vx| + |Vz|)/1000
    [Fact]
    public void A_cupboard_on_four_screws_with_a_square_region_has_the_factors_of_the_exact_program()
    {
        const double asThere = 9.81 / Some.GravityMPerS2;
        var screw = Some.Strength(1500 / asThere, 1000 / asThere);
        var cupboard = Some.One(30, new(0, 175, 350), [.. from x in (double[])[-400, 400] from z in (double[])[100, 600] select Some.Screw(x, z, screw)],
            [.. from x in (double[])[-450, 450] from z in (double[])[0, 700] select Some.Rest(x, z)]);
        var factors = LoadFactor.Of(cupboard, [Some.Rearward, Some.Down], RegionShape.Inside(4));
        Assert.Equal(11.0719, factors[0].LowG, tolerance: 1e-4);
        Assert.Equal(10.3790, factors[1].LowG, tolerance: 1e-4);
    }

    // the springs of a whole part, loaded in the plane of its screws, share the load as the elastic method does
    [Fact]
    public void First_yield_in_the_plane_is_that_of_the_elastic_method()
    {
        var screw = new FixingStrength(1e6, 900, Sharing.Apart, 700, 1300);
        (double X, double Z)[] places = [(-75, -60), (-75, 60), (75, -60), (90, 80)];
        var plate = Some.One(12, new(425, 0, 10), [.. places.Select(p => Some.Screw(p.X, p.Z, screw))], []);
        var group = ElasticGroup.Of(new([.. places.Select(p => new ElasticGroup.Point(p.X, p.Z))], 0, -12 * Some.GravityMPerS2, 425, 10));
        var factor = LoadFactor.Of(plate, Some.Down);
        Assert.Equal(900 / group.LargestN - 1, factor.FirstYieldG, tolerance: 1e-6);
        Assert.Equal(group.Worst, factor.FirstFixing);
    }
}
