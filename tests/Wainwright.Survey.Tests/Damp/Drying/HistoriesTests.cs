using System.Globalization;
using Wainwright.Methods.Moisture;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Tests.Damp.Drying;

public sealed class HistoriesTests(ITestOutputHelper said)
{
    // other floors than those that were watched while the drawing was tuned: of 700 to 735 what came out is in docs/damp.md, seen once; these are the first of them
    const int From = 700, Until = 712, Members = 100;

    static DampHistory Of(DampMap map, int members = Members) => Histories.Of(map, members, cancellation: TestContext.Current.CancellationToken);

    [Fact]
    public void Since_when_and_litres_of_floors_wetted_in_a_known_way_are_within_their_ranges()
    {
        int since = 0, litres = 0, held = 0, leak = 0, told = 0, hiddenIn = 0, hidden = 0;
        double effective = 0;
        for (var seed = From; seed < Until; seed++)
        {
            var twin = new TwinFloor(seed);
            int[] hide = [6, 12];
            var history = Of(twin.Map(hide));
            if (history.Stories.Count == 0) continue;
            told++;
            effective += history.Effective;
            var story = history.Stories.First(s => s.Story == WaterStory.Leak);
            if (history.Stories[0].Story == WaterStory.Leak) leak++;
            if (Within(story.SinceDays, twin.SinceDays)) since++;
            if (Within(story.Litres, twin.Litres)) litres++;
            if (Within(story.LitresHeld, twin.LitresHeld)) held++;
            var last = history.Frames[^1];
            foreach (var point in hide)
            {
                var cell = history.Map.Net.Nearest(twin.Job().Points[point].At, null)!.Value.Cell;
                hidden++;
                if (last.LowPercent[cell] - 1 <= twin.Truth(point) && twin.Truth(point) <= last.HighPercent[cell] + 1) hiddenIn++;
            }
            said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seed}: {(twin.IsVinyl ? "vinyl" : "bare")}, since {twin.SinceDays:0} in {story.SinceDays}, litres {twin.Litres:0.00} in {story.Litres}, held {twin.LitresHeld:0.00} in {story.LitresHeld}, leak {story.Chance:0.00}, effective {history.Effective:0.0}, most read {Enumerable.Range(0, 14).Max(twin.Read):0}"));
        }
        said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"of {told}: since {since}, litres {litres}, held {held}, leak the likelier {leak}; hidden readings {hiddenIn} of {hidden}; effective {effective / told:0.0}"));
        Assert.True(told >= 8);
        // wanted: nine of ten. All 31 had since when 31, litres 30, held 29, leak 31, hidden 51 of 62, 17.6 of 100 courses counting; so few as twelve may have one or two less by chance
        Assert.True(since >= 0.8 * told && litres >= 0.8 * told && held >= 0.8 * told && leak >= 0.8 * told && hiddenIn >= 0.7 * hidden);
        Assert.True(effective / told >= 0.1 * Members);
    }

    [Fact]
    public void The_two_leaks_of_the_camper_stay_apart_and_each_is_a_leak()
    {
        var map = DampMapping.Of(A.Read("demo", "touring-camper"), new DateOnly(2026, 3, 2), cellMm: 200)!;
        List<double> told = [];
        var history = Histories.Of(map, 60, new Listening(told.Add), TestContext.Current.CancellationToken);
        var likely = history.Stories.Where(s => s.Chance > 0.5).ToList();
        Assert.Equal(["F4", "F7"], likely.Select(s => s.Source[..2]).Order());
        Assert.All(likely, s => Assert.Equal(WaterStory.Leak, s.Story));
        var (roof, shower) = (likely.Single(s => s.Source.StartsWith("F4", StringComparison.Ordinal)), likely.Single(s => s.Source.StartsWith("F7", StringComparison.Ordinal)));
        Assert.True(roof.At.ZMm > 1500 && shower.At.ZMm < 300);
        Assert.Contains(roof.Sheets, s => s.Part.Text == "A10");
        Assert.Contains(shower.Sheets, s => s.Part.Text == "A36");
        Assert.DoesNotContain(shower.Sheets, s => s.Part.Text == "A10");
        Assert.DoesNotContain(roof.Sheets, s => s.Part.Text == "A36");

        // oldest first, the last is the day of the map and keeps to its readings; the end told is all of it
        Assert.Equal(history.Frames.Select(f => f.Day).Order(), history.Frames.Select(f => f.Day));
        Assert.Equal(0, history.Frames[^1].Day);
        Assert.All(map.Readings.Where(r => r.Made.Bound == MeterReading.Bound.About), r => Assert.InRange(r.Made.Percent, history.Frames[^1].LowPercent[r.Cell] - 3, history.Frames[^1].HighPercent[r.Cell] + 3));
        Assert.Equal(1, told.Max());
    }

    [Fact]
    public void Few_courses_bear_no_certainty()
    {
        const int few = 20;
        var history = Of(new TwinFloor(4).Map(), few);
        Assert.Equal(2, history.Stories.Count);
        Assert.Equal(1, history.Stories.Sum(s => s.Chance), 1e-9);
        // four of those twenty are of condensation, and before any reading it has a quarter of the chance
        Assert.All(history.Stories, s => Assert.InRange(s.Chance, 0.25 / (4 + 1) - 1e-9, 1 - (0.25 / (4 + 1)) + 1e-9));
        Assert.Contains(history.Told, t => t.Contains("bear no chance above", StringComparison.Ordinal));
    }

    [Fact]
    public void A_story_that_does_not_fit_is_told_apart_from_courses_that_are_too_few()
    {
        // soaked and dry by turns, which no water does
        var even = WetFloor.Read(11, WetFloor.Ply());
        var turns = even with { Readings = [.. even.Readings.Select((r, i) => i % 2 == 0 ? r with { Value = 80 } : r)] };
        Assert.Contains(Of(DampMapping.Of(turns, cellMm: 200)!, 40).Told, t => t.Contains("the stories hardly fit", StringComparison.Ordinal));

        var few = Of(new TwinFloor(6).Map(), 20);
        Assert.DoesNotContain(few.Told, t => t.Contains("hardly fit", StringComparison.Ordinal));
        Assert.Contains(few.Told, t => t.Contains("for want of courses, the stories fit", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dry_van_has_no_story()
    {
        var history = Of(WetFloor.Map(11, WetFloor.Ply()), 20);
        Assert.Empty(history.Stories);
        Assert.Null(history.Combined);
        Assert.Contains("nothing to explain", Assert.Single(history.Told), StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_can_be_called_off_and_refuses_nonsense()
    {
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        var map = new TwinFloor(0).Map();
        Assert.ThrowsAny<OperationCanceledException>(() => Histories.Of(map, 20, cancellation: stop.Token));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(map, 5));
    }

    sealed class Listening(Action<double> told) : IProgress<double>
    {
        public void Report(double value) => told(value);
    }

    static bool Within(Span span, double value) => span.Low <= value && value <= span.High;
}
