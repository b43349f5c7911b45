namespace Wainwright.Methods.Retention;

/// <summary>What a free object brings along when the van stops: energy, the drop that gives the same, the force it meets.</summary>
/// <remarks>E = m·v²/2, h = v²/(2·g), F = E/s with s the distance in which it is stopped. No multiplier of weight is printed: popular ones part by three.</remarks>
public static class LooseEnergy
{
    /// <summary>Energy of a free object.</summary>
    public static readonly Basis Basis = new(
        Source: "kinetic energy and free fall, elementary mechanics",
        Assumes: ["it flies free and meets the wall or person at the whole change of speed"],
        Caution: "Mean force only: the peak is higher. What flies hits heads: stow it or shut it in.",
        How: Provenance.Quoted);

    /// <param name="EnergyJ">Energy [J].</param>
    /// <param name="DropMm">Height of a fall that gives the same [mm].</param>
    public readonly record struct Result(double EnergyJ, double DropMm);

    /// <param name="massKg">Mass [kg], 0 or more.</param>
    /// <param name="speedMPerS">Change of speed [m/s], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative.</exception>
    public static Result Of(double massKg, double speedMPerS)
    {
        var square = Must.NotBeNegative(speedMPerS) * speedMPerS;
        return new(Must.NotBeNegative(massKg) * square / 2, square / (2 * Pulse.GravityMPerS2) * 1000);
    }

    /// <summary>Mean force while it is stopped [N].</summary>
    /// <param name="energyJ">Energy [J], 0 or more.</param>
    /// <param name="distanceMm">Distance in which it is stopped [mm], above 0.</param>
    public static double MeanForceN(double energyJ, double distanceMm) => Must.NotBeNegative(energyJ) / (Must.BePositive(distanceMm) / 1000);
}
