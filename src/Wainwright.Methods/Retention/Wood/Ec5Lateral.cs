namespace Wainwright.Methods.Retention;

/// <summary>Characteristic strength of a fixing across its axis between two wooden members: the six modes of Eurocode 5.</summary>
/// <remarks>
/// β = fh2/fh1, t1 head side, t2 point side. Modes c to f gain the rope effect Fax/4, limited to a share of the mode's own part:
/// round nails 15 %, square 25 %, other nails 50 %, screws 100 %, bolts 25 %.
/// </remarks>
public static class Ec5Lateral
{
    /// <summary>Johansen modes.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1995-1-1, equation 8.6 and 8.2.2(2)",
        Assumes: ["single shear", "distances of Ec5Distances are kept"],
        Caution: "A characteristic value: divide by the material factor and multiply by kmod for a design value. No outside worked value was opened for it.",
        How: Provenance.FromMemory);

    /// <summary>How the joint gives.</summary>
    public enum Mode
    {
        /// <summary>The head side crushes.</summary>
        A,

        /// <summary>The point side crushes.</summary>
        B,

        /// <summary>The fixing turns stiffly in both.</summary>
        C,

        /// <summary>The fixing bends in the point side.</summary>
        D,

        /// <summary>The fixing bends in the head side.</summary>
        E,

        /// <summary>The fixing bends in both.</summary>
        F,
    }

    /// <param name="DiameterMm">Diameter [mm], above 0.</param>
    /// <param name="HeadSideMm">Thickness of the held member, t1 [mm], above 0.</param>
    /// <param name="PointSideMm">Penetration in the holding member, t2 [mm], above 0.</param>
    /// <param name="HeadSideEmbedmentMPa">Embedment strength of the held member [MPa], above 0.</param>
    /// <param name="PointSideEmbedmentMPa">Embedment strength of the holding member [MPa], above 0.</param>
    /// <param name="YieldMomentNmm">Yield moment of the fixing [N·mm], above 0.</param>
    /// <param name="AxialN">Characteristic withdrawal or pull-through, the lesser [N], 0 or more.</param>
    /// <param name="RopeShare">Share of a mode's own part that the rope effect may add [-], 0 to 1.</param>
    public sealed record Input(
        double DiameterMm, double HeadSideMm, double PointSideMm, double HeadSideEmbedmentMPa, double PointSideEmbedmentMPa,
        double YieldMomentNmm, double AxialN = 0, double RopeShare = 0);

    /// <param name="Governing">The mode that gives first.</param>
    /// <param name="CharacteristicN">Characteristic strength of one fixing [N].</param>
    /// <param name="ByModeN">All six [N].</param>
    public sealed record Result(Mode Governing, double CharacteristicN, IReadOnlyDictionary<Mode, double> ByModeN);

    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(Input joint)
    {
        double d = Must.BePositive(joint.DiameterMm), t1 = Must.BePositive(joint.HeadSideMm), t2 = Must.BePositive(joint.PointSideMm);
        double f1 = Must.BePositive(joint.HeadSideEmbedmentMPa), b = Must.BePositive(joint.PointSideEmbedmentMPa) / f1, r = t2 / t1;
        double my = Must.BePositive(joint.YieldMomentNmm), own = f1 * t1 * d;
        double Roped(double part) => part + Math.Min(Must.NotBeNegative(joint.AxialN) / 4, Must.BeWithin(joint.RopeShare, 0, 1) * part);
        var turns = Math.Sqrt(b + (2 * b * b * (1 + r + (r * r))) + (b * b * b * r * r)) - (b * (1 + r));
        var inPoint = Math.Sqrt((2 * b * (1 + b)) + (4 * b * (2 + b) * my / (f1 * d * t1 * t1))) - b;
        var inHead = Math.Sqrt((2 * b * b * (1 + b)) + (4 * b * (1 + (2 * b)) * my / (f1 * d * t2 * t2))) - b;
        Dictionary<Mode, double> modes = new()
        {
            [Mode.A] = own,
            [Mode.B] = b * f1 * t2 * d,
            [Mode.C] = Roped(own / (1 + b) * turns),
            [Mode.D] = Roped(1.05 * own / (2 + b) * inPoint),
            [Mode.E] = Roped(1.05 * f1 * t2 * d / (1 + (2 * b)) * inHead),
            [Mode.F] = Roped(1.15 * Math.Sqrt(2 * b / (1 + b)) * Math.Sqrt(2 * my * f1 * d)),
        };
        var least = modes.MinBy(m => m.Value);
        return new(least.Key, least.Value, modes);
    }
}
