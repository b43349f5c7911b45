namespace Wainwright.Methods.Electrics;

/// <summary>Least insulation resistance of a dead circuit, and the voltage to test it with.</summary>
public static class InsulationResistance
{
    /// <summary>Table 64 of the wiring regulations.</summary>
    public static readonly Basis Basis = new(
        Source: "BS 7671 table 64, as quoted in testing guides",
        Assumes: ["circuit dead and proved dead", "electronics, chargers, inverters and battery management disconnected"],
        Caution: "Readings fall with damp, heat and length: a pass on a dry day is no proof for a wet one. Never test through a charger, inverter or battery management.",
        How: Provenance.Quoted);

    /// <summary>Below this an otherwise passing mains reading deserves a second look [MΩ].</summary>
    public const double InvestigateBelowMegohm = 2;

    /// <param name="NominalVolt">Nominal voltage of the circuit [V], above 0.</param>
    /// <param name="ExtraLowVoltage">A separated extra-low-voltage circuit up to 50 V.</param>
    public sealed record Input(double NominalVolt, bool ExtraLowVoltage);

    /// <param name="TestVoltDc">Test voltage [V DC].</param>
    /// <param name="LeastMegohm">Least resistance [MΩ].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double TestVoltDc, double LeastMegohm, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">The voltage is not above 0.</exception>
    public static Result Of(Input circuit) => Must.BePositive(circuit.NominalVolt) switch
    {
        <= 50 when circuit.ExtraLowVoltage => new(250, 0.5, []),
        <= 500 => new(500, 1.0, []),
        _ => new(1_000, 1.0, []),
    };
}
