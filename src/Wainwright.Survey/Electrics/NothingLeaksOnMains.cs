using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Electrics;

/// <summary>No mains equipment sits below a fitting that can leak on it.</summary>
public static class NothingLeaksOnMains
{
    private const double ClearMm = 100;

    private static readonly Basis Rule = new(
        Source: "Common practice, no source: electrics above the water line, 100 mm to the side of anything that can drip",
        Assumes: ["water drips straight down: nothing leads it aside", "no drip tray between them"],
        Caution: "Water runs along pipes, cables and ribs: a wet place shows a path, not its source. Mains work belongs to a qualified electrician.",
        How: Provenance.CommonPractice);

    /// <summary>One check for each mains outlet, inlet, converter and residual-current device.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        var wet = WetPlaces.Leaking(job).ToList();
        if (wet.Count == 0) yield break;
        foreach (var part in job.Parts.Where(p => p.Devices.Any(IsMains)))
        {
            var draft = new Draft("mains-below-leak", "Nothing can leak on the mains equipment", part.Subject(), Rule, "100 mm aside of what can drip", Urgency.U1, Use.Mains, Use.Shower)
            {
                Remedy = "move it up and aside, shield it, give its cables a drip loop",
                Faults = ["dc-12", "mains-07"],
            };
            var at = part.Devices.OfType<Outlet>().FirstOrDefault(o => o.Medium == Medium.Mains)?.At;
            var gaps = wet.Where(w => w.Part.Id != part.Id).Select(w => (Spot: w, Mm: Nearness.SidewaysMm(w.Part, w.At, part, at))).ToList();
            foreach (var (spot, _) in gaps.Where(g => g.Mm is null)) draft.Miss($"place of {part.Name} or of {spot.Name}");
            var above = gaps.Where(g => g.Mm is { } mm && double.IsFinite(mm.Likely)).Select(g => (g.Spot, Mm: g.Mm!.Value)).ToList();
            foreach (var (spot, mm) in above.OrderBy(a => a.Mm.Likely).Take(3)) draft.Use($"sideways to {spot.Name} above it", $"{mm} mm", spot.Field, spot.Part.Known);
            if (above.Count == 0)
            {
                yield return draft.IsComplete ? draft.Holds("nothing that can leak lies above it") : draft.CannotTell("not everything that can leak has a place");
                continue;
            }
            var nearest = above.MinBy(a => a.Mm.Likely);
            var because = string.Create(CultureInfo.InvariantCulture, $"{nearest.Spot.Name} lies above it, {nearest.Mm.Likely:0} mm aside");
            var distance = new Span(above.Min(a => a.Mm.Low), nearest.Mm.Likely, above.Min(a => a.Mm.High));
            yield return distance.High < ClearMm
                ? draft.FallsShort(because) with { Demand = Span.Exactly(ClearMm), Capacity = distance, Unit = "mm", Margin = Check.MarginOf(Span.Exactly(ClearMm), distance) }
                : draft.Compare(Span.Exactly(ClearMm), distance, "mm", because, "the place of both, seen from above");
        }
    }

    private static bool IsMains(Device device) => device is MainsInlet or ResidualCurrentDevice or Outlet { Medium: Medium.Mains }
        or Converter { From: Medium.Mains } or Converter { To: Medium.Mains };
}
