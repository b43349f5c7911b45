using System.Text.Json;

namespace Wainwright.Cli.Tests;

/// <summary>What service costs as built, and the crew's schedule, through the command line. That the numbers are right is the planner's own tests' work.</summary>
public sealed class AccessTests
{
    static readonly string Workshop = Path.Combine(Repository.Top, "demo", "bicycle-workshop.wain.json");

    static string Served(TempFolder folder, string access = "remove", string more = "") => folder.Write("job.json", SmallVan.Text(parts: $$"""
        { "id": "P1", "name": "water pump", "system": "water", "known": "seen", "massKg": 1.5, "solids": [{ "shape": "box", "at": [100, 100, 0], "size": [200, 150, 120] }],
          "service": [{ "what": "clean the strainer", "everyMonths": 6, "access": "{{access}}" }]{{more}} }
        """));

    [Fact]
    public void A_small_van_says_what_its_service_costs_a_year()
    {
        using var folder = new TempFolder();
        var ran = Ran.Wain("access", Served(folder), "--json");
        Assert.Equal(Exit.Done, ran.Exit);
        var part = ran.Json.GetProperty("parts")[0];
        var visit = part.GetProperty("visits")[0];
        var minutes = part.GetProperty("remove").GetProperty("highMinutes").GetDouble();
        Assert.Equal(2 * minutes, visit.GetProperty("highMinutesPerYear").GetDouble(), 1e-9);
        Assert.Equal(2 * minutes / 60, ran.Json.GetProperty("hoursPerYear").GetDouble(), 1e-9);
        Assert.Equal("proved", part.GetProperty("remove").GetProperty("known").GetString());
        Assert.Equal(0, part.GetProperty("depth").GetInt32());
    }

    [Fact]
    public void A_part_nobody_measured_cannot_be_told_and_one_that_passes_no_door_falls_short()
    {
        using var folder = new TempFolder();
        var blank = folder.Write("blank.json", SmallVan.Text(parts: """{ "id": "P1", "name": "water pump", "system": "water", "known": "told", "service": [{ "what": "look", "everyMonths": 12, "access": "see" }] }""", joints: ""));
        var ran = Ran.Wain("access", blank);
        Assert.Equal(Exit.CannotTell, ran.Exit);
        Assert.Contains("P1 water pump has no size and place: measure it", ran.Out, StringComparison.Ordinal);

        var stuck = folder.Write("stuck.json", SmallVan.Text(parts: SmallVan.Crate("P1", size: "[1500, 1500, 1390]", at: "[100, 50, 0]", more: """, "service": [{ "what": "renew it", "everyMonths": 12, "access": "remove" }]"""), joints: ""));
        var no = Ran.Wain("access", stuck);
        Assert.Equal(Exit.FallsShort, no.Exit);
        Assert.Contains("no way", no.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_workshop_van_reads_as_a_table_with_sums_and_changes_and_the_change_can_be_made()
    {
        using var folder = new TempFolder();
        var ran = Ran.Wain("access", Workshop);
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Contains("h a year to get at what asks for service", ran.Out, StringComparison.Ordinal);
        Assert.Contains("B14 battery 100 Ah, no. 1: look at and tighten the terminals", ran.Out, StringComparison.Ordinal);
        Assert.Contains("1. Cut a service hatch", ran.Out, StringComparison.Ordinal);
        Assert.Empty(ran.Error);

        var made = folder.At("with-hatch.json");
        Assert.Equal(Exit.Done, Ran.Wain("access", Workshop, "--change", "1", "--out", made).Exit);
        Assert.Equal(Exit.Done, Ran.Wain("validate", made).Exit);
        double Hours(string job) => Ran.Wain("access", job, "--changes", "0", "--json").Json.GetProperty("hoursPerYear").GetDouble();
        Assert.True(Hours(made) < Hours(Workshop) - 0.4);
        Assert.Equal(Exit.BadInput, Ran.Wain("access", Workshop, "--change", "1", "--out", made).Exit);
        Assert.Contains("there is no change 40", Ran.Wain("access", Workshop, "--change", "40", "--out", folder.At("x.json")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_answer_for_programs_has_the_documented_shape()
    {
        var answer = Ran.Wain("access", Workshop, "--json").Json;
        Assert.Equal(["job", "title", "whole", "hoursPerYear", "lowHoursPerYear", "timesPerYear", "meanMinutes", "openVisits", "parts", "changes", "changesThought", "changesPlanned",
            "restSavesAtMostMinutesPerYear", "assumes", "toMeasure", "cautions"], Names(answer));
        Assert.Equal(["part", "name", "depth", "see", "reach", "remove", "visits"], Names(answer.GetProperty("parts")[0]));
        Assert.Equal(["known", "lowMinutes", "highMinutes", "partsOut", "because"], Names(answer.GetProperty("parts")[0].GetProperty("see")));
        Assert.Equal(["what", "everyMonths", "access", "timesPerYear", "lowMinutesPerYear", "highMinutesPerYear"], Names(answer.GetProperty("parts")[0].GetProperty("visits")[0]));
        Assert.Equal(["number", "kind", "what", "savedMinutesPerYear", "proved", "gains", "heed"], Names(answer.GetProperty("changes")[0]));
        Assert.Equal(["part", "what", "wasMinutes", "nowMinutes", "savedMinutesPerYear"], Names(answer.GetProperty("changes")[0].GetProperty("gains")[0]));
    }

    [Fact]
    public void A_crew_gets_a_table_by_the_clock_and_the_documented_shape()
    {
        var ran = Ran.Wain("crew", Workshop, "--remove", "B14");
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Contains("by the clock, proved", ran.Out, StringComparison.Ordinal);
        Assert.Contains("What sets the length", ran.Out, StringComparison.Ordinal);

        var crew = Ran.Wain("crew", Workshop, "--remove", "B14", "--people", "3", "--tools", "2", "--json").Json;
        Assert.Equal(["targets", "people", "answer", "minutes", "lowerBoundMinutes", "proved", "labourMinutes", "tasks", "critical", "tooFew", "assumes", "toMeasure", "cautions"], Names(crew));
        Assert.Equal(["step", "action", "part", "from", "to", "people", "tool", "where", "through", "cautions"], Names(crew.GetProperty("tasks")[0]));
        Assert.Equal(["step", "why", "words"], Names(crew.GetProperty("critical")[0]));
        Assert.Equal("schedule", crew.GetProperty("answer").GetString());
    }

    [Fact]
    public void Too_few_people_is_said_with_the_step()
    {
        using var folder = new TempFolder();
        var job = folder.Write("job.json", SmallVan.Text(parts: SmallVan.Crate("P1").Replace("\"massKg\": 4", "\"massKg\": 25", StringComparison.Ordinal)));
        var ran = Ran.Wain("crew", job, "--remove", "P1", "--people", "1");
        Assert.Equal(Exit.FallsShort, ran.Exit);
        Assert.Contains("takes 2: Take out P1", ran.Out, StringComparison.Ordinal);
        Assert.Equal(Exit.BadInput, Ran.Wain("crew", job, "--remove", "P1", "--people", "9").Exit);
        Assert.Equal(Exit.BadInput, Ran.Wain("crew", job).Exit);
    }

    static IEnumerable<string> Names(JsonElement answer) => answer.EnumerateObject().Select(p => p.Name);
}
