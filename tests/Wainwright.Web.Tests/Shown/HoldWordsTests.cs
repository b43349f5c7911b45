using System.Text.Json;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;
using Wainwright.Survey;
using Wainwright.Survey.Retention;
using Wainwright.Web.Components.Drawing;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Shown;

/// <summary>What is worked out in g, as it stands on the screen: the figure, its doubt, and nothing that was not said.</summary>
public sealed class HoldWordsTests
{
    private static readonly Vector3D Forward = new(-1, 0, 0), Up = new(0, 0, 1);

    private static readonly PartHolding Loose = new()
    {
        Part = SmallVan.Job.Parts[0], HeldBy = HeldBy.Fixings, Verdict = Verdict.FallsShort, Because = "it comes loose at 0.4 g", Weakest = new("J1"),
        Directions = [new(Forward, "forward", new(0.2, 0.4, 0.7), 0.3, new("J1"), new("J1"), null), new(Up, "up", Span.Exactly(double.PositiveInfinity), null, null, null, null)],
        Cases =
        [
            new(LoadCase.DrivingLightVan, Verdict.FallsShort, "forward", 0.9, new(0.2, 0.4, 0.7), new("J1")),
            new(LoadCase.NineThreeCab, Verdict.FallsShort, "forward", 9, new(0.2, 0.4, 0.7), new("J1")),
        ],
    };

    private static readonly PartHolding Unknown = new() { Part = SmallVan.Job.Parts[1], HeldBy = HeldBy.NotRecorded, Verdict = Verdict.CannotTell, Because = "not known", NextLook = "weigh it" };

    [Theory]
    [InlineData(0.2, 0.4, 0.7, "0.4 g (0.2 to 0.7)")]
    [InlineData(12.4, 12.4, 12.4, "12 g")]
    [InlineData(-0.1, -0.1, -0.1, "falls")]
    [InlineData(-0.1, 0.5, 2, "0.5 g (falls to 2.0)")]
    [InlineData(3, double.PositiveInfinity, double.PositiveInfinity, "no end (3.0 to no end)")]
    public void A_figure_carries_the_ends_of_its_doubt(double low, double likely, double high, string words) => Assert.Equal(words, HoldWords.G(new Span(low, likely, high)));

    [Fact]
    public void What_was_not_worked_out_has_no_figure() => Assert.Equal("cannot tell", HoldWords.G(null));

    [Fact]
    public void The_answer_shown_is_the_one_shortest_of_what_is_asked()
    {
        Assert.Equal(LoadCase.NineThreeCab, HoldWords.Telling(Loose)!.Case);
        Assert.Equal(LoadCase.NineThreeCab, HoldWords.Crash(Loose)!.Case);
        Assert.Equal("forward", HoldWords.Worst(Loose)!.Words);
        Assert.Null(HoldWords.Telling(Unknown));
        Assert.Null(HoldWords.Worst(Unknown));
    }

    [Fact]
    public void Every_load_case_says_what_it_asks_where_it_is_from_and_what_it_does_not_prove() => Assert.All(Enum.GetValues<LoadCase>(), load =>
    {
        var of = HoldWords.Case(load);
        Assert.Matches("^[0-9.]+ g (forward|to either side)", HoldWords.Asks(of));
        Assert.NotEmpty(of.Source);
        Assert.NotEmpty(of.DoesNotProve);
    });

    [Fact]
    public void The_drawing_gets_verdict_figure_and_the_push_that_breaks_the_one_asked_about()
    {
        var held = new JobHolding(SmallVan.Job, [LoadCase.DrivingLightVan, LoadCase.NineThreeCab], [Loose, Unknown]);
        var drawn = JsonSerializer.SerializeToElement(Sketch.Judged(held, Loose));
        Assert.Equal(["A20 short ✕ A20 0.4 g", "A21 unknown ? A21"], drawn.GetProperty("parts").EnumerateArray().Select(p => $"{p.GetProperty("id")} {p.GetProperty("verdict")} {p.GetProperty("text")}"));
        var push = drawn.GetProperty("push");
        // the middle of the box of A20
        Assert.Equal([1450, 1450, 442], push.GetProperty("at").EnumerateArray().Select(v => v.GetDouble()));
        Assert.Equal([-1, 0, 0], push.GetProperty("along").EnumerateArray().Select(v => v.GetDouble()));
        Assert.Equal("0.4 g forward", push.GetProperty("text").GetString());
        Assert.Equal(JsonValueKind.Null, JsonSerializer.SerializeToElement(Sketch.Judged(held, Unknown)).GetProperty("push").ValueKind);
    }

    [Fact]
    public void The_load_cases_of_a_job_are_changed_and_taken_back()
    {
        var job = SmallVan.Job;
        var chosen = new Change("chosen", [Edit.Field<IReadOnlyList<LoadCase>>(job, "judgedAgainst", [LoadCase.TenAllRound])]);
        var changed = chosen.On(job).Job!;
        Assert.Equal([LoadCase.TenAllRound], changed.JudgedAgainst);
        Assert.Equal(JobFile.Write(job), JobFile.Write(chosen.Inverse().On(changed, undoing: true).Job!));
    }
}
