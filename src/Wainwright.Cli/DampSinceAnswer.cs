using System.Globalization;
using Wainwright.Methods.Moisture;
using Wainwright.Survey;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Cli;

/// <summary>How the van got wet: stories, since when, litres in and held, as it is shown to a person and to a program.</summary>
internal sealed class DampSinceAnswer(DampHistory history)
{
    public object ForPrograms() => new
    {
        members = history.Members,
        effective = history.Effective,
        stories = history.Stories.Select(s => new
        {
            story = s.Story,
            source = s.Source,
            at = new[] { s.At.XMm, s.At.YMm, s.At.ZMm },
            chance = s.Chance,
            sinceDays = Ends(s.SinceDays),
            litres = Ends(s.Litres),
            litresHeld = Ends(s.LitresHeld),
            sheets = s.Sheets.Select(b => b.Part.Text),
        }),
        readings = history.AtReadings.Select(r => new { point = r.Reading.Point.Text, percent = r.Reading.Made.Percent, bound = r.Reading.Made.Bound, courses = Ends(r.Percent) }),
        told = history.Told,
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        at.Out.WriteLine(ink.Strong(string.Create(CultureInfo.InvariantCulture, $"how it got wet: {history.Members} courses for each wet patch, of which the readings leave {history.Effective:0} or more; likely (5 to 95 of 100)")));
        foreach (var story in history.Stories)
        {
            var what = story.Story == WaterStory.Leak ? $"leak, {story.Source}" : $"condensation, {story.Source}";
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{100 * story.Chance,3:0} %  {what}; at x {story.At.XMm:0}, y {story.At.YMm:0}, z {story.At.ZMm:0}")));
            at.Out.WriteLine(ink.Faint(Shown.Plain($"       since {Days(story.SinceDays)}; let in {Litres(story.Litres)} l, still there {Litres(story.LitresHeld)} l; wets {string.Join(", ", story.Sheets.Select(s => s.Part))}")));
        }
        if (history.AtReadings.Count > 0)
            at.Out.WriteLine(Shown.Plain($"read and as the courses have it: {string.Join(", ", history.AtReadings.Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Reading.Point} {(r.Reading.Made.Bound == MeterReading.Bound.AtLeast ? "≥" : "")}{r.Reading.Made.Percent:0.#} ({r.Percent.Low:0}–{r.Percent.High:0})")))}"));
        foreach (var told in history.Told) at.Out.WriteLine(ink.Faint(Shown.Plain($"told: {told}")));
    }

    private static string Days(Span days) => string.Create(CultureInfo.InvariantCulture, $"{days.Likely:0} days ({days.Low:0}–{days.High:0})");

    private static string Litres(Span litres) => string.Create(CultureInfo.InvariantCulture, $"{litres.Likely:0.0#} ({litres.Low:0.0#}–{litres.High:0.0#})");

    private static object Ends(Span span) => new { low = span.Low, likely = span.Likely, high = span.High };
}
