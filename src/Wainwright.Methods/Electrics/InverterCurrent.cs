namespace Wainwright.Methods.Electrics;

/// <summary>Battery current that an inverter draws for a mains load.</summary>
/// <remarks>I = P/(U·η). For cable and fuse use the lowest loaded battery voltage, not the nominal one.</remarks>
public static class InverterCurrent
{
    /// <summary>Power balance.</summary>
    public static readonly Basis Basis = new(
        Source: "Power balance of a converter; inverter current tables agree",
        Assumes: ["efficiency at that load", "no surge"],
        Caution: "Motors and compressors draw several times more for a moment.",
        How: Provenance.Quoted);

    /// <param name="loadWatt">Mains load [W], 0 or more.</param>
    /// <param name="batteryVolt">Battery voltage under load [V DC], above 0.</param>
    /// <param name="efficiencyFraction">Efficiency [-], above 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    /// <returns>Battery current [A].</returns>
    public static double OfAmp(double loadWatt, double batteryVolt, double efficiencyFraction) =>
        Must.NotBeNegative(loadWatt) / (Must.BePositive(batteryVolt) * Must.BeWithin(efficiencyFraction, 0.01, 1));
}
