using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Survey.Damp;

/// <summary>A place where the meter would tell most.</summary>
/// <param name="Sheet">The board.</param>
/// <param name="At">Where on it [mm].</param>
/// <param name="LowPercent">What it may read there: one in twenty is lower [%].</param>
/// <param name="LikelyPercent">The middle of that [%].</param>
/// <param name="HighPercent">One in twenty is higher [%].</param>
/// <param name="GainMinutes">Work that is saved on average by judging right after it [min].</param>
/// <param name="Covers">What stands in front of it.</param>
/// <param name="ComesOut">What must come out to get there, in order; empty when the place is open.</param>
/// <param name="Minutes">Work to get there, read and put back [min]; null when no way was found.</param>
/// <param name="Pays">Whether it saves more than it costs.</param>
public sealed record NextReading(DampSheet Sheet, Place At, double LowPercent, double LikelyPercent, double HighPercent, double GainMinutes, IReadOnlyList<PartId> Covers, IReadOnlyList<PartId> ComesOut, double? Minutes, bool Pays);

/// <summary>The next places for the meter.</summary>
public static class NextReadings
{
    // what being wrong costs, in the work of a square metre: rot found after refitting; sound board cut and renewed. Common practice, no source
    private const double KeptWetMinutes = 600, CutDryMinutes = 200;

    // a reading with walking and writing; a guess for each part in front before the planner is asked [min]
    private const double ReadMinutes = 3, CoverMinutes = 60;

    private const double UsualThreshold = 20;

    private const double ReadSigma = 1.1;

    private const int MostCandidates = 240, MostDear = 3;

    /// <summary>What it means that no place, or no further one, pays: nothing about boards that cannot be told.</summary>
    /// <param name="map">The map.</param>
    /// <param name="found">How many places were found before.</param>
    public static string WhyNoMore(DampMap map, int found)
    {
        ArgumentNullException.ThrowIfNull(map);
        var untold = map.Sheets.Count(s => s.Advice == DampAdvice.CannotTell);
        var none = found == 0 ? "no place found that pays" : "no further place found that pays";
        return untold == 0 ? none : $"{none}, by the odds; {untold} {(untold == 1 ? "board" : "boards")} still cannot be told: likely dry where nobody read is not known dry, and the place to read stands with each";
    }

    /// <summary>The best next places, best first, each worth its way; it stops where nothing pays any more.</summary>
    /// <param name="map">The map.</param>
    /// <param name="count">How many are wanted, 0 to 20.</param>
    /// <param name="thresholdPercent">Wet is over this [%].</param>
    /// <param name="alreadyOut">Parts that are out already.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count or threshold leaves its range.</exception>
    public static IReadOnlyList<NextReading> Of(DampMap map, int count, double thresholdPercent = UsualThreshold, IReadOnlyList<PartId>? alreadyOut = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, 20);
        if (count == 0) return [];
        IReadOnlyList<PartId> outNow = alreadyOut ?? map.OutOnTheDay;
        var standing = new Standing(map.Job, outNow);
        var known = new Dictionary<int, (IReadOnlyList<PartId> ComesOut, double? Minutes)>();
        var candidates = Candidates(map, thresholdPercent).Select(c => (Cell: c, Covers: standing.InFrontOf(map.Net, c))).ToList();
        List<NextReading> next = [];
        // what proves too dear to reach is dropped and the rest chosen anew, a few times
        for (var dear = 0; dear <= MostDear; dear++)
        {
            var chosen = ReadingWorth.Best(map.Field, Stakes(thresholdPercent), [.. candidates.Select(c => new ReadingWorth.Candidate(c.Cell, ReadMinutes + (CoverMinutes * c.Covers.Count)))], count);
            next.Clear();
            foreach (var place in chosen.TakeWhile(p => p.Gain > ReadMinutes))
            {
                var (cell, covers) = candidates[place.Candidate];
                if (!known.TryGetValue(cell, out var way)) known[cell] = way = Way(map, covers, outNow);
                next.Add(Reached(map, cell, covers, way, place.Gain));
            }
            var tooDear = next.Where(n => !n.Pays).Select(n => n.At).ToHashSet();
            if (tooDear.Count == 0 || dear == MostDear) break;
            candidates.RemoveAll(c => tooDear.Contains(map.Net.Cells[c.Cell].Middle));
        }
        return [.. next.Where(n => n.Pays)];
    }

    /// <summary>The threshold that keep or cut is decided by [%]: 20 where the map has it, else its middle one.</summary>
    /// <param name="map">The map.</param>
    public static double Decides(DampMap map) => map.ThresholdsPercent.Contains(UsualThreshold) ? UsualThreshold : map.ThresholdsPercent[map.ThresholdsPercent.Count / 2];

    internal static ReadingWorth.Stakes Stakes(double thresholdPercent) => new(thresholdPercent, KeptWetMinutes, CutDryMinutes, ReadSigma);

    private static (IReadOnlyList<PartId> ComesOut, double? Minutes) Way(DampMap map, IReadOnlyList<PartId> covers, IReadOnlyList<PartId> outNow)
    {
        if (covers.Count == 0) return ([], ReadMinutes);
        var plan = new RemovalPlanner(map.Job, new AccessOptions { AlreadyOut = outNow }).Plan([.. covers.Select(c => new Wanted(c, AccessKind.Remove))]);
        if (plan.CannotTell || plan.Proof == Proof.ProvedUnreachable) return ([], null);
        return ([.. plan.Steps.Where(s => s.Part is not null).Select(s => s.Part!.Value).Distinct()], ReadMinutes + plan.TotalMinutes);
    }

    private static NextReading Reached(DampMap map, int cell, IReadOnlyList<PartId> covers, (IReadOnlyList<PartId> ComesOut, double? Minutes) way, double gain) =>
        new(map.Net.Sheets[map.Net.Cells[cell].Sheet], map.Net.Cells[cell].Middle, map.Field.QuantilePercent(cell, 0.05), map.Field.QuantilePercent(cell, 0.5), map.Field.QuantilePercent(cell, 0.95), gain, covers, way.ComesOut, way.Minutes, way.Minutes is { } m && gain > m);

    /// <summary>Pieces that may be decided wrongly, spread over the boards: the worst of each square of two by two.</summary>
    private static IEnumerable<int> Candidates(DampMap map, double thresholdPercent)
    {
        var stakes = Stakes(thresholdPercent);
        double Doubt(int c)
        {
            var wet = map.Field.ProbabilityOver(c, thresholdPercent);
            return map.Net.Cells[c].AreaMm2 * Math.Min(wet * stakes.KeptWetPerM2, (1 - wet) * stakes.CutDryPerM2);
        }
        static int Square(double mm) => (int)Math.Floor(mm / 200);
        return Enumerable.Range(0, map.Net.Cells.Count).Select(c => (Cell: c, Doubt: Doubt(c)))
            .GroupBy(c => (map.Net.Cells[c.Cell].Sheet, Square(map.Net.Cells[c.Cell].Middle.XMm), Square(map.Net.Cells[c.Cell].Middle.YMm), Square(map.Net.Cells[c.Cell].Middle.ZMm)))
            .Select(g => g.MaxBy(c => c.Doubt)).OrderByDescending(c => c.Doubt).Take(MostCandidates).Select(c => c.Cell);
    }

    /// <summary>Parts out at the stage of the newest reading.</summary>
}
