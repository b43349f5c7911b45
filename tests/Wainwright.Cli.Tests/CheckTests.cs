using System.Text.Json;

namespace Wainwright.Cli.Tests;

/// <summary>Judging through the command line: exit codes, the shape for programs, the words for people.</summary>
public sealed class CheckTests
{
    static string Case(string name) => Path.Combine(Repository.Top, "demo", "cases", $"{name}.wain.json");

    static Ran Check(string name, params string[] more) => Ran.Wain(["check", Case(name), "--on", "2026-06-01", .. more]);

    static JsonElement One(string name, string id) => Check(name, "--json").Json.GetProperty("checks").EnumerateArray().First(c => c.GetProperty("id").GetString() == id);

    [Theory]
    [InlineData("outlet-near-sink-unprotected", Exit.FallsShort)] // others there cannot be told: falling short beats that
    [InlineData("outlet-near-sink-not-traced", Exit.CannotTell)]
    [InlineData("axle-over-its-limit", Exit.FallsShort)]
    [InlineData("axle-not-weighed", Exit.CannotTell)]
    public void The_exit_code_is_that_of_the_worst_judgement(string name, int exit) => Assert.Equal(exit, Check(name).Exit);

    [Fact]
    public void A_van_about_which_nothing_can_be_asked_yet_is_no_pass()
    {
        using var folder = new TempFolder();
        Assert.Equal(Exit.CannotTell, Ran.Wain("check", folder.Write("job.json", SmallVan.Text())).Exit);
    }

    [Fact]
    public void The_answer_for_programs_has_the_documented_shape()
    {
        var answer = Check("outlet-near-sink-unprotected", "--json").Json;
        Assert.Equal(["job", "title", "on", "verdict", "counts", "checks"], Names(answer));
        Assert.Equal(["id", "claim", "subject", "subjectKind", "subjectName", "verdict", "because", "demand", "capacity", "unit", "margin", "governing", "source", "provenance", "assumptions",
            "caution", "remedy", "missing", "appliesTo", "ifShort", "faults", "inputs"], Names(answer.GetProperty("checks")[0]));
        var check = One("outlet-near-sink-unprotected", "mains-outlet-near-water");
        foreach (var quantity in (string[])["demand", "capacity", "margin"]) Assert.Equal(["low", "likely", "high"], Names(check.GetProperty(quantity)));
        Assert.Equal("fallsShort", check.GetProperty("verdict").GetString());
        Assert.Equal("B", check.GetProperty("subject").GetString());
    }

    [Fact]
    public void What_cannot_be_told_names_the_look_that_would_tell()
    {
        var checks = Check("heater-return-not-measured", "--json").Json.GetProperty("checks").EnumerateArray().Where(c => c.GetProperty("verdict").GetString() == "cannotTell").ToList();
        Assert.NotEmpty(checks);
        Assert.All(checks, c => Assert.NotEqual(0, c.GetProperty("missing").GetArrayLength()));
    }

    [Fact]
    public void Every_judgement_carries_its_source_and_its_caution_in_both_answers()
    {
        var checks = Check("outlet-near-sink-unprotected", "--json").Json.GetProperty("checks").EnumerateArray().ToList();
        var words = Check("outlet-near-sink-unprotected").Out;
        Assert.All(checks, c =>
        {
            Assert.Contains(c.GetProperty("source").GetString()!, words, StringComparison.Ordinal);
            Assert.Contains(c.GetProperty("caution").GetString()!, words, StringComparison.Ordinal);
            Assert.NotEqual("", c.GetProperty("source").GetString());
            Assert.NotEqual("", c.GetProperty("caution").GetString());
        });
        Assert.DoesNotContain('\u001b', words);
    }

    [Fact]
    public void The_day_decides_what_is_in_date_and_a_wrong_day_is_bad_input()
    {
        var camper = Path.Combine(Repository.Top, "demo", "touring-camper.wain.json");
        string Alarm(string on) => Ran.Wain("check", camper, "--on", on, "--json").Json.GetProperty("checks").EnumerateArray().First(c => c.GetProperty("subject").GetString() == "A59").GetProperty("verdict").GetString()!;
        Assert.Equal("fallsShort", Alarm("2026-06-01"));
        Assert.NotEqual("fallsShort", Alarm("2020-06-01"));
        Assert.Equal(Exit.BadInput, Ran.Wain("check", camper, "--on", "1.6.2026").Exit);
    }

    [Fact]
    public void A_job_in_the_store_and_its_file_are_judged_alike()
    {
        using var folder = new TempFolder();
        Ran.Wain("import", Case("outlet-near-sink-unprotected"), "--store", folder.At("store"));
        Assert.Equal(Check("outlet-near-sink-unprotected", "--json").Out, Ran.Wain("check", "CASE-15", "--on", "2026-06-01", "--store", folder.At("store"), "--json").Out);
    }

    static IEnumerable<string> Names(JsonElement answer) => answer.EnumerateObject().Select(p => p.Name);
}
