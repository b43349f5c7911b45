namespace Wainwright.Methods.Electrics;

/// <summary>American wire gauge: bare area, and the size that a voltage drop asks for by circular mils.</summary>
/// <remarks>
/// d = 0.127·92^((36 − n)/39) mm, circular mils CM = (d/0.0254)².  Size for a drop: CM = K·I·L/E with K = 10.75 Ω·cmil/ft,
/// L out and back [ft], E allowed drop [V].  1/0 is n = 0, 2/0 is −1, 3/0 is −2, 4/0 is −3.
/// </remarks>
public static class WireGauge
{
    /// <summary>Gauge formula and the marine trade's circular-mil rule.</summary>
    public static readonly Basis Basis = new(
        Source: "ASTM B258 gauge progression (from memory; agrees with published wire tables); ABYC E-11 circular-mil formula as a supplier quotes it",
        Assumes: ["copper near 30 °C", "length counted out and back"],
        Caution: "SAE gauges are smaller than AWG of the same number. A size must also carry its fuse: pass ampacity too.",
        How: Provenance.Quoted);

    /// <summary>Copper at about 29 °C [Ω·cmil/ft].</summary>
    public const double OhmCmilPerFt = 10.75;

    /// <summary>Even gauges that the trade stocks, thinnest first, with 1 and the noughts.</summary>
    public static readonly IReadOnlyList<int> Stocked = [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -3];

    /// <summary>Area of a gauge [circular mils].</summary>
    /// <param name="gauge">Gauge number, −3 (4/0) to 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gauge leaves that range.</exception>
    public static double CircularMils(int gauge)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(gauge, -3);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(gauge, 40);
        return Math.Pow(0.127 * Math.Pow(92, (36 - gauge) / 39.0) / 0.0254, 2);
    }

    /// <summary>Area of a gauge [mm²].</summary>
    /// <param name="gauge">Gauge number, −3 (4/0) to 40.</param>
    public static double AreaMm2(int gauge) => CircularMils(gauge) * 0.0254 * 0.0254 * Math.PI / 4;

    /// <param name="CurrentAmp">Current [A], above 0.</param>
    /// <param name="RoundTripFt">Length out and back [ft], above 0.</param>
    /// <param name="SourceVolt">Nominal source voltage [V DC], above 0.</param>
    /// <param name="DropFraction">Allowed drop [-], above 0, below 1.</param>
    public sealed record Input(double CurrentAmp, double RoundTripFt, double SourceVolt, double DropFraction);

    /// <param name="CircularMils">Area asked for [circular mils].</param>
    /// <param name="Gauge">Thinnest stocked gauge that has it; null when none does. A near miss is a miss.</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double CircularMils, int? Gauge, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input circuit)
    {
        Must.BeWithin(circuit.DropFraction, 1e-6, 0.999);
        var mils = OhmCmilPerFt * Must.BePositive(circuit.CurrentAmp) * Must.BePositive(circuit.RoundTripFt) / (Must.BePositive(circuit.SourceVolt) * circuit.DropFraction);
        int? gauge = null;
        foreach (var candidate in Stocked)
        {
            if (CircularMils(candidate) < mils) continue;
            gauge = candidate;
            break;
        }
        return new(mils, gauge, gauge is null ? ["thicker than 4/0: parallel conductors or a shorter run"] : []);
    }
}
