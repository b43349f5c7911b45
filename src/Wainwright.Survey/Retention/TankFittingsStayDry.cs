using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Braking and swerving do not wet the upper fittings of a tank that stand clear of the water at rest.</summary>
public static class TankFittingsStayDry
{
    // a fitting lower than this part of the height is wet in use and has to be tight anyway
    private const double UpperPart = 0.6;

    /// <summary>One check for each tank with a fitting high on it.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var cases = Holding.Chosen(job, []).Where(AskedG.IsDriving).DefaultIfEmpty(LoadCase.DrivingLightVan).ToList();
        foreach (var (part, tank) in job.Having<Tank>())
        {
            if (part.Bounds() is not var (low, high)) continue;
            var upper = tank.Fittings.Where(f => f.At is { } at && at.ZMm >= low.ZMm + UpperPart * (high.ZMm - low.ZMm)).ToList();
            if (upper.Count > 0) yield return Of(part, tank, upper, AskedG.Case(cases[0]), low, high);
        }
    }

    private static Check Of(Part part, Tank tank, IReadOnlyList<TankFitting> upper, AccelerationCase load, Place low, Place high)
    {
        var basis = new Basis($"{load.Source}; {LiquidTilt.Basis.Source}", LiquidTilt.Basis.Assumes, $"{LiquidTilt.Basis.Caution} {JobHolding.Caution}", LiquidTilt.Basis.How);
        var draft = new Draft("tank-fittings-dry", "Braking and swerving do not wet its upper fittings, as full as it was found", part.Subject(), basis, load.Title, Urgency.U3, Use.Drive)
        {
            Remedy = "tight lids and a breather led up to the roof; or drive with less in it",
            Faults = ["water-07"],
        };
        draft.Assume("the tank is a box as drawn, its walls thin");
        var (from, which, way) = Worst(upper, load, low, high);
        var litres = from * tank.VolumeL.Value;
        var words = string.Create(CultureInfo.InvariantCulture, $"from {litres:0} l on, {way} wets its {which}");
        draft.Use("filled as found", tank.FilledL, "l", $"parts[{part.Id}].devices[tank].filledL", part.Known);
        draft.Use("full", tank.VolumeL, "l", $"parts[{part.Id}].devices[tank].volumeL", part.Known);
        if (tank.FilledL is not { } filled) return draft.CannotTell(words, $"how full {part.Name} is driven");
        var there = Span.Of(litres, 0.1 * litres);
        return draft.Compare(Span.Of(filled.Value, filled.PlusMinus ?? 0.1 * filled.Value), there, "l", words, $"how full {part.Name} is, and how high its {which} stands");
    }

    private static (double Fill, string Which, string Way) Worst(IReadOnlyList<TankFitting> upper, AccelerationCase load, Place low, Place high)
    {
        var worst = (Fill: double.PositiveInfinity, Which: "", Way: "");
        foreach (var fitting in upper)
            foreach (var (way, words) in new[] { (Direction.Forward, "braking"), (Direction.Rearward, "pulling away"), (Direction.Left, "swerving"), (Direction.Right, "swerving") })
            {
                if (Demand.Added(load, PullWay.Of(way)) is not { } g) continue;
                var along = way is Direction.Forward or Direction.Rearward;
                var at = fitting.At!.Value;
                var (from, to, place) = along ? (low.XMm, high.XMm, at.XMm) : (low.YMm, high.YMm, at.YMm);
                var towards = way is Direction.Rearward or Direction.Right ? 1 : -1;
                var half = (to - from) / 2;
                var wets = LiquidTilt.Of(new(to - from, high.ZMm - low.ZMm, Math.Clamp(towards * (place - (from + to) / 2), -half, half), Math.Clamp(at.ZMm - low.ZMm, 0, high.ZMm - low.ZMm), g)).WetsFromFill;
                if (wets < worst.Fill) worst = (wets, fitting.Name, words);
            }
        return worst;
    }
}
