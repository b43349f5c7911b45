using Wainwright.Methods.Moisture.Growth;
using Wainwright.Methods.Moisture.Practice;

namespace Wainwright.Published.Moisture;

public sealed class GrowthTests
{
    // Source:    Ojanen, Viitanen and others 2010, classes, as three open programs carry them.
    // Seen:      in those programs (two of which use them wrongly).
    // Tolerance: constants.
    [Fact]
    public void Classes_have_the_constants_of_three_programs()
    {
        Assert.Equal((1, 2, 1, 7, 2, 80), Constants(MouldSurface.VerySensitive));
        Assert.Equal((0.578, 0.386, 0.3, 6, 1, 80), Constants(MouldSurface.Sensitive));
        Assert.Equal((0.072, 0.097, 0, 5, 1.5, 85), Constants(MouldSurface.MediumResistant));
        Assert.Equal((0.033, 0.014, 0, 3, 1, 85), Constants(MouldSurface.Resistant));

        static (double, double?, double, double, double, double) Constants(MouldSurface s) => (s.RateBelow1, s.RateFrom1, s.A, s.B, s.C, s.LeastHumidityPercent);
    }

    // Source:    The trade's restoration standard, as three trade pages give it: 1 clean supply or rain, 2 washing water, 3 sewage, flood, growth; clean water standing over 48 h counts as 2.
    // Seen:      on those pages.
    // Tolerance: none.
    [Theory]
    [InlineData(WaterCategory.Origin.Fresh, 3.0, false, 1)]
    [InlineData(WaterCategory.Origin.Rain, 3.0, false, 1)]
    [InlineData(WaterCategory.Origin.Fresh, 49.0, false, 2)]
    [InlineData(WaterCategory.Origin.Waste, 3.0, false, 2)]
    [InlineData(WaterCategory.Origin.Toilet, 1.0, false, 3)]
    [InlineData(WaterCategory.Origin.Flood, 1.0, false, 3)]
    [InlineData(WaterCategory.Origin.Fresh, 3.0, true, 3)]
    public void Water_is_as_dirty_as_the_standard_says(WaterCategory.Origin origin, double hours, bool growth, int category) =>
        Assert.Equal(category, WaterCategory.Of(origin, hours, growth));

    // Source:    A national health institute's page: age unknown is treated as older than 48 h.
    // Seen:      on that page.
    // Tolerance: none.
    [Fact]
    public void Water_of_unknown_age_is_old() => Assert.Equal(2, WaterCategory.Of(WaterCategory.Origin.Rain, null, false));

    // Source:    The same standard: class 1 part of a room, 2 a whole room with wicking under 24 in, 3 from overhead, 4 deep pockets in dense material.
    // Seen:      on the trade pages.
    // Tolerance: none.
    [Theory]
    [InlineData(0.2, 100, false, false, 1)]
    [InlineData(1, 600, false, false, 2)]
    [InlineData(0.5, 100, true, false, 3)]
    [InlineData(0.1, 0, false, true, 4)]
    public void A_loss_has_the_class_of_the_standard(double area, double wickingMm, bool above, bool dense, int loss) =>
        Assert.Equal(loss, WaterLossClass.Of(new(area, wickingMm, above, dense)));
}
