using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Diffusion;
using Wainwright.Methods.Moisture.Drying;
using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Methods.Tests.Moisture.Drying;

/// <summary>Against the closed solutions for one sheet of constant diffusivity.</summary>
public sealed class SlabTests
{
    const double Slope = 125.93, D = 1e-10, Mm = 12;
    static readonly double Saturation = SaturationPressure.Of(new(20)).PressurePa;

    // a straight curve and a μ that make the diffusivity D
    static readonly SheetMaterial Straight = SheetMaterial.Inert("straight", 500, Slope, VapourResistance.AirPermeability(20) * Saturation / (Slope * D));

    static SheetNet Slab(int slices, SheetFace top, SheetFace bottom) =>
        SheetNet.Flat(1, 1, 1000, new("slab", [new(Straight, Mm, 20, slices)]), (_, _) => top, bottom);

    static SheetFace Open(double rh) => new(1, rh * Saturation);

    static double Gone(SheetNet net, double days, StepControl control)
    {
        var run = new DryingRun(net, 0.8, control);
        var start = run.WaterKg;
        run.Pass(days);
        return (start - run.WaterKg) / (start * (0.8 - 0.5) / 0.8);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void Both_faces_bare_it_dries_as_Crank_says(double days) =>
        Assert.Equal(SlabDrying.Gone(SlabDrying.Fourier(D, days, Mm, false)), Gone(Slab(40, Open(0.5), Open(0.5)), days, new(FixedDays: 0.005)), tolerance: 0.0015);

    [Theory]
    [InlineData(2)]
    [InlineData(8)]
    public void One_face_sealed_it_dries_as_Crank_says(double days) =>
        Assert.Equal(SlabDrying.Gone(SlabDrying.Fourier(D, days, Mm, true)), Gone(Slab(40, Open(0.5), SheetFace.Sealed), days, new(FixedDays: 0.01)), tolerance: 0.0015);

    [Theory]
    [InlineData(1e9, 5)]
    [InlineData(25e9, 100)]
    [InlineData(100e9, 400)]
    public void Behind_a_cover_it_dries_as_Crank_says(double cover, double days)
    {
        var ratio = SlabBehindResistance.Ratio(Saturation, cover, Slope, Mm, D);
        Assert.Equal(SlabBehindResistance.Gone(ratio, SlabDrying.Fourier(D, days, Mm, true)),
            Gone(Slab(40, new(cover, 0.5 * Saturation), SheetFace.Sealed), days, new(FixedDays: days / 1000)), tolerance: 0.001);
    }

    [Fact]
    public void Chosen_steps_come_within_two_percent_of_Crank() =>
        Assert.All([0.5, 1, 2, 4, 8], days =>
            Assert.Equal(SlabDrying.Gone(SlabDrying.Fourier(D, days, Mm, true)), Gone(Slab(40, Open(0.5), SheetFace.Sealed), days, new()), tolerance: 0.02));

    [Fact]
    public void The_middle_follows_the_profile()
    {
        var run = new DryingRun(Slab(41, Open(0.5), Open(0.5)), 0.8, new(FixedDays: 0.005));
        run.Pass(2);
        var change = (0.8 - run.HumidityFraction(0, 20)) / 0.3;
        Assert.Equal(SlabDrying.Change(SlabDrying.Fourier(D, 2, Mm, false), 0), change, tolerance: 0.002);
    }

    [Fact]
    public void Finer_slices_come_closer_with_the_square()
    {
        var exact = SlabDrying.Gone(SlabDrying.Fourier(D, 4, Mm, true));
        // time error taken out: both against the same very short steps' limit by extrapolation
        double Value(int slices) => (2 * Gone(Slab(slices, Open(0.5), SheetFace.Sealed), 4, new(FixedDays: 0.004))) - Gone(Slab(slices, Open(0.5), SheetFace.Sealed), 4, new(FixedDays: 0.008));
        double[] errors = [.. new[] { 4, 8, 16 }.Select(n => Math.Abs(Value(n) - exact))];
        Assert.InRange(Math.Log2(errors[0] / errors[1]), 1.8, 2.3);
        Assert.InRange(Math.Log2(errors[1] / errors[2]), 1.8, 2.3);
    }

    [Fact]
    public void Shorter_steps_come_closer_with_the_first_power()
    {
        double[] values = [.. new[] { 0.2, 0.1, 0.05, 0.025 }.Select(step => Gone(Slab(16, Open(0.5), SheetFace.Sealed), 4, new(FixedDays: step)))];
        Assert.InRange(Math.Log2((values[0] - values[1]) / (values[1] - values[2])), 0.85, 1.15);
        Assert.InRange(Math.Log2((values[1] - values[2]) / (values[2] - values[3])), 0.9, 1.1);
    }

    [Fact]
    public void A_single_step_of_three_years_lands_at_rest()
    {
        var run = new DryingRun(Slab(20, Open(0.5), Open(0.5)), 0.95, new(FixedDays: 1000));
        run.Pass(1000);
        Assert.All(Enumerable.Range(0, 20), slice => Assert.Equal(0.5, run.HumidityFraction(0, slice), tolerance: 0.001));
    }

    [Fact]
    public void Along_a_sheet_it_spreads_as_the_sealed_strip_does()
    {
        // one slice, both faces sealed, a row of 200 cells of 1 mm, one of them wetter
        var net = SheetNet.Flat(200, 1, 1, new("strip", [new(Straight, Mm, 20)]), (_, _) => SheetFace.Sealed, SheetFace.Sealed);
        var run = new DryingRun(net, 0.2, new(FixedDays: 0.02));
        double Percent(double rh) => 100 * rh * Slope / 500;
        run.Wet(60, 0, Percent(0.9));
        run.Pass(8);
        var spread = D * 8 * 86_400;
        foreach (var cell in new[] { 0, 40, 55, 60, 80, 120 })
        {
            var exact = 0.2 + (0.7 * 0.001 * SealedStrip.ByImages(new(0.2, 0.0605, spread, (cell + 0.5) / 1000)));
            Assert.Equal(exact, run.HumidityFraction(cell, 0), tolerance: 2e-4);
        }
    }
}
