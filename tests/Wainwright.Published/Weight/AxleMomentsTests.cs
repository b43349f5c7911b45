using Wainwright.Methods.Weight;

namespace Wainwright.Published.Weight;

public sealed class AxleMomentsTests
{
    const double KgPerLb = 0.45359237, MmPerIn = 25.4;

    // Source:    A truck engineering page: wheelbase 208 in, body 5 000 lb, its centre 28.2 in ahead of the rear axle: rear 4 322 lb, front 678 lb.
    // Seen:      on that page (address withheld).
    // Tolerance: printed to the pound: half a pound.
    [Fact]
    public void A_body_shares_itself_between_the_axles_as_the_truck_page_says()
    {
        var loads = AxleMoments.Of(new(208 * MmPerIn, 0, 0, [new(5_000 * KgPerLb, (208 - 28.2) * MmPerIn)]));
        Assert.Equal(4_322, loads.RearAxleKg / KgPerLb, tolerance: 0.5);
        Assert.Equal(678, loads.FrontAxleKg / KgPerLb, tolerance: 0.5);
    }

    // Source:    A truck maker's manual, p. 77: 100 lb at 133 in behind the front axle, wheelbase 214 in: 62.14 lb on the rear axle.
    // Seen:      in the manual (address withheld). It prints 38.86 lb for the front: that and 62.14 do not sum to 100, so it is not used.
    // Tolerance: printed to two places but cut, not rounded (62.1495): 0.01.
    [Fact]
    public void A_load_between_the_axles_weighs_on_the_rear_one_as_the_manual_says() =>
        Assert.Equal(62.14, AxleMoments.Of(new(214 * MmPerIn, 0, 0, [new(100, 133 * MmPerIn)])).RearAxleKg, tolerance: 0.01);
}
