using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Tests.Damp;

/// <summary>What notes deny is not taken as done.</summary>
public sealed class SaidOfAReadingTests
{
    static readonly ReadingPoint Point = new() { Id = new("P"), At = new(0, 0, 0), Where = "here" };

    static Reading Saying(string conditions) => new()
    {
        Id = new("R"), Quantity = Quantity.Moisture, Value = 12, Unit = "%", TakenAt = new(2026, 4, 1, 9, 0, 0, TimeSpan.Zero), Conditions = conditions,
    };

    [Theory]
    [InlineData("corrected to 20 °C", true)]
    [InlineData("uncorrected", false)]
    [InlineData("not corrected", false)]
    [InlineData("after rain", false)]
    public void Only_a_corrected_reading_is_corrected(string said, bool corrected) => Assert.Equal(corrected, DampReadings.IsCorrected(Saying(said)));

    [Theory]
    [InlineData("long pins", true)]
    [InlineData("to the core", true)]
    [InlineData("no long pins", false)]
    [InlineData("not to the core", false)]
    [InlineData("after rain", null)]
    public void Only_what_is_said_to_reach_the_core_does(string said, bool? reached) => Assert.Equal(reached, PointVisits.CoreReached(Point, Saying(said)));

    [Theory]
    [InlineData("heat off since morning", true)]
    [InlineData("unheated", true)]
    [InlineData("heat not off", false)]
    [InlineData("heated", false)]
    [InlineData("after rain", null)]
    public void Only_heat_that_is_said_to_be_off_is_off(string said, bool? off) => Assert.Equal(off, PointVisits.HeatOff(Saying(said)));
}
