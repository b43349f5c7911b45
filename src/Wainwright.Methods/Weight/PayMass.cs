namespace Wainwright.Methods.Weight;

/// <summary>Least mass that a motor caravan's makers must leave for luggage: the pay-mass of the EU mass rules.</summary>
/// <remarks>PM ≥ 10·(n + L) kg, n the greatest number of passengers plus the driver, L the overall length [m].</remarks>
public static class PayMass
{
    /// <summary>Point 2.6.4.1.2 of the EU mass rules.</summary>
    public static readonly Basis Basis = new(
        Source: "Regulation (EU) 1230/2012, annex I part A, point 2.6.4.1.2 (now carried into (EU) 2021/535)",
        Assumes: ["the vehicle is a motor caravan", "overall length, not load length"],
        Caution: "A floor for makers, not a promise that the owners' things weigh less. Not the same sum as EN 1646-2's personal load.",
        How: Provenance.Quoted);

    /// <param name="People">Greatest number of passengers plus the driver, 1 or more.</param>
    /// <param name="OverallLengthMm">Overall length of the vehicle [mm], above 0.</param>
    public sealed record Input(int People, double OverallLengthMm);

    /// <param name="LeastPayMassKg">Least mass to be left for luggage [kg].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double LeastPayMassKg, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">Fewer than one person, or a length that is not above 0.</exception>
    public static Result Of(Input van)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(van.People, 1);
        return new(10 * (van.People + (Must.BePositive(van.OverallLengthMm) / 1000)), []);
    }
}
