namespace Wainwright.Methods.Water;

/// <summary>Water that a drip has let go over time.</summary>
/// <remarks>V = rate · drop · time. A drop from a fine tip is 0.05 ml; from a tap 0.25 to 0.33 ml.</remarks>
public static class DripVolume
{
    /// <summary>Drop sizes of a dropper and of a tap.</summary>
    public static readonly Basis Basis = new(
        Source: "USP 32 <1101> dropper: 20 drops of water weigh 0.9 to 1.1 g; US Geological Survey drip calculator: 4 000 drops per litre of a tap",
        Assumes: ["the drip was as steady as when it was counted"],
        Caution: "Drops from one place differ five-fold in size: give a range, and remember that the drip may have begun before anyone looked.",
        How: Provenance.Quoted);

    /// <summary>Drop from a 3 mm dropper tip [ml].</summary>
    public const double FineDropMl = 0.05;

    /// <summary>Drop from a tap: 4 000 in a litre [ml].</summary>
    public const double TapDropMl = 0.25;

    /// <param name="DropsPerMin">Counted rate [1/min], 0 or more.</param>
    /// <param name="Days">For how long [days], 0 or more.</param>
    /// <param name="DropMl">Size of a drop [ml], above 0.</param>
    public sealed record Input(double DropsPerMin, double Days, double DropMl);

    /// <param name="Litres">Water let go [l].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double Litres, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input drip) => new(
        Must.NotBeNegative(drip.DropsPerMin) * 1_440 * Must.NotBeNegative(drip.Days) * Must.BePositive(drip.DropMl) / 1000,
        drip.DropsPerMin > 300 ? ["above 300 a minute it is a stream, not a drip"] : []);
}
