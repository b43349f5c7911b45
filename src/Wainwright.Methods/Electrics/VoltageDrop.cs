namespace Wainwright.Methods.Electrics;

/// <summary>Volts lost along a direct-current circuit, out and back.</summary>
/// <remarks>ΔU = 2·L·I·R with L the one-way length. Doubling a length that is already out and back is the commonest error.</remarks>
public static class VoltageDrop
{
    /// <summary>Ohm's law along the cable.</summary>
    public static readonly Basis Basis = new(
        Source: "Ohm's law with IEC 60228 resistance; limits 3 % and 10 % as quoted from ABYC E-11 and ISO 10133",
        Assumes: ["joints, switches and fuses lose nothing", "both conductors of one size"],
        Caution: "Real joints lose more than good cable: measure under load. A size must pass the drop and the ampacity.",
        How: Provenance.Quoted);

    /// <summary>Limit for feeders, pumps, fans, electronics and anything whose failure affects safety [-].</summary>
    public const double CriticalFraction = 0.03;

    /// <summary>Limit for lighting and other loads that may dim [-].</summary>
    public const double OrdinaryFraction = 0.10;

    /// <param name="OneWayMm">Length from source to load, one way [mm], 0 or more.</param>
    /// <param name="CurrentAmp">Current [A], 0 or more.</param>
    /// <param name="OhmPerKm">Resistance of one conductor [Ω/km], above 0.</param>
    /// <param name="SourceVolt">Nominal source voltage [V DC], above 0.</param>
    public sealed record Input(double OneWayMm, double CurrentAmp, double OhmPerKm, double SourceVolt);

    /// <param name="DropVolt">Volts lost out and back [V].</param>
    /// <param name="DropFraction">The same over the source voltage [-].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double DropVolt, double DropFraction, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input circuit)
    {
        var drop = 2 * Must.NotBeNegative(circuit.OneWayMm) / 1e6 * Must.NotBeNegative(circuit.CurrentAmp) * Must.BePositive(circuit.OhmPerKm);
        return new(drop, drop / Must.BePositive(circuit.SourceVolt), drop > circuit.SourceVolt ? ["more volts lost than there are: that current cannot flow"] : []);
    }
}
