using System.Globalization;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Survey.Damp;

/// <summary>Judges one board of a damp map.</summary>
internal static class SheetVerdict
{
    // a piece whose spread is nearly that of a piece without readings is unread; a board half unread cannot be judged. Own rules
    public const double NearlyUnknown = 0.75;

    private const double TooMuchUnread = 0.5;

    // a hand's breadth squared: less than this over a threshold is none [m²]
    private const double HandM2 = 0.01;

    public static bool IsUnread(DampPosterior field, int cell) => field.Ignorance(cell) > NearlyUnknown;

    public static DampSheetMap Of(DampNet net, DampPosterior field, DampSheet sheet, IReadOnlyList<int> cells, IReadOnlyList<DampReading> readings, IReadOnlyList<double[]> draws, IReadOnlyList<double> thresholds)
    {
        double Area(int cell) => net.Cells[cell].AreaMm2 * 1e-6;
        var over = thresholds.Select(t => new AreaOver(t, Middle(draws.Select(d => cells.Sum(c => d[c] > t ? Area(c) : 0))))).ToList();
        var unread = cells.Where(c => IsUnread(field, c)).ToList();
        var unreadShare = unread.Sum(Area) / sheet.AreaM2;
        var wettest = cells.MaxBy(c => field.QuantilePercent(c, 0.5));
        var (advice, because) = Judge(net, field, cells, readings.Any(r => r.Made.Percent > thresholds[0]), over, unread, unreadShare);
        return new(sheet, readings.Count, over, field.QuantilePercent(wettest, 0.5), net.Cells[wettest].Middle, unreadShare, advice, because);
    }

    private static (DampAdvice, string) Judge(DampNet net, DampPosterior field, IReadOnlyList<int> cells, bool readWet, List<AreaOver> over, List<int> unread, double unreadShare)
    {
        var (lowest, highest) = (over[0], over[^1]);
        var (mostOver, wettest) = (cells.Max(c => field.ProbabilityOver(c, highest.ThresholdPercent)), cells.Max(c => field.ProbabilityOver(c, lowest.ThresholdPercent)));
        var where = unread.Count > 0 ? $"; unread most at {At(net, Centre(net, unread))}" : "";
        // what was read wet is said even of a board that is mostly unread; what only its neighbours say is not enough to cut
        if (mostOver > 0.5 && readWet) return (DampAdvice.CutOrProbe, $"{Range(highest)}; probe there with a bradawl before it is kept{(unreadShare > TooMuchUnread ? where : "")}");
        if (wettest > 0.5 && readWet) return (DampAdvice.Dry, $"{Range(lowest)}; open it, dry it, read again{(unreadShare > TooMuchUnread ? where : "")}");
        if (unreadShare > TooMuchUnread) return (DampAdvice.CannotTell, string.Create(CultureInfo.InvariantCulture, $"no reading reaches {100 * unreadShare:0} % of it: measure at {At(net, Centre(net, unread))}"));
        if (wettest > 0.5) return (DampAdvice.CannotTell, $"{Range(lowest)}, by its neighbours alone: measure at {At(net, cells.MaxBy(c => field.ProbabilityOver(c, lowest.ThresholdPercent)))}");
        if (lowest.AreaM2.High > HandM2 && lowest.AreaM2.High > 0.1 * cells.Sum(c => net.Cells[c].AreaMm2 * 1e-6))
            return (DampAdvice.CannotTell, $"{Range(lowest)}: measure at {At(net, cells.MaxBy(c => field.ProbabilityOver(c, lowest.ThresholdPercent)))}");
        return (DampAdvice.Keep, $"{Range(lowest)}{where}");
    }

    private static string Range(AreaOver over) => over.AreaM2.High < HandM2
        ? string.Create(CultureInfo.InvariantCulture, $"less than a hand over {over.ThresholdPercent:0.#} %")
        : string.Create(CultureInfo.InvariantCulture, $"{over.AreaM2.Low:0.00} to {over.AreaM2.High:0.00} m² over {over.ThresholdPercent:0.#} %");

    private static string At(DampNet net, int cell) => string.Create(CultureInfo.InvariantCulture, $"x {net.Cells[cell].Middle.XMm:0}, y {net.Cells[cell].Middle.YMm:0}, z {net.Cells[cell].Middle.ZMm:0}");

    /// <summary>The unread piece nearest the middle of all unread ones.</summary>
    private static int Centre(DampNet net, List<int> unread)
    {
        var middle = new Fitout.Place(unread.Average(c => net.Cells[c].Middle.XMm), unread.Average(c => net.Cells[c].Middle.YMm), unread.Average(c => net.Cells[c].Middle.ZMm));
        return unread.MinBy(c => net.Cells[c].Middle.DistanceMm(middle));
    }

    private static Span Middle(IEnumerable<double> areas)
    {
        var sorted = areas.Order().ToList();
        double At(double share) => sorted[(int)Math.Round(share * (sorted.Count - 1))];
        return new(At(0.05), At(0.5), At(0.95));
    }
}
