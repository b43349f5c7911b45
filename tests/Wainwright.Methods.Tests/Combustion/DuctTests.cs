using CsCheck;
using Wainwright.Methods.Combustion;

namespace Wainwright.Methods.Tests.Combustion;

public sealed class DuctTests
{
    // regression: the equation solved apart from this program
    [Theory]
    [InlineData(1e5, 1e-4, 0.01851387)]
    [InlineData(1e5, 1e-3, 0.02217454)]
    [InlineData(1e4, 0, 0.03088295)]
    [InlineData(1e6, 1e-4, 0.01344144)]
    [InlineData(4_000, 0.05, 0.07698683)]
    public void Colebrook_solves_to_the_last_digits(double re, double rough, double f) => Assert.Equal(f, ColebrookFriction.Of(new(re, rough)).Factor, tolerance: 1e-8);

    [Fact]
    public void The_solution_satisfies_the_equation() =>
        Gen.Select(Gen.Double[4_000, 1e8], Gen.Double[0, 0.05]).Sample((re, rough) =>
        {
            var f = ColebrookFriction.Of(new(re, rough)).Factor;
            Assert.Equal(1 / Math.Sqrt(f), -2 * Math.Log10((rough / 3.7) + (2.51 / (re * Math.Sqrt(f)))), tolerance: 1e-9);
        });

    [Fact]
    public void The_explicit_forms_stay_near_within_their_ranges() =>
        Gen.Select(Gen.Double[1e4, 1e7], Gen.Double[1e-6, 1e-2]).Sample((re, rough) =>
        {
            var f = ColebrookFriction.Of(new(re, rough)).Factor;
            Assert.Equal(f, SwameeJainFriction.Of(new(re, rough)).Factor, tolerance: 0.03 * f);
            Assert.Equal(f, HaalandFriction.Of(new(re, rough)).Factor, tolerance: 0.02 * f);
        });

    [Fact]
    public void Between_laminar_and_turbulent_it_says_that_it_does_not_know()
    {
        var between = ColebrookFriction.Of(new(3_000, 0.001));
        Assert.NotEmpty(between.OutsideRange);
        Assert.InRange(between.Factor, 64.0 / 2_300, 0.05);
    }

    [Fact]
    public void A_rougher_duct_costs_more_and_a_wider_one_less()
    {
        static double Drop(double bore, double rough) => DuctDrop.Of(new(bore, 2_000, rough, 90, [])).DropPa;
        Assert.True(Drop(60, 0.9) > Drop(60, 0.15));
        Assert.True(Drop(75, 0.15) < Drop(60, 0.15));
    }

    // regression: 90 m³/h, 2 m, 1.2 kg/m³
    [Theory]
    [InlineData(60, 0.15, 44.7)]
    [InlineData(60, 0.9, 70.3)]
    [InlineData(75, 0.15, 14.5)]
    public void A_heater_duct_costs(double bore, double rough, double pa) =>
        Assert.Equal(pa, DuctDrop.Of(new(bore, 2_000, rough, 90, [], DensityKgPerM3: 1.2)).DropPa, tolerance: 0.06);

    [Fact]
    public void Fittings_add_to_friction_in_proportion_to_the_dynamic_pressure()
    {
        var run = DuctDrop.Of(new(60, 1_000, 0.15, 90, [0.5, 1.0]));
        Assert.Equal(1.5 * DuctDrop.AirKgPerM3 * run.SpeedMPerS * run.SpeedMPerS / 2, run.DropPa - run.FrictionPa, tolerance: 1e-9);
    }

    [Theory]
    [InlineData(0.2, 50)]
    [InlineData(0.5, 6)]
    [InlineData(0.7, 3)]
    public void A_grille_has_the_tables_coefficient(double free, double k) => Assert.Equal(k, FittingLoss.OfGrille(free), tolerance: 1e-9);

    [Fact]
    public void Between_rows_a_grille_lies_between() => Assert.InRange(FittingLoss.OfGrille(0.45), 6, 10);

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.9)]
    public void A_grille_outside_the_table_is_refused(double free) => Assert.Throws<ArgumentOutOfRangeException>(() => FittingLoss.OfGrille(free));

    [Fact]
    public void Half_a_bend_costs_half() => Assert.Equal(0.65, FittingLoss.OfBend(FittingLoss.SharpBend90, 45), tolerance: 1e-12);

    [Fact]
    public void A_square_duct_has_its_side_as_hydraulic_diameter() => Assert.Equal(200, RectangularDuct.Of(new(200, 200)).HydraulicMm, tolerance: 1e-9);

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ColebrookFriction.Of(new(0, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DuctDrop.Of(new(60, -1, 0, 90, [])));
        Assert.Throws<ArgumentOutOfRangeException>(() => DuctDrop.Of(new(60, 1, 0, 90, [-0.1])));
        Assert.Throws<ArgumentOutOfRangeException>(() => RectangularDuct.Of(new(0, 10)));
    }
}
