using System.Text.Json;

namespace Wainwright.Cli.Tests;

/// <summary>Holding through the command line: exit codes, the shape for programs, cautions beside every figure.</summary>
public sealed class HoldTests
{
    static string Case(string name) => Path.Combine(Repository.Top, "demo", "cases", $"{name}.wain.json");

    static Ran Hold(string name, params string[] more) => Ran.Wain(["hold", Case(name), .. more]);

    static string[] Names(JsonElement of) => [.. of.EnumerateObject().Select(p => p.Name)];

    [Theory]
    [InlineData("cupboard-two-of-three-screws-sheared", Exit.FallsShort)]
    [InlineData("drawer-without-a-latch", Exit.Done)] // its drawer is judged by wain check, the cabinet holds
    public void The_exit_code_is_that_of_the_worst_part(string name, int exit) => Assert.Equal(exit, Hold(name).Exit);

    [Fact]
    public void The_answer_for_programs_has_the_documented_shape()
    {
        var answer = Hold("tank-with-no-restraint", "--json").Json;
        Assert.Equal(["job", "title", "verdict", "caution", "cases", "chance", "counts", "parts"], Names(answer));
        var part = answer.GetProperty("parts")[0];
        Assert.Equal(["id", "name", "verdict", "because", "heldBy", "ladenKg", "stop", "swerve", "bump", "roll", "cases", "weakest", "givesBy", "through", "riders", "nextLook", "assumed", "directions"], Names(part));
        Assert.Equal(["low", "likely", "high"], Names(part.GetProperty("stop")));
        Assert.Equal(["load", "verdict", "worst", "demandG", "factorG", "governing"], Names(part.GetProperty("cases")[0]));
        Assert.Equal(26, part.GetProperty("directions").GetArrayLength());
        Assert.Equal(["way", "words", "factorG", "firstYieldG", "governing", "first"], Names(part.GetProperty("directions")[0]));
        Assert.Equal("nothing", part.GetProperty("heldBy").GetString());
    }

    [Fact]
    public void A_mend_has_the_documented_shape_is_written_and_holds()
    {
        using var folder = new TempFolder();
        var file = Path.Combine(folder.Path, "mended.wain.json");
        var ran = Hold("screws-6-mm-from-a-plywood-edge", "A", "--fix", "--out", file, "--json");
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Equal(["job", "part", "caution", "before", "steps", "price", "currency", "isCheapest", "whyNot", "cautions", "after", "checksAfter", "file"], Names(ran.Json));
        Assert.Equal(["what", "count", "at", "minutes", "material"], Names(ran.Json.GetProperty("steps")[0]));
        Assert.Equal(Exit.Done, Ran.Wain("hold", file).Exit);
        Assert.Equal(Exit.BadInput, Hold("screws-6-mm-from-a-plywood-edge", "A", "--fix", "--out", file).Exit);
    }

    [Theory]
    [InlineData("tank-with-no-restraint")]
    [InlineData("tank-with-no-restraint", "A")]
    [InlineData("tank-with-no-restraint", "A", "--fix")]
    public void The_caution_stands_wherever_a_figure_in_g_does(string name, params string[] more) => Assert.Contains("It certifies nothing", Hold(name, more).Out, StringComparison.Ordinal);

    [Fact]
    public void A_load_case_can_be_chosen_and_an_unknown_one_is_refused_with_the_list()
    {
        Assert.Equal("twentyForward", Hold("shelf-with-no-lip", "--case", "twentyForward", "--json").Json.GetProperty("cases")[0].GetString());
        var refused = Hold("shelf-with-no-lip", "--case", "moon");
        Assert.Equal(Exit.BadInput, refused.Exit);
        Assert.Contains("nineThreeCab", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chance_is_drawn_alike_every_time_and_names_looks()
    {
        JsonElement Chance() => Hold("screws-6-mm-from-a-plywood-edge", "A", "--chance", "200", "--json").Json.GetProperty("chance");
        var (first, second) = (Chance(), Chance());
        Assert.Equal(first.GetRawText(), second.GetRawText());
        Assert.Equal(["load", "notHolding", "standardError", "ways", "looks"], Names(first[0]));
        Assert.True(first[1].GetProperty("notHolding").GetDouble() > first[0].GetProperty("notHolding").GetDouble());
    }

    [Fact]
    public void A_part_that_is_not_there_and_a_mend_of_no_part_are_refused()
    {
        Assert.Equal(Exit.BadInput, Hold("shelf-with-no-lip", "NO").Exit);
        Assert.Equal(Exit.BadInput, Hold("shelf-with-no-lip", "--fix").Exit);
    }
}
