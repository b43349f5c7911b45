using Wainwright.Methods.Weight;

namespace Wainwright.Published.Weight;

public sealed class PersonalLoadTests
{
    // Source:    EN 1646-2, three seats besides the driver's, 6 m long: 120 kg, with passengers 345 kg.
    // Seen:      quoted in a yearbook's comment (address withheld); the standard was not opened.
    // Tolerance: whole kilograms by rule: none.
    [Fact]
    public void Three_seats_and_six_metres_make_the_load_of_the_comment()
    {
        var load = PersonalLoad.Of(new(3, 6_000));
        Assert.Equal(120, load.PersonalKg, tolerance: 1e-9);
        Assert.Equal(345, load.WithPassengersKg, tolerance: 1e-9);
    }
}
