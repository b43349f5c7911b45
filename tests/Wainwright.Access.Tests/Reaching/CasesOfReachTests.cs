using Wainwright.Fitout;

namespace Wainwright.Access.Tests.Reaching;

/// <summary>Small vans where the arm, the screw's length or the spanner's swing decides; the right answers stand in their notes.</summary>
public class CasesOfReachTests
{
    private static string ComesOut(string name, Person who) =>
        CasesFiles.WhatComesOut(RemovalPlanner.Remove(Demo.Case(name), Demo.Parts("A"), new AccessOptions { Person = who }));

    [Fact]
    public void A_nut_in_a_deep_pocket_is_reached_past_the_chest_by_a_man_of_middle_size_and_not_by_anyone()
    {
        Assert.Equal("A", ComesOut("nut-in-a-deep-pocket", Person.Man(0.5)));
        Assert.Equal("A B", ComesOut("nut-in-a-deep-pocket", Person.Anyone));
    }

    [Fact]
    public void As_many_people_reach_the_nut_as_were_counted_to_have_such_an_arm()
    {
        var planner = new RemovalPlanner(Demo.Case("nut-in-a-deep-pocket"));
        var who = planner.Who(new JointId("A-nut"));

        // counted in ANSUR II: 93.4 and 66.0 of 100; the normal law lies within 2.5 points of the count
        Assert.Equal(93.4, 100 * who.OfMen, tolerance: 2.5);
        Assert.Equal(66.0, 100 * who.OfWomen, tolerance: 2.5);
        Assert.Matches("^9[0-9] of 100 men, 6[0-9] of 100 women reach it$", who.Words);
        var (men, women) = planner.Who(new JointId("A-nut"), Demo.Parts("B"));
        Assert.True(men > 0.995 && women > 0.995);
    }

    [Fact]
    public void A_screw_longer_than_the_room_before_its_head_waits_for_what_stands_there()
    {
        var planner = new RemovalPlanner(Demo.Case("screw-too-long-to-draw"));
        var fit = Assert.Single(planner.ToolFits(new JointId("A-screw")));

        Assert.Equal("A B", CasesFiles.WhatComesOut(planner.Remove(Demo.Parts("A"))));
        Assert.Equal((45, 5, "B"), (fit.DrawMm, fit.DrawShortMm, fit.DrawBy?.Text));
        Assert.Contains("cannot be drawn: 5 mm short to B stop block", fit.Words, StringComparison.Ordinal);
        Assert.Equal(0, Assert.Single(planner.ToolFits(new JointId("A-screw"), Demo.Parts("B"))).DrawShortMm);
    }

    [Fact]
    public void A_bolt_with_35_degrees_of_swing_is_undone_by_an_open_spanner_turned_over()
    {
        var planner = new RemovalPlanner(Demo.Case("spanner-with-little-swing"));
        var fit = Assert.Single(planner.ToolFits(new JointId("A-bolt")));

        Assert.Equal("A", CasesFiles.WhatComesOut(planner.Remove(Demo.Parts("A"))));
        Assert.Equal(35, fit.SwingDegrees);
        Assert.Equal((170, 100, 70, "B"), (fit.NeedMm, fit.FreeMm, fit.ShortMm, fit.By?.Text));
        Assert.Contains("socket and hand need 170 mm in front; 100 mm are free: 70 mm short to B channel", fit.Words, StringComparison.Ordinal);
        Assert.Contains("open spanner turned over", fit.Words, StringComparison.Ordinal);
    }
}
