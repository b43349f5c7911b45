using System.Text.Json;

namespace Wainwright.Cli.Tests;

/// <summary>Asking for the way out through the command line. That the plans are right is the planner's own tests' work.</summary>
public sealed class PlanTests
{
    static string Case(string name) => Path.Combine(Repository.Top, "demo", "cases", $"{name}.wain.json");

    static Ran Plan(string name, params string[] more) => Ran.Wain(["plan", Case(name), .. more]);

    [Theory]
    [InlineData("way-round-a-narrow-slot", "A", Exit.Done, "plan")]
    [InlineData("stuck-by-one-millimetre", "A", Exit.FallsShort, "unreachable")]
    [InlineData("overlap-in-the-measures", "A", Exit.CannotTell, "cannotTell")]
    public void The_exit_code_says_whether_there_is_a_way(string name, string part, int exit, string answer)
    {
        var ran = Plan(name, "--remove", part, "--json");
        Assert.Equal(exit, ran.Exit);
        Assert.Equal(answer, ran.Json.GetProperty("answer").GetString());
        Assert.Equal(exit != Exit.CannotTell, ran.Json.GetProperty("proved").GetBoolean());
    }

    [Fact]
    public void A_part_without_measures_is_never_called_free()
    {
        using var folder = new TempFolder();
        var job = folder.Write("job.json", SmallVan.Text(parts: """{ "id": "P1", "name": "water pump", "system": "water", "known": "told" }""", joints: ""));
        foreach (var question in (string[])["--reach", "--remove"])
        {
            var ran = Ran.Wain("plan", job, question, "P1");
            Assert.Equal(Exit.CannotTell, ran.Exit);
            Assert.Contains("cannot tell  P1 water pump has no size and place: measure it", ran.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_sums_add_up_and_the_targets_own_step_is_in_the_plan()
    {
        var plan = Plan("two-that-wait-for-each-other", "--remove", "T", "--json").Json;
        double Of(string name) => plan.GetProperty(name).GetDouble();
        Assert.Equal(Of("outMinutes") + Of("backMinutes") + Of("damageMinutes"), Of("totalMinutes"), 1e-9);
        var steps = plan.GetProperty("steps").EnumerateArray().ToList();
        Assert.Equal(Of("outMinutes"), steps.Sum(s => s.GetProperty("minutes").GetDouble()), 1e-9);
        Assert.Equal(["D", "B", "A", "T"], steps.Where(s => s.GetProperty("kind").GetString() == "takeOut").Select(s => s.GetProperty("part").GetString()));
        Assert.Equal("T", plan.GetProperty("target").GetString());
    }

    [Fact]
    public void What_stands_in_the_way_with_nothing_out_comes_with_its_millimetres()
    {
        var blocked = Plan("way-round-a-narrow-slot", "--remove", "A", "--json").Json.GetProperty("blockedBy").EnumerateArray().First(b => b.GetProperty("direction").GetString() == "rearward");
        Assert.Equal("B", blocked.GetProperty("part").GetString());
        Assert.Equal(1, blocked.GetProperty("millimetres").GetInt32());
    }

    [Fact]
    public void The_answer_for_programs_has_the_documented_shape()
    {
        var plan = Plan("two-that-wait-for-each-other", "--remove", "T", "--json").Json;
        Assert.Equal(["target", "targets", "reachOnly", "answer", "proved", "lowerBoundMinutes", "totalMinutes", "outMinutes", "backMinutes", "damageMinutes", "lowMinutes", "steps", "blockedBy",
            "heldForGood", "assumes", "toMeasure", "cautions", "audit"], Names(plan));
        Assert.Equal(["number", "part", "joint", "line", "kind", "action", "minutes", "backMinutes", "damageMinutes", "origin", "people", "why", "whyFor", "inEveryPlan", "through", "with", "licence", "cautions", "tilted"],
            Names(plan.GetProperty("steps")[0]));
        Assert.Equal(["target", "part", "direction", "millimetres", "freeMillimetres", "dodge"], Names(plan.GetProperty("blockedBy")[0]));
        Assert.Equal(["what", "part", "by", "byParts", "nearestOpening", "millimetres", "landing", "tilting"], Names(Plan("stuck-by-one-millimetre", "--remove", "A", "--json").Json.GetProperty("heldForGood")[0]));
    }

    [Fact]
    public void Several_parts_are_one_question_whose_shared_work_is_paid_once()
    {
        double Total(params string[] parts) => Plan("shared-blocker-paid-once", ["--remove", .. parts, "--json"]).Json.GetProperty("totalMinutes").GetDouble();
        Assert.True(Total("P", "Q") < Total("P") + Total("Q"));
        Assert.Equal(Total("P", "Q"), Plan("shared-blocker-paid-once", "--remove", "P", "--remove", "Q", "--json").Json.GetProperty("totalMinutes").GetDouble());
    }

    [Fact]
    public void What_is_out_already_costs_nothing_and_what_must_stay_is_planned_round()
    {
        double Total(params string[] more) => Plan("two-that-wait-for-each-other", ["--remove", "T", "--json", .. more]).Json.GetProperty("totalMinutes").GetDouble();
        Assert.True(Total("--already-out", "D") < Total());
        Assert.Equal(Exit.FallsShort, Plan("two-that-wait-for-each-other", "--remove", "T", "--must-stay", "A").Exit);
    }

    [Fact]
    public void The_work_sheet_names_every_part_that_comes_out()
    {
        using var folder = new TempFolder();
        Assert.Equal(Exit.Done, Plan("two-that-wait-for-each-other", "--remove", "T", "--sheet", folder.At("sheet.html")).Exit);
        var sheet = File.ReadAllText(folder.At("sheet.html"));
        Assert.All((string[])["filler strip", "right half", "left half", "battery cabinet"], p => Assert.Contains(p, sheet, StringComparison.Ordinal));
        Assert.Equal(Exit.BadInput, Plan("two-that-wait-for-each-other", "--remove", "T", "--sheet", folder.At("sheet.txt")).Exit);
    }

    [Fact]
    public void A_plan_is_replayed_when_asked_and_says_what_was_walked()
    {
        var ran = Plan("screws-reached-only-from-inside", "--remove", "B", "--audit", "--json");
        Assert.Equal(Exit.Done, ran.Exit);
        var audit = ran.Json.GetProperty("audit");
        Assert.True(audit.GetProperty("holds").GetBoolean());
        Assert.Equal(2, audit.GetProperty("loads").GetInt32());
        Assert.True(audit.GetProperty("hands").GetInt32() > 0);
        Assert.Contains("audit: replayed step by step without a fault", Plan("screws-reached-only-from-inside", "--remove", "B", "--audit").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Asked_twice_it_answers_alike() => Assert.Equal(Plan("duct-through-a-plinth", "--remove", "C", "--json").Out, Plan("duct-through-a-plinth", "--remove", "C", "--json").Out);

    [Fact]
    public void A_question_without_a_part_or_with_two_meanings_is_bad_input()
    {
        Assert.Equal(Exit.BadInput, Plan("shared-blocker-paid-once").Exit);
        Assert.Contains("either --reach PART or --remove PART", Plan("shared-blocker-paid-once", "--reach", "P", "--remove", "Q").Error, StringComparison.Ordinal);
        Assert.Contains("there is no part “p” in this job; there is P", Plan("shared-blocker-paid-once", "--remove", "p").Error, StringComparison.Ordinal);
        Assert.Contains("there is no stage “x”", Plan("shared-blocker-paid-once", "--remove", "P", "--stage", "x").Error, StringComparison.Ordinal);
        Assert.Equal(Exit.BadInput, Plan("shared-blocker-paid-once", "--remove", "P", "--seconds", "0").Exit);
    }

    static IEnumerable<string> Names(JsonElement answer) => answer.EnumerateObject().Select(p => p.Name);
}
