using Wainwright.Fitout;

namespace Wainwright.Access.Tests;

/// <summary>Small vans of one situation each; the right answers were reasoned out by hand and stand in the cases' notes.</summary>
public class CasesTests
{
    private const string Stuck = "stuck", Doubtful = "cannot tell";

    /// <summary>Case, parts wanted out, play wanted on every side [mm], what comes out by id.</summary>
    public static TheoryData<string, string, int, string> Answers => new()
    {
        { "leaves-exactly-through-the-door", "A", 0, "A" },
        { "leaves-exactly-through-the-door", "A", 3, Stuck },
        { "stuck-by-one-millimetre", "A", 0, Stuck },
        { "way-round-a-narrow-slot", "A", 3, "A" },
        { "drawer-with-no-clearance", "A", 3, "A" },
        { "drawer-with-no-clearance", "B", 3, "A B" },
        { "two-that-wait-for-each-other", "B", 3, "B D" },
        { "two-that-wait-for-each-other", "A", 3, "A B D" },
        { "two-that-wait-for-each-other", "T", 3, "A B D T" },
        { "shared-blocker-paid-once", "P", 3, "P U" },
        { "shared-blocker-paid-once", "Q", 3, "Q W" },
        { "shared-blocker-paid-once", "P Q", 3, "P Q S" },
        { "built-in-before-the-walls", "A", 0, Stuck },
        { "built-in-but-comes-apart", "A", 3, "A" },
        { "mattress-that-bends", "A", 3, "A" },
        { "mattress-that-bends", "B", 0, Stuck },
        { "duct-through-a-plinth", "A", 3, "A" },
        { "duct-through-a-plinth", "B", 3, "A B" },
        { "duct-through-a-plinth", "C", 3, "A B C" },
        { "screws-reached-only-from-inside", "A", 3, "A" },
        { "screws-reached-only-from-inside", "B", 3, "A B" },
        { "sheared-screw-to-drill", "A", 3, "A" },
        { "overlap-in-the-measures", "A", 3, Doubtful },
        { "door-too-small-by-32-mm", "A", 0, Stuck },
        { "boiler-thicker-than-every-door", "A", 0, Stuck },
        { "tank-tilts-out-of-the-side-door", "A", 0, "A B" },
        { "landing-blocked-by-a-wall", "A", 0, Stuck },
        { "landing-blocked-by-a-wall", "B", 0, "B" },
        { "rack-before-the-rear-door", "A", 3, "A R" },
        { "locker-leaves-only-in-panels", "A", 3, "A B" },
        { "loose-goods-and-mattress-never-block", "A", 3, "A M" },
    };

    [Theory]
    [MemberData(nameof(Answers))]
    public void The_plan_is_the_one_that_the_note_of_the_case_calls_right(string name, string wanted, int playMm, string comesOut)
    {
        var plan = Plan(name, wanted, playMm);

        Assert.Equal(comesOut switch { Stuck => Proof.ProvedUnreachable, Doubtful => Proof.CannotTell, _ => Proof.ProvedCheapest }, plan.Proof);
        Assert.Equal(comesOut is Stuck or Doubtful ? "" : comesOut, CasesFiles.WhatComesOut(plan));
    }

    [Fact]
    public void Where_only_the_play_is_missing_the_answer_says_that_a_trial_fit_may_tell()
    {
        Assert.NotNull(Plan("leaves-exactly-through-the-door", "A", 3).Bracket?.LowMinutes);
        Assert.Null(Plan("stuck-by-one-millimetre", "A", 3).Bracket);
    }

    [Fact]
    public void Of_two_that_wait_for_each_other_neither_goes_before_the_strip_that_frees_them()
    {
        var order = Plan("two-that-wait-for-each-other", "T", 3).PartsOut.Select(p => p.Text);

        Assert.Equal(["D", "B", "A", "T"], order);
    }

    [Fact]
    public void One_blocker_of_two_is_paid_once_and_beats_the_two_single_answers_together()
    {
        var (left, right, both) = (Plan("shared-blocker-paid-once", "P", 3), Plan("shared-blocker-paid-once", "Q", 3), Plan("shared-blocker-paid-once", "P Q", 3));

        Assert.True(both.TotalMinutes < left.TotalMinutes + right.TotalMinutes);
        Assert.Single(both.Steps, s => s.Joint is not null);
    }

    [Fact]
    public void What_comes_apart_pays_the_minutes_its_file_gives_for_it()
    {
        var pieces = Plan("built-in-but-comes-apart", "A", 3).Steps.Where(s => s.Kind == StepKind.TakePiece).ToList();

        Assert.Equal(["left", "right"], pieces.Select(s => s.Piece).Order());
        Assert.All(pieces, s => Assert.True(s.OutMinutes >= 6));
    }

    [Fact]
    public void Hidden_screws_are_undone_after_what_hides_them()
    {
        // the locker is held before its screws go; what is looked at here is the order of the rest
        var steps = Plan("screws-reached-only-from-inside", "B", 3).Steps.Where(s => s.Kind != StepKind.Hold).ToList();

        Assert.Equal(["A", "B", "B"], steps.Select(s => s.Part?.Text));
        Assert.Equal("B-screws", steps[1].Joint?.Text);
        Assert.Equal(OrderReason.Reach, steps[0].Why.Reason);
    }

    [Fact]
    public void A_drilled_screw_costs_more_than_one_that_turns()
    {
        var steps = Plan("sheared-screw-to-drill", "A", 3).Steps;
        double PerFixing(string joint, int count) => steps.Single(s => s.Joint?.Text == joint).OutMinutes / count;

        Assert.True(PerFixing("A-sheared", 1) > PerFixing("A-screws", 3));
        Assert.Contains("rill", steps.Single(s => s.Joint?.Text == "A-sheared").Action, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_that_overlap_by_the_tape_are_named_to_be_measured_again() =>
        Assert.Contains(Plan("overlap-in-the-measures", "A", 3).ToMeasure, m => m.Contains("A left cupboard", StringComparison.Ordinal) && m.Contains("B right cupboard", StringComparison.Ordinal));

    [Fact]
    public void Every_case_loads_is_short_says_what_it_teaches_and_is_listed()
    {
        var listed = File.ReadAllText(Path.Combine(CasesFiles.Folder, "README.md"));
        foreach (var name in CasesFiles.Names)
        {
            Assert.Contains("Right answer", Demo.Case(name).Note, StringComparison.Ordinal);
            Assert.True(File.ReadLines(Path.Combine(CasesFiles.Folder, $"{name}.wain.json")).Count() <= 150, name);
            Assert.Contains($"`{name}`", listed, StringComparison.Ordinal);
        }
    }

    private static RemovalPlan Plan(string name, string wanted, int playMm) =>
        RemovalPlanner.Remove(Demo.Case(name), Demo.Parts(wanted), new AccessOptions { ClearanceMm = playMm });
}
