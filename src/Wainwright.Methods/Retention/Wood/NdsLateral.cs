namespace Wainwright.Methods.Retention;

/// <summary>Working value of a screw, nail or bolt loaded across its axis between two members: the six yield modes.</summary>
/// <remarks>
/// Re = Fem/Fes, Rt = lm/ls; Im and Is crush a member, II turns the fixing stiffly, IIIm and IIIs bend it once, IV twice; the
/// least counts. The reduction Rd brings the 5 % offset yield load down to a working value: KD under 1/4 in, 4, 3.6 and 3.2
/// times Kθ from there on. KD goes by the *root* diameter, as tables 12L and 12M fit no other way; one program's test of a
/// worked example fits only with the nominal diameter and comes out 8 % lower. That conflict is open.
/// </remarks>
public static class NdsLateral
{
    /// <summary>Yield limit equations.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2015/2018, tables 12.3.1A and 12.3.1B; KD from the root diameter as tables 12L and 12M are built",
        Assumes: ["members touch", "end, edge and spacing distances are kept: no splitting", "full penetration: see NdsPenetration"],
        Caution: "A working value for buildings. The yield load is the mean at which the joint starts to give, not where it lets go.",
        How: Provenance.Quoted);

    /// <summary>How the joint gives.</summary>
    public enum Mode
    {
        /// <summary>The main member crushes.</summary>
        Im,

        /// <summary>The side member crushes.</summary>
        Is,

        /// <summary>The fixing turns stiffly in both.</summary>
        II,

        /// <summary>The fixing bends once; the main member crushes.</summary>
        IIIm,

        /// <summary>The fixing bends once; the side member crushes.</summary>
        IIIs,

        /// <summary>The fixing bends in both members.</summary>
        IV,
    }

    /// <param name="DiameterMm">Diameter in the equations [mm]: root of a threaded fixing, shank of a nail; above 0.</param>
    /// <param name="MainMm">Bearing length in the main (holding) member [mm], above 0.</param>
    /// <param name="SideMm">Bearing length in the side (held) member [mm], above 0.</param>
    /// <param name="MainBearingMPa">Dowel bearing strength of the main member [MPa], above 0.</param>
    /// <param name="SideBearingMPa">Dowel bearing strength of the side member [MPa], above 0.</param>
    /// <param name="BendingYieldMPa">Bending yield strength of the fixing [MPa], above 0.</param>
    public sealed record Input(double DiameterMm, double MainMm, double SideMm, double MainBearingMPa, double SideBearingMPa, double BendingYieldMPa)
    {
        /// <summary>Nominal diameter of a threaded fixing [mm]; null: the same as in the equations.</summary>
        public double? NominalMm { get; init; }

        /// <summary>Greatest angle between load and grain in either member [°], 0 to 90; counts from 1/4 in on.</summary>
        public double GrainDegrees { get; init; }

        /// <summary>Two side members, one on each face of the main one.</summary>
        public bool IsDoubleShear { get; init; }
    }

    /// <param name="Governing">The mode that gives first.</param>
    /// <param name="AllowableN">Working value, ten years of load [N].</param>
    /// <param name="YieldN">Mean load at which the joint starts to give (the equations without reduction) [N].</param>
    /// <param name="AllowableByModeN">Working value of each mode that applies [N].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(Mode Governing, double AllowableN, double YieldN, IReadOnlyDictionary<Mode, double> AllowableByModeN, IReadOnlyList<string> OutsideRange);

    /// <summary>Reduction KD of fixings under 1/4 in (6.35 mm) [-].</summary>
    /// <param name="diameterMm">Diameter in the equations [mm], above 0.</param>
    public static double SmallReduction(double diameterMm)
    {
        var inches = Must.BePositive(diameterMm) / UsUnits.MmPerIn;
        return inches <= 0.17 + 1e-9 ? 2.2 : (10 * inches) + 0.5;
    }

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input joint)
    {
        double d = Must.BePositive(joint.DiameterMm), nominal = Must.BePositive(joint.NominalMm ?? joint.DiameterMm);
        List<string> outside = [];
        if (d > UsUnits.MmPerIn) outside.Add("diameter above 25.4 mm");
        if (nominal < d) outside.Add("nominal diameter below the diameter in the equations");
        var shares = joint.IsDoubleShear ? 2 : 1;
        Dictionary<Mode, double> allowable = [], yield = [];
        foreach (var (mode, oneN) in Yields(joint))
        {
            if (joint.IsDoubleShear && mode is Mode.II or Mode.IIIm) continue;
            yield[mode] = oneN * (mode == Mode.Im ? 1 : shares);
            allowable[mode] = yield[mode] / Reduction(mode, d, nominal, Must.BeWithin(joint.GrainDegrees, 0, 90));
        }
        var least = allowable.MinBy(m => m.Value);
        return new(least.Key, least.Value, yield.Values.Min(), allowable, outside);
    }

    static double Reduction(Mode mode, double d, double nominal, double grainDegrees)
    {
        const double quarterInchMm = 6.35;
        var grain = 1 + (0.25 * grainDegrees / 90);
        if (d < quarterInchMm) return SmallReduction(d) * (nominal >= quarterInchMm ? grain : 1);
        return grain * mode switch { Mode.Im or Mode.Is => 4, Mode.II => 3.6, _ => 3.2 };
    }

    /// <summary>The six loads of one shear plane, in the document's order.</summary>
    static IEnumerable<(Mode Mode, double N)> Yields(Input joint)
    {
        double d = joint.DiameterMm, lm = Must.BePositive(joint.MainMm), ls = Must.BePositive(joint.SideMm);
        double fm = Must.BePositive(joint.MainBearingMPa), fs = Must.BePositive(joint.SideBearingMPa), fy = Must.BePositive(joint.BendingYieldMPa);
        double re = fm / fs, rt = lm / ls;
        var k1 = (Math.Sqrt(re + (2 * re * re * (1 + rt + (rt * rt))) + (rt * rt * re * re * re)) - (re * (1 + rt))) / (1 + re);
        var k2 = -1 + Math.Sqrt((2 * (1 + re)) + (2 * fy * (1 + (2 * re)) * d * d / (3 * fm * lm * lm)));
        var k3 = -1 + Math.Sqrt((2 * (1 + re) / re) + (2 * fy * (2 + re) * d * d / (3 * fm * ls * ls)));
        yield return (Mode.Im, d * lm * fm);
        yield return (Mode.Is, d * ls * fs);
        yield return (Mode.II, k1 * d * ls * fs);
        yield return (Mode.IIIm, k2 * d * lm * fm / (1 + (2 * re)));
        yield return (Mode.IIIs, k3 * d * ls * fm / (2 + re));
        yield return (Mode.IV, d * d * Math.Sqrt(2 * fm * fy / (3 * (1 + re))));
    }
}
