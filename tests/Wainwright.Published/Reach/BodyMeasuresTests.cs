using Wainwright.Methods.Reach;
using static Wainwright.Methods.Reach.BodyMeasures;

namespace Wainwright.Published.Reach;

public sealed class BodyMeasuresTests
{
    // Source:    ANSUR II (US Army 2012, public data): percentiles of circumference counted in the data, over π: forearm P95 of men
    //            110.8 mm, upper arm P95 of men 133.1 mm, forearm P5 of women 74.8 mm.
    // Seen:      the data themselves, two copies compared.
    // Tolerance: half of the last place.
    [Theory]
    [InlineData(People.Men, Measure.ForearmCircumference, true, 110.8)]
    [InlineData(People.Men, Measure.UpperArmCircumference, true, 133.1)]
    [InlineData(People.Women, Measure.ForearmCircumference, false, 74.8)]
    public void A_limb_is_as_thick_as_in_the_survey(People whose, Measure around, bool isLarge, double diameterMm) =>
        Assert.Equal(diameterMm, DiameterMm(isLarge ? Find(whose, around).P95 : Find(whose, around).P5), tolerance: 0.05);

    // Source:    the same: upper arm P99 of men 142.6 mm thick.
    // Seen:      the data themselves.
    // Tolerance: half of the last place. The normal law would say 139.6: counted, not computed, where the whole body must pass.
    [Fact]
    public void The_thickest_arms_are_counted() =>
        Assert.Equal(142.6, DiameterMm(Find(People.Men, Measure.UpperArmCircumference).P99!.Value), tolerance: 0.05);
}
