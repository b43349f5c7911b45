using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Foretells how the boards of a van dry from the day of its damp map on.</summary>
public static class Forecasting
{
    /// <summary>Dry is under this unless asked otherwise [%]: no mould from the air.</summary>
    public const double UsualTargetPercent = 16;

    /// <summary>Longest look ahead [d].</summary>
    public const double MostDays = 3650;

    // of the map's likely maps so many are drawn, and where the drawing begins: fixed, so that a job gives one answer
    private const int Draws = 200, DrawFrom = 1;

    private const int Frames = 25;

    // ends of the start: beyond them a draw counts as the end
    private const double LowStart = 0.03, HighStart = 0.97;

    private const double HandM2 = 0.01;

    /// <summary>The forecast under one kind of care.</summary>
    /// <param name="map">The map it starts from.</param>
    /// <param name="care">What is done.</param>
    /// <param name="days">How far to look [d], above 0 and up to <see cref="MostDays"/>.</param>
    /// <param name="targetPercent">Dry is under this [%], 8 to 30.</param>
    /// <param name="progress">Told the share that is done [0–1].</param>
    /// <param name="cancellation">Calls it off.</param>
    /// <exception cref="ArgumentOutOfRangeException">Days or target leave their range.</exception>
    /// <exception cref="OperationCanceledException">It was called off.</exception>
    public static DryingForecast Of(DampMap map, DryingCare care, double days, double targetPercent = UsualTargetPercent, IProgress<double>? progress = null, CancellationToken cancellation = default) =>
        Of(map, care, days, targetPercent, null, progress, cancellation);

    /// <summary>The forecast under one kind of care, with the mould that grew while the boards got wet.</summary>
    /// <param name="map">The map it starts from.</param>
    /// <param name="care">What is done.</param>
    /// <param name="days">How far to look [d], above 0 and up to <see cref="MostDays"/>.</param>
    /// <param name="targetPercent">Dry is under this [%], 8 to 30.</param>
    /// <param name="wetting">How the boards got wet, for the mould index; null when nobody worked it out.</param>
    /// <param name="progress">Told the share that is done [0–1].</param>
    /// <param name="cancellation">Calls it off.</param>
    /// <exception cref="ArgumentOutOfRangeException">Days or target leave their range.</exception>
    /// <exception cref="OperationCanceledException">It was called off.</exception>
    public static DryingForecast Of(DampMap map, DryingCare care, double days, double targetPercent, DampHistory? wetting, IProgress<double>? progress = null, CancellationToken cancellation = default) =>
        Of(map, care, days, targetPercent, wetting, DryingAir.Of(map).Under(care), progress, cancellation);

    /// <summary>The same in an air that is known.</summary>
    internal static DryingForecast Of(DampMap map, DryingCare care, double days, double targetPercent, DampHistory? wetting, DryingAir air, IProgress<double>? progress, CancellationToken cancellation)
    {
        if (!(days > 0 && days <= MostDays)) throw new ArgumentOutOfRangeException(nameof(days), days, $"above 0 and up to {MostDays} days");
        if (!(targetPercent is >= 8 and <= 30)) throw new ArgumentOutOfRangeException(nameof(targetPercent), targetPercent, "8 to 30 %");
        var net = map.Net;
        var panelFactor = PatchWeighing.PanelFactor(map);
        var built = new AsBuilt(map.Job, net, map.OutOnTheDay, panelFactor);
        double[] when = [.. Enumerable.Range(0, Frames + 1).Select(i => days * i * i / (Frames * Frames))];
        var cells = Enumerable.Range(0, net.Cells.Count).ToArray();
        double[][] starts = [.. new[] { LowStart, 0.5, HighStart }.Select(share => cells.Select(c => map.Field.QuantilePercent(c, share)).ToArray())];
        double done = 0;
        var guard = new Lock();
        var courses = DryingCourses.Of(doubt => built.Under(care, air, doubt, SlicesOfSheet.Fine), starts, air, when, share =>
        {
            lock (guard) progress?.Report(Math.Min(1, done += share));
        }, cancellation);

        var draws = map.Field.Draws(Draws, DrawFrom);
        var slow = Slow();
        var frames = FramesOf(courses, draws, slow, cancellation);
        var sheets = net.Sheets.Select((sheet, s) => Judge(net, courses, draws, slow, s, targetPercent, air.C, built.Closed(s, care), wetting)).ToList();
        return new(care, targetPercent, days, frames, sheets, Assumed(care, air, panelFactor));
    }

    /// <summary>How slow the materials of each draw are.</summary>
    private static double[] Slow()
    {
        var chance = new Random(DrawFrom);
        return [.. Enumerable.Range(0, Draws).Select(_ => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble()))];
    }

    private static DampFrame[] FramesOf(DryingCourses courses, IReadOnlyList<double[]> draws, double[] slow, CancellationToken cancellation)
    {
        var cells = draws[0].Length;
        var frames = courses.Days.Select(d => new DampFrame(d, new double[cells], new double[cells], new double[cells])).ToArray();
        Parallel.For(0, cells, new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount }, cell =>
        {
            var values = new double[draws.Count];
            for (var f = 0; f < frames.Length; f++)
            {
                for (var d = 0; d < values.Length; d++) values[d] = courses.Percent(f, cell, draws[d][cell], slow[d]);
                Array.Sort(values);
                var ends = Ends(values);
                (((double[])frames[f].LowPercent)[cell], ((double[])frames[f].LikelyPercent)[cell], ((double[])frames[f].HighPercent)[cell]) = (ends.Low, ends.Likely, ends.High);
            }
        });
        return frames;
    }

    private static SheetDrying Judge(DampNet net, DryingCourses courses, IReadOnlyList<double[]> draws, double[] slow, int sheet, double target, double surfaceC, string closed, DampHistory? wetting)
    {
        int[] cells = [.. Enumerable.Range(0, net.Cells.Count).Where(c => net.Cells[c].Sheet == sheet)];
        var days = new double[draws.Count];
        var left = new double[draws.Count];
        for (var d = 0; d < draws.Count; d++)
        {
            var area = courses.Days.Select((_, f) => cells.Sum(c => courses.Percent(f, c, draws[d][c], slow[d]) > target ? net.Cells[c].AreaMm2 * 1e-6 : 0)).ToArray();
            (days[d], left[d]) = (DryOn(courses.Days, area), area[^1]);
        }
        var panel = BoardMaterial.IsPanel(net.Sheets[sheet].Material);
        double Mould(int end)
        {
            var humid = courses.Humidity(end);
            var wettest = cells.MaxBy(c => humid.Sum(h => h[c]));
            return BoardMould.Highest(panel, courses.Days, [.. humid.Select(h => h[wettest])], surfaceC, BoardMould.Before(net, wetting, wettest, end, surfaceC));
        }
        Array.Sort(days);
        Array.Sort(left);
        return new(net.Sheets[sheet], Ends(days), Ends(left), new(Mould(0), Mould(1), Mould(2)), closed);
    }

    /// <summary>The day from which on less than a hand is wet; infinite when it is not within the frames.</summary>
    private static double DryOn(IReadOnlyList<double> days, double[] areaM2)
    {
        var last = Array.FindLastIndex(areaM2, a => a > HandM2);
        if (last < 0) return 0;
        if (last == areaM2.Length - 1) return double.PositiveInfinity;
        return days[last] + ((days[last + 1] - days[last]) * (areaM2[last] - HandM2) / (areaM2[last] - areaM2[last + 1]));
    }

    private static Span Ends(double[] sorted)
    {
        double At(double share) => sorted[(int)Math.Round(share * (sorted.Length - 1))];
        return new(At(0.05), At(0.5), At(0.95));
    }

    /// <summary>Parts out at the stage of the newest reading.</summary>

    private static List<string> Assumed(DryingCare care, DryingAir air, double panelFactor) =>
    [
        air.From,
        string.Create(CultureInfo.InvariantCulture, $"boards as warm as the air, {air.C:0.#} °C; no water comes in from the day of the map on"),
        care switch
        {
            DryingCare.AsBuilt => "what lies on and behind the boards stays, as drawn",
            DryingCare.FinishLifted => "coverings of floor and linings lifted all over, furniture left standing over the hollow under it",
            DryingCare.OneSideOpened => "the side to the room bare all over; what lies behind stays; a partition open on both sides",
            _ => "the side to the room bare all over and aired by a fan; what lies behind stays; a partition open on both sides",
        },
        "resistances of materials and coverings, wicking and airing of hollows known to a factor of two or three either way: carried through the ranges; rates of airing and what a sheet over a seam carries are own rules, no source",
        string.Create(CultureInfo.InvariantCulture, $"panels settle at {panelFactor:0.00} of solid wood{(panelFactor == BoardStuff.PanelFactor ? ", the middle of 0.8 to 1" : ", by the dry references in the air of the day")}"),
        "insulation and battens behind that no point reads begin at rest with the board before them, 98 % at most",
    ];
}
