using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>A sheet that something is screwed to is no rigid plate: only its fixings near by help.</summary>
/// <remarks>Own rule: 20 thicknesses away can be counted on, 40 are likely, all of them cannot be ruled out.</remarks>
internal static class Reach
{
    private const double ThinMm = 25, BroadMm = 300, CountedOn = 20, Likely = 40;

    public static HashSet<HeldFixing> Within(IReadOnlyList<HeldFixing> fixings, HeldChain chain, StrengthEnd end)
    {
        var kept = fixings.ToHashSet();
        if (end == StrengthEnd.High) return kept;
        for (var body = 1; body < chain.Bodies.Count; body++)
        {
            if (ThicknessMm(chain.Bodies[body].Part) is not { } thick) continue;
            var enters = fixings.Where(f => f.To == body).Select(f => f.AtMm).ToList();
            var own = fixings.Where(f => f.Body == body).ToList();
            if (enters.Count == 0 || own.Count == 0) continue;
            double Away(HeldFixing f) => enters.Min(e => (e - f.AtMm).Length);
            var reach = thick * (end == StrengthEnd.Low ? CountedOn : Likely);
            var least = own.Select(Away).Order().ElementAt(Math.Min(3, own.Count - 1));
            foreach (var far in own.Where(f => Away(f) > Math.Max(reach, least))) kept.Remove(far);
        }
        return kept;
    }

    private static double? ThicknessMm(Part part)
    {
        if (part.Bounds() is not var (low, high)) return null;
        double[] size = [high.XMm - low.XMm, high.YMm - low.YMm, high.ZMm - low.ZMm];
        Array.Sort(size);
        return size[0] <= ThinMm && size[1] >= BroadMm ? size[0] : null;
    }
}
