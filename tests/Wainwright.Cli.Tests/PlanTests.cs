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
        Assert.Equal(["target", "targets", "reachOnly", "stage", "answer", "proved", "lowerBoundMinutes", "totalMinutes", "outMinutes", "backMinutes", "damageMinutes", "lowMinutes", "steps", "blockedBy",
            "heldForGood", "assumes", "toMeasure", "cautions", "audit", "kind", "sought", "certificate", "anew", "others", "keeping", "wouldFree", "whatBlocks", "tape"], Names(plan));
        Assert.Equal(["number", "part", "joint", "line", "kind", "action", "minutes", "backMinutes", "damageMinutes", "origin", "people", "why", "whyFor", "inEveryPlan", "through", "with", "licence", "cautions", "tilted", "key", "onTrial", "lift", "whyOneOf", "whyOneOfFor", "whyWall"],
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
    public void One_part_is_reached_while_another_comes_out()
    {
        var plan = Plan("shared-blocker-paid-once", "--remove", "P", "--reach", "Q", "--json").Json;
        Assert.Equal(["P", "Q"], plan.GetProperty("targets").EnumerateArray().Select(t => t.GetString()));
        Assert.Contains("reach", plan.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("kind").GetString()));
    }

    [Fact]
    public void The_aim_is_said_in_words_and_for_programs()
    {
        var plan = Plan("shared-blocker-paid-once", "--remove", "P", "Q", "--least", "parts", "--json").Json.GetProperty("sought");
        Assert.Equal(("fewestPartsOut", 3.0), (plan.GetProperty("objective").GetString(), plan.GetProperty("value").GetDouble()));
        Assert.Contains("takes out fewer than 3 parts", Plan("shared-blocker-paid-once", "--remove", "P", "Q", "--least", "parts").Out, StringComparison.Ordinal);
        Assert.Equal(Exit.BadInput, Plan("shared-blocker-paid-once", "--remove", "P", "--least", "fuss").Exit);
    }

    [Fact]
    public void Other_ways_and_the_price_of_keeping_a_part_in_come_when_asked()
    {
        var ran = Plan("shared-blocker-paid-once", "--remove", "P", "--others", "2", "--price-of-keeping", "U", "S");
        Assert.Contains("another way 1", ran.Out, StringComparison.Ordinal);
        Assert.Contains("to keep U", ran.Out, StringComparison.Ordinal);
        var json = Plan("shared-blocker-paid-once", "--remove", "P", "--others", "2", "--price-of-keeping", "U", "S", "--json").Json;
        var others = json.GetProperty("others");
        Assert.Equal(others.GetProperty("fragility").GetDouble(), json.GetProperty("keeping")[0].GetProperty("more").GetDouble(), 1e-9);
        Assert.Equal("U", others.GetProperty("plans")[0].GetProperty("stayIn")[0].GetString());
        Assert.Equal(0, json.GetProperty("keeping")[1].GetProperty("more").GetDouble());
        Assert.Contains("no plan then", Plan("two-that-wait-for-each-other", "--remove", "T", "--price-of-keeping", "A").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_certificate_is_written_and_checked_and_a_file_that_is_there_is_left_as_it_is()
    {
        using var folder = new TempFolder();
        var file = folder.At("proof.json");
        var ran = Plan("two-that-wait-for-each-other", "--remove", "T", "--certificate", file, "--audit");
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Contains("checked sentence by sentence; all of it holds", ran.Out, StringComparison.Ordinal);
        var written = JsonDocument.Parse(File.ReadAllText(file)).RootElement;
        Assert.Equal("out T", written.GetProperty("targets")[0].GetString());
        var before = File.ReadAllText(file);
        Assert.Equal(Exit.BadInput, Plan("stuck-by-one-millimetre", "--remove", "A", "--certificate", file, "--audit").Exit);
        Assert.Equal(before, File.ReadAllText(file));
        var none = folder.At("none.json");
        Assert.Equal(Exit.FallsShort, Plan("stuck-by-one-millimetre", "--remove", "A", "--certificate", none, "--audit").Exit);
        Assert.NotEqual(0, JsonDocument.Parse(File.ReadAllText(none)).RootElement.GetProperty("walls").GetArrayLength());
    }

    [Fact]
    public void What_is_done_is_left_out_and_what_turned_out_otherwise_is_planned_for()
    {
        var all = Plan("sheared-screw-to-drill", "--remove", "A", "--json").Json.GetProperty("steps").GetArrayLength();
        var ran = Plan("sheared-screw-to-drill", "--remove", "A", "--done", "1", "--now", "A=glued", "--json");
        Assert.Equal(all, ran.Json.GetProperty("steps").GetArrayLength());
        Assert.Equal(1, ran.Json.GetProperty("anew").GetProperty("done").GetArrayLength());
        Assert.Contains("is glued: prised off", Plan("sheared-screw-to-drill", "--remove", "A", "--now", "A=glued").Out, StringComparison.Ordinal);
        Assert.Equal(Exit.FallsShort, Plan("sheared-screw-to-drill", "--remove", "A", "--now", "A=stays").Exit);
        Assert.Contains("was found", Plan("sheared-screw-to-drill", "--remove", "A", "--found", "box=0,0,0,10,10,10").Out, StringComparison.Ordinal);
        var blocked = Plan("sheared-screw-to-drill", "--remove", "A", "--found", "strut=1310,0,300,50,50,900", "--found", "box=0,0,0,10,10,10");
        Assert.Contains("found1 strut", blocked.Out, StringComparison.Ordinal);
        Assert.Contains("How it is held is not recorded", blocked.Out, StringComparison.Ordinal);
        foreach (var wrong in (string[][])[["--done", "1-99"], ["--done", "x"], ["--now", "A"], ["--now", "Z=glued"], ["--now", "A=bent"], ["--now", "A-screws=bent"], ["--found", "box=1,2,3"], ["--found", "box=0,0,0,0,1,1"]])
            Assert.Equal(Exit.BadInput, Plan("sheared-screw-to-drill", ["--remove", "A", .. wrong]).Exit);
    }

    [Fact]
    public void Where_there_is_no_way_the_least_change_that_would_free_it_is_named()
    {
        var ran = Plan("door-too-small-by-32-mm", "--remove", "A");
        Assert.Contains("Open rear door by 32 mm to the left.", ran.Out, StringComparison.Ordinal);
        var change = Plan("door-too-small-by-32-mm", "--remove", "A", "--json").Json.GetProperty("wouldFree")[0];
        Assert.Equal(("opening", 32), (change.GetProperty("kind").GetString(), change.GetProperty("millimetres").GetInt32()));
    }

    [Fact]
    public void What_blocks_any_part_is_told_with_its_millimetres() =>
        Assert.Contains("A rearward: 100 mm, then B left cupboard, 1 mm too large to pass; 1 mm", Plan("way-round-a-narrow-slot", "--remove", "A", "--why", "A").Out, StringComparison.Ordinal);

    [Fact]
    public void Measures_that_decide_are_named_to_be_taken_again()
    {
        var ran = Plan("leaves-exactly-through-the-door", "--remove", "A", "--tape", "5");
        Assert.Contains("parts larger, no way", ran.Out, StringComparison.Ordinal);
        Assert.Contains("again, to the mm", ran.Out, StringComparison.Ordinal);
        Assert.Equal(0, Plan("leaves-exactly-through-the-door", "--remove", "A", "--tape", "5", "--json").Json.GetProperty("tape").GetProperty("measureAgain")[0].GetProperty("spareMillimetres").GetInt32());
        Assert.Equal(Exit.BadInput, Plan("leaves-exactly-through-the-door", "--remove", "A", "--tape", "0").Exit);
    }

    [Fact]
    public void Tilted_past_what_would_come_out_for_it_a_load_takes_less_with_it()
    {
        var van = Path.Combine(Repository.Top, "demo", "bicycle-workshop.wain.json");
        var (flat, tilted) = (Ran.Wain("plan", van, "--remove", "B16", "--json").Json, Ran.Wain("plan", van, "--remove", "B16", "--tilt-past", "--audit", "--json").Json);
        Assert.DoesNotContain(flat.GetProperty("steps").EnumerateArray(), s => s.GetProperty("tilted").GetBoolean());
        Assert.True(tilted.GetProperty("steps").EnumerateArray().Last().GetProperty("tilted").GetBoolean());
        Assert.True(tilted.GetProperty("totalMinutes").GetDouble() < flat.GetProperty("totalMinutes").GetDouble());
        Assert.True(tilted.GetProperty("proved").GetBoolean());
        Assert.Equal(0, tilted.GetProperty("audit").GetProperty("faults").GetArrayLength());
    }

    [Fact]
    public void Asked_twice_it_answers_alike() => Assert.Equal(Plan("duct-through-a-plinth", "--remove", "C", "--json").Out, Plan("duct-through-a-plinth", "--remove", "C", "--json").Out);

    [Fact]
    public void Without_a_stage_the_plan_starts_from_the_last_one_and_says_so()
    {
        using var folder = new TempFolder();
        var opened = folder.Write("opened.wain.json", SmallVan.Text(
            parts: SmallVan.Pump + """, { "id": "P2", "name": "lid over it", "system": "furniture", "known": "seen", "massKg": 3, "standsOn": ["P1"], "solids": [{ "shape": "box", "at": [100, 100, 120], "size": [200, 150, 20] }] }""",
            joints: "",
            more: """ "stages": [{ "id": "s1", "name": "as found", "kind": "asFound", "on": "2026-03-01" }, { "id": "s2", "name": "opened", "kind": "stripDown", "on": "2026-03-02", "partsOut": ["P2"] }],"""));
        var now = Ran.Wain("plan", opened, "--remove", "P1");
        Assert.Contains("from the stage “opened” on: P2 out already", now.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Take out P2", now.Out, StringComparison.Ordinal);
        Assert.Contains("Take out P2", Ran.Wain("plan", opened, "--remove", "P1", "--stage", "s1").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_question_without_a_part_or_of_what_is_not_there_is_bad_input()
    {
        Assert.Equal(Exit.BadInput, Plan("shared-blocker-paid-once").Exit);
        Assert.Contains("Say what is wanted: --see PART, --reach PART or --remove PART", Plan("shared-blocker-paid-once").Error, StringComparison.Ordinal);
        Assert.Contains("there is no part “p” in this job; there is P", Plan("shared-blocker-paid-once", "--remove", "p").Error, StringComparison.Ordinal);
        Assert.Contains("there is no stage “x”", Plan("shared-blocker-paid-once", "--remove", "P", "--stage", "x").Error, StringComparison.Ordinal);
        Assert.Equal(Exit.BadInput, Plan("shared-blocker-paid-once", "--remove", "P", "--seconds", "0").Exit);
    }

    static IEnumerable<string> Names(JsonElement answer) => answer.EnumerateObject().Select(p => p.Name);
}
