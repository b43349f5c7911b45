namespace Wainwright.Methods.Electrics;

/// <summary>Longest time a class A ground-fault circuit interrupter may take.</summary>
/// <remarks>t = (20/I)^1.43 s with I in mA, for 6 to 264 mA. Below 4 mA it must not trip; 4 to 6 mA is its tolerance band.</remarks>
public static class GfciTripTime
{
    /// <summary>UL 943.</summary>
    public static readonly Basis Basis = new(
        Source: "UL 943, class A, as quoted in the trade press and a breaker maker's notes",
        Assumes: ["device tested alone, in its stated temperature range"],
        Caution: "Faster is allowed, slower is not. The test button proves the device, not the wiring behind it.",
        How: Provenance.Quoted);

    /// <summary>It must not trip below this current [mA].</summary>
    public const double SilentBelowMilliamp = 4;

    /// <summary>It must trip from this current [mA].</summary>
    public const double TripsFromMilliamp = 6;

    /// <summary>Upper end of the formula [mA].</summary>
    public const double FormulaToMilliamp = 264;

    /// <param name="ResidualMilliamp">Residual current [mA], 0 or more.</param>
    public sealed record Input(double ResidualMilliamp);

    /// <param name="MustTrip">It must trip at this current.</param>
    /// <param name="LimitSeconds">Longest time allowed [s]; null when it need not trip.</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(bool MustTrip, double? LimitSeconds, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">The current is negative or not finite.</exception>
    public static Result Of(Input fault) => Must.NotBeNegative(fault.ResidualMilliamp) switch
    {
        < SilentBelowMilliamp => new(false, null, []),
        < TripsFromMilliamp => new(false, null, ["between 4 and 6 mA a class A device may or may not trip"]),
        <= FormulaToMilliamp => new(true, Math.Pow(20 / fault.ResidualMilliamp, 1.43), []),
        // the limit at 264 mA holds above it too: a larger current may not be slower
        _ => new(true, Math.Pow(20 / FormulaToMilliamp, 1.43), ["above 264 mA the formula ends: its last value is given"]),
    };
}
