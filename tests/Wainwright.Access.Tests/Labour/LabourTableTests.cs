using Wainwright.Fitout;
using Wainwright.Methods.Labour;

namespace Wainwright.Access.Tests.Labour;

public class LabourTableTests
{
    private static readonly Joint Screws = new()
    {
        Id = new("j"), Part = new("p"), Type = FixingType.WoodScrew, Count = 8, State = FixingState.Sound,
        Release = new() { Way = ReleaseWay.Unscrew }, Known = Known.Seen,
    };

    // Source:    Basic MOST tool-use sequence and card; worked sums by hand: 40 + 8 (10 + 30 + 30) and 40 + 10 (10 + 30 + 240) TMU.
    // Seen:      the card in a training text that transcribes it; the sums are ours.
    // Tolerance: none.
    [Theory]
    [InlineData(8, 3, 3, 21.6)]
    [InlineData(10, 3, 24, 102.24)]
    [InlineData(5, 3, 24, 51.84)]
    [InlineData(5, 6, 24, 57.24)]
    [InlineData(0, 3, 3, 0)]
    public void A_run_of_fixings_takes_what_the_sequence_gives(int count, int place, int turn, double seconds) =>
        Assert.Equal(seconds, FixingRun.SecondsOf(new(count, place, turn)), 1e-9);

    [Fact]
    public void Every_type_of_fixing_has_its_minutes_and_an_origin()
    {
        foreach (var type in Enum.GetValues<FixingType>())
        {
            var row = LabourTable.Usual.Fixings[type];
            Assert.True(row.OutEach > 0 && row.BackEach > 0 && row.OutSetUp > 0 && row.BackSetUp > 0, type.ToString());
            Assert.True(row.Origin.Contains("estimate", StringComparison.Ordinal) || row.Origin.Contains("MOST", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void What_is_missing_takes_no_time_now_and_time_when_it_goes_back()
    {
        var missing = Screws with { State = FixingState.Missing, StateCount = 3 };

        Assert.True(LabourTable.Usual.Of(missing).Out < LabourTable.Usual.Of(Screws).Out);
        Assert.Equal(LabourTable.Usual.Of(Screws).Back, LabourTable.Usual.Of(missing).Back);
    }

    [Fact]
    public void Sheared_and_spinning_ones_are_drilled()
    {
        var sheared = Screws with { State = FixingState.Sheared, StateCount = 1 };
        var spinning = Screws with { Type = FixingType.RivetNut, State = FixingState.Loose, StateCount = 2 };

        Assert.Equal(LabourTable.Usual.DrillOutEach - LabourTable.Usual.Fixings[FixingType.WoodScrew].OutEach, LabourTable.Usual.Of(sheared).Out - LabourTable.Usual.Of(Screws).Out, 1e-9);
        Assert.True(LabourTable.Usual.Of(spinning).Out > LabourTable.Usual.Of(spinning with { State = FixingState.Sound }).Out + 4);
    }

    [Fact]
    public void The_workshops_own_time_wins()
    {
        var timed = Screws with { Release = new() { Way = ReleaseWay.Unscrew, Minutes = 7 } };

        Assert.Equal((7, "timed in this workshop"), (LabourTable.Usual.Of(timed).Out, LabourTable.Usual.Of(timed).Origin));
    }

    [Theory]
    [InlineData(8, 1)]
    [InlineData(25, 2)]
    [InlineData(29, 3)]
    public void Heavier_loads_take_more_people_and_their_minutes(double kg, int people)
    {
        var (out_, _, hands) = LabourTable.Usual.Carry(kg, 800, isLoose: false);

        Assert.Equal(people, hands);
        Assert.Equal(people * LabourTable.Usual.CarryOut, out_, 1e-9);
    }
}
