using Wainwright.Methods.Combustion;

namespace Wainwright.Published.Combustion;

public sealed class RoomBalanceTests
{
    // Source:    University of Southampton exercise (edshare document 5370): room 40 m³, source 1.2e-6 m³/s, fresh air 3e-3 m³/s:
    //            1.2e-4 is reached after 1.3 h, the steady state is 4.0e-4.
    // Seen:      in that exercise.
    // Tolerance: hours printed to 0.1: half of it; the steady state is exact.
    [Fact]
    public void A_room_fills_as_the_exercise_says()
    {
        var room = RoomBalance.Of(new(VolumeM3: 40, AirChangesPerH: 3e-3 * 3600 / 40, SourcePerH: 1.2e-6 * 3600));
        Assert.Equal(4.0e-4, room.SteadyConcentration, tolerance: 1e-9);
        Assert.Equal(1.3, room.HoursUntil(1.2e-4), tolerance: 0.05);
    }
}
