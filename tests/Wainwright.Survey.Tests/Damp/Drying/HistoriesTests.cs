using System.Globalization;
using Wainwright.Methods.Moisture;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Tests.Damp.Drying;

public sealed class HistoriesTests(ITestOutputHelper said)
{
    const int Twins = 12, Members = 120;

    static DampHistory Of(DampMap map, int members = Members) => Histories.Of(map, members, cancellation: TestContext.Current.CancellationToken);

    [Fact]
    public void Since_when_and_litres_of_floors_wetted_in_a_known_way_are_within_their_ranges()
    {
        int since = 0, litres = 0, held = 0, leak = 0, told = 0, hiddenIn = 0, hidden = 0;
        double effective = 0;
        for (var seed = 0; seed < Twins; seed++)
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
        Assert.True(since >= 0.6 * told && litres >= 0.7 * told && held >= 0.7 * told && leak >= 0.7 * told && hiddenIn >= 0.7 * hidden);
    }

    static bool Within(Span span, double value) => span.Low <= value && value <= span.High;
}
