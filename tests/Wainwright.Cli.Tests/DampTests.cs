using System.Text.Json;

namespace Wainwright.Cli.Tests;

/// <summary>Where the water went, through the command line.</summary>
public sealed class DampTests
{
    static readonly string Workshop = Path.Combine(Repository.Top, "demo", "bicycle-workshop.wain.json");

    [Fact]
    public void The_answer_for_programs_has_the_documented_shape()
    {
        var ran = Ran.Wain("damp", Path.Combine(Repository.Top, "demo", "touring-camper.wain.json"), "--on", "2026-03-02", "--next", "2", "--json");
        var answer = ran.Json;
        Assert.Equal(["job", "title", "newest", "caution", "dryFrom", "dryBoards", "rangeMm", "verdict", "sheets", "readings", "told", "next", "cut", "log", "since", "drying"], Names(answer));
        var sheet = answer.GetProperty("sheets")[0];
        Assert.Equal(["id", "name", "material", "areaM2", "readings", "over", "wettestPercent", "wettestAt", "unreadShare", "advice", "because"], Names(sheet));
        Assert.Equal([16, 20, 28], sheet.GetProperty("over").EnumerateArray().Select(o => o.GetProperty("thresholdPercent").GetDouble()));
        Assert.Equal(["low", "likely", "high"], Names(sheet.GetProperty("over")[0].GetProperty("areaM2")));
        var reading = answer.GetProperty("readings")[0];
        Assert.Equal(["point", "reading", "sheet", "percent", "bound", "sigmaPoints", "offMm", "isReference", "leftOut"], Names(reading));
        Assert.Equal(["low", "likely", "high"], Names(reading.GetProperty("leftOut")));
        var next = answer.GetProperty("next")[0];
        Assert.Equal(["sheet", "at", "percent", "gainMinutes", "covers", "comesOut", "minutes"], Names(next));
        Assert.Equal(ran.Exit, answer.GetProperty("verdict").GetString() switch { "holds" => Exit.Done, "fallsShort" => Exit.FallsShort, _ => Exit.CannotTell });
    }

    [Fact]
    public void What_to_cut_has_the_documented_shape_and_is_null_unless_asked()
    {
        Assert.Equal(JsonValueKind.Null, Ran.Wain("damp", Workshop, "--json").Json.GetProperty("cut").ValueKind);
        var cut = Ran.Wain("damp", Workshop, "--cut", "--json").Json.GetProperty("cut");
        Assert.Equal(["assumed", "caution", "boards"], Names(cut));
        Assert.Equal(["id", "name", "fate", "pieces", "litres", "litresOut", "screws", "insulation", "lines", "wrongMinutes", "wrongIfKeptMinutes", "because"], Names(cut.GetProperty("boards")[0]));
        Assert.Contains("what to keep, dry and cut", Ran.Wain("damp", Workshop, "--cut", "--long-wet").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_drying_log_has_the_documented_shape_and_is_null_unless_asked()
    {
        Assert.Equal(JsonValueKind.Null, Ran.Wain("damp", Workshop, "--json").Json.GetProperty("log").ValueKind);
        var log = Ran.Wain("damp", Workshop, "--log", "--promised", "2026-05-20", "--json").Json.GetProperty("log");
        Assert.Equal(["firstDay", "mayCover", "readyOnDay", "caution", "points"], Names(log));
        var point = Assert.Single(log.GetProperty("points").EnumerateArray());
        Assert.Equal(["id", "where", "sheet", "targetPercent", "pace", "dryOnDay", "byPhysics", "because", "gate", "visits"], Names(point));
        Assert.Equal("cannotTell", point.GetProperty("pace").GetString());
        Assert.Equal(["verdict", "targetMet", "changePoints", "spanHours", "missing"], Names(point.GetProperty("gate")));
        Assert.Equal(["reading", "takenAt", "day", "percent", "atLeast", "foretold"], Names(point.GetProperty("visits")[0]));
        Assert.Contains("drying log from 2026-05-11", Ran.Wain("damp", Workshop, "--log").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void In_words_it_has_a_line_for_each_board_and_the_caution()
    {
        var ran = Ran.Wain("damp", Workshop, "--threshold", "18");
        Assert.Contains("m² over 18 %", ran.Out, StringComparison.Ordinal);
        Assert.Contains("B28 wall lining, left", ran.Out, StringComparison.Ordinal);
        Assert.Contains("caution: A map of what is likely between readings, not a measurement", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_forecast_has_each_care_asked_for_in_words_and_for_programs()
    {
        var words = Ran.Wain("damp", Workshop, "--forecast", "30").Out;
        Assert.Contains("how it dries: days until less than a hand is over 16 %, 30 days looked at", words, StringComparison.Ordinal);
        Assert.Contains("as it stands      finish lifted        side opened      heated, aired", words, StringComparison.Ordinal);
        Assert.Contains("taken: air of 16 °C and 58 %", words, StringComparison.Ordinal);

        var drying = Ran.Wain("damp", Workshop, "--forecast", "30", "--care", "heated", "--json").Json.GetProperty("drying");
        Assert.Equal(["targetPercent", "days", "cares", "inWords"], Names(drying));
        var care = Assert.Single(drying.GetProperty("cares").EnumerateArray());
        Assert.Equal("heatedAndAired", care.GetProperty("care").GetString());
        Assert.Equal(["id", "days", "wetAreaM2", "mouldIndex", "closed"], Names(care.GetProperty("sheets")[0]));
    }

    [Fact]
    public void How_it_got_wet_is_told_in_words_and_for_programs()
    {
        Assert.Contains("how it got wet: 20 courses for each wet patch", Ran.Wain("damp", Workshop, "--since", "--members", "20").Out, StringComparison.Ordinal);
        var since = Ran.Wain("damp", Workshop, "--since", "--members", "20", "--json").Json.GetProperty("since");
        Assert.Equal(["members", "effective", "stories", "readings", "told"], Names(since));
        Assert.Equal(["story", "source", "at", "chance", "sinceDays", "litres", "litresHeld", "sheets"], Names(since.GetProperty("stories")[0]));
    }

    [Theory]
    [InlineData("--members", "5")]
    [InlineData("--forecast", "0")]
    [InlineData("--care", "heated")]
    [InlineData("--on", "2.3.2026")]
    [InlineData("--next", "21")]
    [InlineData("--threshold", "99")]
    [InlineData("--promised", "2026-05-20")]
    public void A_wrong_option_is_bad_input(string option, string value) => Assert.Equal(Exit.BadInput, Ran.Wain("damp", Workshop, option, value).Exit);

    static string[] Names(JsonElement of) => [.. of.EnumerateObject().Select(p => p.Name)];
}
