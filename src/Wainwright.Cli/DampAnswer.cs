using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Survey;
using Wainwright.Survey.Damp;

namespace Wainwright.Cli;

/// <summary>Where the water went, as it is shown: to a person as a table, to a program as JSON.</summary>
internal sealed class DampAnswer(DampMap map, IReadOnlyList<NextReading> next, int asked)
{
    private const int NameWide = 34;

    private readonly Verdict worst = map.Sheets.Any(s => s.Advice is DampAdvice.Dry or DampAdvice.CutOrProbe) ? Verdict.FallsShort
        : map.Sheets.Any(s => s.Advice == DampAdvice.CannotTell) ? Verdict.CannotTell : Verdict.Holds;

    /// <summary>What to keep, dry and cut, where it was asked for.</summary>
    public DampCutAnswer? Cut { get; init; }

    /// <summary>How they got wet; null when nobody asked.</summary>
    public DampSinceAnswer? Since { get; init; }

    /// <summary>The drying log, where it was asked for.</summary>
    public DampLogAnswer? Log { get; init; }

    /// <summary>How the boards dry; null when nobody asked.</summary>
    public DampForecastAnswer? Drying { get; init; }

    public int Exit => worst switch { Verdict.Holds => Cli.Exit.Done, Verdict.FallsShort => Cli.Exit.FallsShort, _ => Cli.Exit.CannotTell };

    public object ForPrograms() => new
    {
        job = map.Job.Id,
        title = map.Job.Title,
        newest = map.Newest,
        caution = DampMap.Caution,
        dryFrom = map.DryFrom,
        dryBoards = map.DryBoards.Select(d => new { material = d.Material, percent = d.Percent }),
        rangeMm = map.Field.RangeMm,
        verdict = worst,
        sheets = map.Sheets.Select(s => new
        {
            id = s.Sheet.Part.Text,
            name = s.Sheet.Name,
            material = s.Sheet.Material,
            areaM2 = s.Sheet.AreaM2,
            readings = s.Readings,
            over = s.Over.Select(o => new { thresholdPercent = o.ThresholdPercent, areaM2 = new { low = o.AreaM2.Low, likely = o.AreaM2.Likely, high = o.AreaM2.High } }),
            wettestPercent = s.WettestPercent,
            wettestAt = Three(s.WettestAt),
            unreadShare = s.UnreadShare,
            advice = s.Advice,
            because = s.Because,
        }),
        readings = map.Readings.Select((r, i) => new
        {
            point = r.Point.Text,
            reading = r.Reading.Id.Text,
            sheet = map.Net.Sheets[map.Net.Cells[r.Cell].Sheet].Part.Text,
            percent = r.Made.Percent,
            bound = r.Made.Bound,
            sigmaPoints = r.SigmaPoints,
            offMm = r.OffMm,
            isReference = r.IsReference,
            leftOut = LeftOut(i),
        }),
        told = map.Told,
        next = next.Select(n => new
        {
            sheet = n.Sheet.Part.Text,
            at = Three(n.At),
            percent = new { low = n.LowPercent, likely = n.LikelyPercent, high = n.HighPercent },
            gainMinutes = n.GainMinutes,
            covers = n.Covers.Select(c => c.Text),
            comesOut = n.ComesOut.Select(c => c.Text),
            minutes = n.Minutes,
        }),
        cut = Cut?.ForPrograms(),
        log = Log?.ForPrograms(),
        since = Since?.ForPrograms(),
        drying = Drying?.ForPrograms(),
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        at.Out.WriteLine(ink.Strong(Shown.Plain($"{map.Job.Id}: where the water went, {(map.Newest is { } day ? string.Create(CultureInfo.InvariantCulture, $"readings up to {day:yyyy-MM-dd}") : "no reading")}")));
        at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"dry board, by {map.DryFrom} and the readings: {string.Join(", ", map.DryBoards.Select(d => string.Create(CultureInfo.InvariantCulture, $"{d.Material} {d.Percent:0.0} %")))}")));
        at.Out.WriteLine(ink.Faint(string.Create(CultureInfo.InvariantCulture, $"{"",-12} {"",-NameWide} {"m²",5} {"read",4}{string.Concat(map.ThresholdsPercent.Select(t => string.Create(CultureInfo.InvariantCulture, $" {$"m² over {t:0.#} %",16}")))}  wettest")));
        foreach (var sheet in map.Sheets)
        {
            at.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Word(ink, sheet.Advice)} {Short(Shown.Plain($"{sheet.Sheet.Part} {sheet.Sheet.Name}")),-NameWide} {sheet.Sheet.AreaM2,5:0.00} {sheet.Readings,4}{string.Concat(sheet.Over.Select(o => $" {Area(o.AreaM2),16}"))}  {sheet.WettestPercent:0} % at {Words(sheet.WettestAt)}"));
            if (sheet.Advice != DampAdvice.Keep) at.Out.WriteLine(ink.Faint(Shown.Plain($"{"",-13}{sheet.Because}")));
        }
        foreach (var told in map.Told) at.Out.WriteLine(Shown.Plain(told));
        if (asked > 0) Next(at, ink);
        Cut?.InWords(at);
        Since?.InWords(at);
        Log?.InWords(at);
        Drying?.InWords(at);
        at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{map.Job.Id}: {Count(DampAdvice.CutOrProbe)} to probe or cut, {Count(DampAdvice.Dry)} to dry, {Count(DampAdvice.CannotTell)} cannot be told, {Count(DampAdvice.Keep)} keep; {map.Readings.Count} readings on {map.Net.Cells.Count} pieces of board")));
        at.Out.WriteLine(ink.Faint($"caution: {DampMap.Caution}"));
    }

    private void Next(Terminal at, Ink ink)
    {
        at.Out.WriteLine(ink.Strong("where the meter tells most next"));
        foreach (var (place, i) in next.Select((n, i) => (n, i + 1)))
        {
            var way = place.Covers.Count == 0 ? "open" : $"comes out: {string.Join(", ", place.ComesOut)}";
            var minutes = place.Minutes is { } m ? string.Create(CultureInfo.InvariantCulture, $"{m:0} min") : "–";
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{i,2}. {place.Sheet.Part} {place.Sheet.Name} at {Words(place.At)}: {place.LowPercent:0} to {place.HighPercent:0} % expected; saves about {place.GainMinutes:0} min, costs {minutes}; {way}")));
        }
        if (next.Count < asked) at.Out.WriteLine(NextReadings.WhyNoMore(map, next.Count));
    }

    private object LeftOut(int reading) => new { low = map.Field.LeftOutQuantilePercent(reading, 0.05), likely = map.Field.LeftOutQuantilePercent(reading, 0.5), high = map.Field.LeftOutQuantilePercent(reading, 0.95) };

    private int Count(DampAdvice advice) => map.Sheets.Count(s => s.Advice == advice);

    private static string Word(Ink ink, DampAdvice advice) => advice switch
    {
        DampAdvice.Keep => ink.Good("keep        "),
        DampAdvice.Dry => ink.Doubt("dry         "),
        DampAdvice.CutOrProbe => ink.Bad("PROBE OR CUT"),
        _ => ink.Doubt("cannot tell "),
    };

    private static string Area(Span area) => area.High < 0.005 ? "–" : string.Create(CultureInfo.InvariantCulture, $"{area.Likely:0.00} ({area.Low:0.00}–{area.High:0.00})");

    private static string Short(string text) => text.Length <= NameWide ? text : text[..(NameWide - 1)] + "…";

    private static string Words(Place place) => string.Create(CultureInfo.InvariantCulture, $"x {place.XMm:0}, y {place.YMm:0}, z {place.ZMm:0}");

    private static double[] Three(Place place) => [place.XMm, place.YMm, place.ZMm];
}
