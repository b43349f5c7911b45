using CsCheck;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Diffusion;
using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class DiffusionLawTests
{
    // regression: our own sums of the series
    [Theory]
    [InlineData(0.01, 0.112838)]
    [InlineData(0.05, 0.252313)]
    [InlineData(0.1, 0.356823)]
    [InlineData(0.2, 0.504088)]
    [InlineData(0.3, 0.613236)]
    [InlineData(0.4, 0.697882)]
    [InlineData(0.6, 0.815565)]
    [InlineData(0.8, 0.887403)]
    [InlineData(1.0, 0.931260)]
    [InlineData(1.5, 0.979982)]
    public void Share_gone_keeps_its_numbers(double fourier, double gone) => Assert.Equal(gone, SlabDrying.Gone(fourier), tolerance: 1e-6);

    [Theory]
    [InlineData(0.5, 0.196731)]
    [InlineData(0.9, 0.848085)]
    [InlineData(0.99, 1.781288)]
    public void Time_for_a_share_keeps_its_numbers(double gone, double fourier) => Assert.Equal(fourier, SlabDrying.FourierFor(gone), tolerance: 2e-6);

    [Theory]
    [InlineData(0, 0.22769)]
    [InlineData(0.4, 0.36960)]
    [InlineData(0.8, 0.75575)]
    public void The_profile_keeps_its_numbers(double place, double change) => Assert.Equal(change, SlabDrying.Change(0.2, place), tolerance: 1e-5);

    [Theory]
    [InlineData(0.5, false, 0.820)]
    [InlineData(0.9, false, 3.534)]
    [InlineData(0.5, true, 3.279)]
    [InlineData(0.9, true, 14.135)]
    public void Twelve_millimetres_take_these_days(double gone, bool sealedBelow, double days) => Assert.Equal(days, SlabDrying.DaysFor(gone, 1e-10, 12, sealedBelow), tolerance: 0.002);

    [Fact]
    public void One_sealed_face_takes_four_times_as_long() =>
        Gen.Select(Gen.Double[0.05, 0.99], Gen.Double[3, 30]).Sample((gone, mm) =>
            Assert.Equal(4, SlabDrying.DaysFor(gone, 1e-10, mm, true) / SlabDrying.DaysFor(gone, 1e-10, mm, false), tolerance: 1e-9));

    [Fact]
    public void Short_and_long_forms_meet()
    {
        Assert.Equal(SlabDrying.Gone(0.05 - 1e-12), SlabDrying.Gone(0.05), tolerance: 1e-7);
        Assert.Equal(SlabDrying.Change(0.05 - 1e-12, 0.3), SlabDrying.Change(0.05, 0.3), tolerance: 1e-9);
        Assert.Equal(1, SlabDrying.Change(0.01, 1), tolerance: 1e-9);
    }

    [Fact]
    public void Roots_keep_their_numbers()
    {
        Assert.Equal([0.8603, 3.4256, 6.4373], SlabBehindResistance.Roots(1, 3).Select(r => Math.Round(r, 4)));
        Assert.Equal(0.3111, SlabBehindResistance.Roots(0.1, 1)[0], tolerance: 1e-4);
        Assert.Equal(1.4289, SlabBehindResistance.Roots(10, 1)[0], tolerance: 1e-4);
    }

    [Theory]
    [InlineData(1, 1, 0.52960)]
    [InlineData(10, 0.2, 0.41674)]
    [InlineData(2, 0.5, 0.46038)]
    [InlineData(5, 0.1, 0.21858)]
    [InlineData(0.1, 5, 0.38368)]
    public void Behind_a_resistance_it_keeps_its_numbers(double ratio, double fourier, double gone) =>
        Assert.Equal(gone, SlabBehindResistance.Gone(ratio, fourier), tolerance: 1e-5);

    [Fact]
    public void Without_resistance_it_is_the_bare_sheet() =>
        Gen.Double[0.1, 2].Sample(fourier => Assert.Equal(SlabDrying.Gone(fourier), SlabBehindResistance.Gone(1e6, fourier), tolerance: 1e-4));

    [Theory]
    [InlineData(0, 36.2735)]
    [InlineData(5, 32.7122)]
    [InlineData(20, 6.9424)]
    public void A_plane_source_keeps_its_numbers(double mm, double kg)
    {
        Assert.Equal(kg, Stain.PlaneKgPerM3(1, 1e-10, 7, mm), tolerance: 1e-3);
        Assert.Equal(2 * kg, Stain.PlaneKgPerM3(1, 1e-10, 7, mm, besideSealedFace: true), tolerance: 2e-3);
    }

    [Theory]
    [InlineData(0, 0.736448)]
    [InlineData(0.1, 0.131378)]
    public void A_strip_keeps_its_numbers(double metre, double share) => Assert.Equal(share, Stain.StripShare(0.05, 1e-3, metre), tolerance: 1e-6);

    // erfc(x) = what has not come from the middle of a half space: the strip with one end far away
    [Theory]
    [InlineData(0.1, 0.887537)]
    [InlineData(0.5, 0.479500)]
    [InlineData(1, 0.157299)]
    public void The_complement_of_the_error_integral_keeps_its_numbers(double x, double erfc) =>
        Assert.Equal(erfc, 2 * Stain.StripShare(1000, 0.25, 1000 + x), tolerance: 1e-6);

    [Theory]
    [InlineData(0, 1.295176)]
    [InlineData(0.5, 1.210523)]
    public void A_sealed_strip_keeps_its_numbers(double at, double share)
    {
        Assert.Equal(share, SealedStrip.ByImages(new(1, 0.3, 0.02, at)), tolerance: 1e-6);
        Assert.Equal(share, SealedStrip.ByCosines(new(1, 0.3, 0.02, at)), tolerance: 1e-6);
    }

    [Fact]
    public void Images_and_cosines_agree() =>
        Gen.Select(Gen.Double[0.1, 3], Gen.Double[0, 1], Gen.Double[1e-4, 2], Gen.Double[0, 1]).Sample((length, source, spread, at) =>
        {
            var piece = new SealedStrip.Input(length, source * length, spread, at * length);
            Assert.Equal(SealedStrip.ByImages(piece), SealedStrip.ByCosines(piece), tolerance: 1e-6);
        });

    [Theory]
    [InlineData(1, 4.157)]
    [InlineData(30, 22.768)]
    public void Diffusion_alone_walks_two_centimetres_a_month(double days, double mm) => Assert.Equal(mm, Stain.WidthMm(1e-10, days), tolerance: 0.001);

    [Fact]
    public void A_drop_in_a_sheet_stays_whole()
    {
        double sum = 0;
        for (var mm = 0.5; mm < 400; mm++) sum += Stain.PointKgPerM2(2, 1e-10, 20, mm) * 2 * Math.PI * mm * 1e-6;
        Assert.Equal(2, sum, tolerance: 1e-3);
    }

    // regression: equation from memory
    [Theory]
    [InlineData(20, 10, 0.45, 4.89e-11)]
    [InlineData(20, 20, 0.45, 1.25e-10)]
    [InlineData(30, 15, 0.5, 9.87e-11)]
    public void Wood_diffusivity_keeps_its_numbers(double c, double m, double g, double d) => Assert.Equal(d, WoodDiffusivity.Of(new(c, m, g)).AcrossM2PerS, tolerance: 0.01 * d);

    [Fact]
    public void The_cell_wall_keeps_its_number() => Assert.Equal(3.218e-12, WoodDiffusivity.Of(new(20, 10, 0.45)).CellWallM2PerS, tolerance: 0.01 * 3.218e-12);

    // finding: an abstract (aspen, 110 °F) has a rise of eight from 2.5 to 18 %; the equation gives less than half of it
    [Fact]
    public void The_equation_rises_less_with_moisture_than_measured() =>
        Assert.Equal(3.7, WoodDiffusivity.Of(new(43.3, 18, 0.38)).AcrossM2PerS / WoodDiffusivity.Of(new(43.3, 2.5, 0.38)).AcrossM2PerS, tolerance: 0.1);

    [Theory]
    [InlineData(200, 1.80e-11)]
    [InlineData(70, 5.14e-11)]
    [InlineData(20, 1.80e-10)]
    public void Vapour_figures_turn_into_a_diffusivity(double factor, double d) => Assert.Equal(d, WoodDiffusivity.FromVapour(factor, 20, 2338.8, 125.93), tolerance: 0.005 * d);

    [Fact]
    public void Out_of_its_range_the_equation_says_so() => Assert.NotEmpty(WoodDiffusivity.Of(new(20, 2.5, 0.4)).OutsideRange);

    [Fact]
    public void Still_air_keeps_its_number() => Assert.Equal(1.937e-10, VapourResistance.AirPermeability(20), tolerance: 1e-13);

    [Fact]
    public void Vinyl_passes_a_gram_a_day() => Assert.Equal(1.010, VapourResistance.GramPerM2Day(0.5 * 2338.8, 100e9), tolerance: 0.005);

    [Fact]
    public void Two_millimetres_of_vinyl_are_a_hundred_metres_of_air()
    {
        Assert.Equal(100, VapourResistance.AirLayerM(50_000, 2), tolerance: 1e-9);
        Assert.Equal(5.16e11, VapourResistance.OfAirLayer(100, 20), tolerance: 0.01 * 5.16e11);
    }

    [Theory]
    [InlineData(100e9, 748)]
    [InlineData(25e9, 187)]
    [InlineData(1e9, 7.5)]
    public void A_cover_gives_this_time_constant(double resistance, double days) =>
        Assert.Equal(days, SlabBehindResistance.TimeConstantDays(2338.8, resistance, 125.93, 12), tolerance: 0.01 * days);

    [Theory]
    [InlineData(3.57e7, 62)]
    [InlineData(1e9, 2.23)]
    [InlineData(25e9, 0.089)]
    [InlineData(100e9, 0.0223)]
    public void A_cover_gives_this_ratio(double resistance, double ratio) =>
        Assert.Equal(ratio, SlabBehindResistance.Ratio(2338.8, resistance, 125.93, 12, 1e-10), tolerance: 0.01 * ratio);
}
