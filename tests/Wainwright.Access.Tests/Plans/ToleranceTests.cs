using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class ToleranceTests
{
    [Fact]
    public void What_goes_exactly_through_the_door_flips_when_it_is_larger_and_the_measure_is_named()
    {
        var planner = new RemovalPlanner(Case("leaves-exactly-through-the-door"));
        var off = planner.WhenMeasuresAreOff(planner.Remove(Parts("A")), 5);

        Assert.Equal(Proof.ProvedUnreachable, off.Tight.Proof);
        Assert.Equal(Proof.ProvedCheapest, off.Loose.Proof);
        Assert.False(off.IsSettled);
        Assert.Equal(0, off.MeasureAgain[0].SpareMm);
        Assert.Contains("again, to the mm", off.MeasureAgain[0].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_millimetre_too_much_is_within_the_tape_and_the_part_that_it_would_spare_is_named()
    {
        // A is 100 wide and 1300 high, so that it does not go over the cupboards; the slot between them is 99
        var van = Case("way-round-a-narrow-slot");
        var job = van with { Parts = [.. van.Parts.Select(p => p.Id.Text switch
        {
            "A" => p with { Solids = [new BoxSolid { At = new(200, 550, 0), Size = new(300, 100, 1300) }] },
            "B" => p with { Solids = [new BoxSolid { At = new(600, 20, 0), Size = new(1300, 531, 900) }], MassKg = 8 },
            _ => p with { Solids = [new BoxSolid { At = new(600, 650, 0), Size = new(1300, 530, 900) }], MassKg = 90 },
        })] };
        var planner = new RemovalPlanner(job, new() { Tilting = Tilting.Off });
        var plan = planner.Remove(Parts("A"));
        Assert.Equal(["B", "A"], plan.PartsOut.Select(p => p.Text));

        var off = planner.WhenMeasuresAreOff(plan, 5);

        Assert.Equal(["A"], off.Loose.PartsOut.Select(p => p.Text));
        var spare = off.MeasureAgain.First(m => m.SpareMm < 0);
        Assert.Equal((-1, Axis.Y, "B"), (spare.SpareMm, spare.Along, spare.Beside[0].Text));
    }

    [Fact]
    public void What_has_room_enough_is_settled_and_names_nothing()
    {
        var planner = new RemovalPlanner(Case("sheared-screw-to-drill"));
        var off = planner.WhenMeasuresAreOff(planner.Remove(Parts("A")), 5);

        Assert.True(off.IsSettled);
        Assert.True(off.Loose.TotalMinutes <= off.Tight.TotalMinutes + 1e-9);
    }

    [Fact]
    public void A_solids_own_tolerance_counts_more_than_the_tapes()
    {
        var van = Case("leaves-exactly-through-the-door");
        Job With(double own) => van with { Parts = [.. van.Parts.Select(p => p with { Solids = [.. p.Solids.Select(s => s is BoxSolid b ? b with { Size = b.Size - new Place(12, 12, 12), PlusMinusMm = own } : s)] })] };
        TightLoose Off(double own) => new RemovalPlanner(With(own)) is var planner ? planner.WhenMeasuresAreOff(planner.Remove(Parts("A")), 5) : throw new InvalidOperationException();

        Assert.Empty(Off(2).MeasureAgain);
        Assert.NotEmpty(Off(30).MeasureAgain);
        Assert.Equal(Proof.ProvedUnreachable, Off(30).Tight.Proof);
    }
}
