namespace Wainwright.Access.Tests;

/// <summary>The workshop van of the demonstration, judged step by step as a fitter would do it.</summary>
public class CasesOfTheWorkshopVanTests
{
    private static readonly Lazy<RemovalPlanner> Planner = new(() => new(Demo.Workshop));

    /// <summary>Part wanted out, what comes out by id.</summary>
    public static TheoryData<string, string> Answers => new()
    {
        { "B04", "B04 B42" }, // the till shelf stands on the bay
        { "B13", "B13" }, // slides out of the open front
        { "B14", "B14 B30" }, // terminals and way are under the washer
        { "B16", "B14 B15 B16 B30 B31" }, // the tray does not pass between the cups of the stand
        { "B17", "B17 B30" }, // screws are behind the washer
        { "B18", "B11 B18 B30" }, // one end behind the washer, the run behind the compressor
        { "B26a", "B26a B34" }, // the ties are undone, the bays stay
        { "B28", "B28 B34" }, // drawn out over the bays
    };

    [Theory]
    [MemberData(nameof(Answers))]
    public void What_comes_out_is_what_a_fitter_would_take_out(string wanted, string comesOut)
    {
        var plan = Planner.Value.Remove(Demo.Parts(wanted));

        Assert.Equal(Proof.ProvedCheapest, plan.Proof);
        Assert.Equal(comesOut, CasesFiles.WhatComesOut(plan));
    }

    [Fact]
    public void The_floor_comes_up_without_the_bay_over_the_arch_and_without_the_fuse_plate_but_not_without_what_stands_on_it()
    {
        var out_ = Planner.Value.Remove(Demo.Parts("B01")).PartsOut.Select(p => p.Text).ToHashSet();

        Assert.Superset(new HashSet<string> { "B03", "B04", "B06", "B31", "B33", "B34", "B35", "B36", "B37", "B38", "B42" }, out_);
        Assert.DoesNotContain("B05", out_);
        Assert.DoesNotContain("B17", out_);
    }

    [Fact]
    public void A_hand_gets_to_the_batteries_only_when_the_washer_is_out_and_to_the_compressor_at_once()
    {
        Assert.Equal("B30", CasesFiles.WhatComesOut(Planner.Value.Reach(Demo.Parts("B14 B15"))));
        Assert.Equal("", CasesFiles.WhatComesOut(Planner.Value.Reach(Demo.Parts("B11 B19 B38 B45"))));
    }

    [Fact]
    public void What_people_usually_take_out_first_changes_no_plan()
    {
        var van = Demo.Workshop;
        var without = van with { Parts = [.. van.Parts.Select(p => p with { TakeOutFirst = [] })] };

        Assert.Equal(Planner.Value.Remove(Demo.Parts("B18")).TotalMinutes, RemovalPlanner.Remove(without, Demo.Parts("B18")).TotalMinutes, 6);
    }

    [Fact]
    public void No_plan_is_in_doubt_because_two_parts_stand_in_each_other() =>
        Assert.DoesNotContain(Planner.Value.Remove(Demo.Parts("B01")).ToMeasure, m => m.Contains("overlap", StringComparison.Ordinal));

    [Fact]
    public void Tilted_out_past_the_stand_the_battery_tray_leaves_it_standing_and_costs_less()
    {
        var planner = new RemovalPlanner(Demo.Workshop, new() { Tilting = Tilting.Usual with { ToSpare = true } });
        var plan = planner.Remove(Demo.Parts("B16"));

        Assert.Equal("B14 B15 B16 B23 B30", CasesFiles.WhatComesOut(plan)); // the earth cable over the tray instead of the stand round it
        Assert.True(plan.TotalMinutes < Planner.Value.Remove(Demo.Parts("B16")).TotalMinutes);
        Assert.Equal(plan.Steps.Sum(s => s.OutMinutes + s.BackMinutes + s.DamageMinutes), plan.TotalMinutes, 6);
        Assert.Contains(plan.Steps[^1].Path, p => p.Turned is { W: < 0.99 });
        Assert.Empty(planner.Audit(plan).Faults);
        Assert.Empty(planner.ProofFaults(Demo.Parts("B16")));
    }
}
