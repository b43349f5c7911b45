using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Electrics;

namespace Wainwright.Survey.Electrics;

/// <summary>A mains outlet near a sink, basin, shower, tap, tank fitting or open bath is guarded by a residual-current device that was tested.</summary>
public static class OutletNearWaterIsProtected
{
    /// <summary>One check for each mains outlet.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        var wet = WetPlaces.Near(job).ToList();
        foreach (var (part, outlet) in job.Having<Outlet>().Where(o => o.Device.Medium == Medium.Mains))
            yield return Of(job, part, outlet, wet);
    }

    private static Check Of(Job job, Part part, Outlet outlet, List<WetPlaces.Spot> wet)
    {
        var draft = new Draft(
            "mains-outlet-near-water", "A mains outlet within 1.8 m of water is guarded by residual-current protection", part.Subject(),
            WetPlace.Basis, "6 ft (1.8 m) rule", Urgency.U0, Use.Mains)
        {
            Remedy = "do not use mains; residual-current protection by a qualified electrician, or move the outlet",
            Faults = ["mains-01", "mains-07"],
        };
        var at = $"parts[{part.Id}].outlet";
        draft.Use("fed by", outlet.FedBy?.Text, $"{at}.fedBy", part.Known);

        var gaps = wet.Select(w => (Spot: w, GapMm: Nearness.GapMm(part, outlet.At, w.Part, w.At))).ToList();
        foreach (var (spot, gap) in gaps.OrderBy(g => g.GapMm?.Likely ?? -1).Take(3))
            draft.Use($"gap to {spot.Name}", gap is { } mm ? $"{mm} mm" : null, spot.Field, spot.Part.Known);
        var known = gaps.Where(g => g.GapMm is not null).Select(g => (g.Spot, GapMm: g.GapMm!.Value)).ToList();
        Span? demand = known.Count == 0 ? null : Span.Exactly(WetPlace.WithinMm);
        Span? distance = known.Count == 0 ? null : new Span(known.Min(g => g.GapMm.Low), known.Min(g => g.GapMm.Likely), known.Min(g => g.GapMm.High));
        var judged = Judged();
        // guarded near water: the device decides, not the distance, so there is no margin to show
        if (judged.Verdict == Verdict.Holds && distance is not { Low: >= WetPlace.WithinMm }) return judged;
        return judged with { Demand = demand, Capacity = distance, Unit = "mm", Margin = demand is { } d && distance is { } c ? Check.MarginOf(d, c) : null };

        Check Judged()
        {
            var nearest = known.Count == 0 ? default : known.MinBy(g => g.GapMm.Likely);
            var where = known.Count == 0 ? "distance not known" : string.Create(CultureInfo.InvariantCulture, $"{nearest.GapMm.Likely:0} mm from {nearest.Spot.Name}");
            var allPlaced = wet.Count > 0 && known.Count == wet.Count;
            if (allPlaced && distance is { Low: >= WetPlace.WithinMm }) return draft.Holds($"{where}: farther than 1.8 m");

            var guard = Guard(job, part, draft);
            if (guard == Verdict.Holds) return draft.Holds($"{where}; a tested residual-current device guards it");
            if (guard == Verdict.FallsShort && distance is { High: < WetPlace.WithinMm })
                return draft.FallsShort($"{where}, and no residual-current device that trips in time guards it");

            if (wet.Count == 0) draft.Miss("every sink, basin, shower, tap and tank fitting: none is recorded");
            foreach (var gap in gaps.Where(g => g.GapMm is null)) draft.Miss($"place of the outlet or of {gap.Spot.Name}");
            if (guard == Verdict.FallsShort && allPlaced) draft.Miss($"measure closer: the gap from the outlet to {nearest.Spot.Name}");
            return draft.CannotTell(guard == Verdict.FallsShort
                ? $"{where}, and no residual-current device that trips in time guards it"
                : $"{where}; whether a residual-current device that trips in time guards it is not known");
        }
    }

    /// <summary>Whether protection is there and was proved; what is not known goes into the draft.</summary>
    private static Verdict Guard(Job job, Part part, Draft draft)
    {
        var (state, devices) = Protection.Of(job, part);
        if (state == Protection.State.NotTraced)
        {
            draft.Miss("what feeds the outlet, traced back to its residual-current device if there is one");
            return Verdict.CannotTell;
        }
        if (state == Protection.State.None) return Verdict.FallsShort;
        var tests = devices.Select(d => ResidualCurrentTripsInTime.Of(d.Part, d.Device)).ToList();
        foreach (var (holder, device) in devices)
            draft.Use("guarded by", $"{holder.Name}, {(device.TestedOn is { } on ? $"tested on {on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}" : "date of its test not recorded")}", $"parts[{holder.Id}].residualCurrent", holder.Known);
        if (tests.Exists(t => t.Verdict == Verdict.Holds)) return Verdict.Holds;
        if (tests.TrueForAll(t => t.Verdict == Verdict.FallsShort)) return Verdict.FallsShort;
        foreach (var gap in tests.SelectMany(t => t.Missing)) draft.Miss(gap);
        return Verdict.CannotTell;
    }
}
