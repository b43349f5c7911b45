namespace Wainwright.Methods.Retention;

/// <summary>How sure the strength of a fixing is.</summary>
/// <remarks>
/// Low, likely and high are the values that 5, 50 and 95 in a hundred stay below: log-normal on either side of the likely
/// one. A low of 0 is reached in a straight line: one in twenty then carries nothing.
/// </remarks>
/// <param name="PullN">Capacity along the axis [N].</param>
/// <param name="ShearN">Capacity across it [N].</param>
/// <param name="Unknown">What is not known about it, as people call it; fixings with the same word share a fate and one look settles them.</param>
/// <param name="SharedShare">Share of the doubt (of its variance) that fixings with the same unknown have in common [-], 0 to 1.</param>
public sealed record DoubtfulFixing(Spread PullN, Spread ShearN, string Unknown, double SharedShare = 0.5)
{
    private const double OneInTwenty = 1.6448536269514722;

    /// <summary>Strength when luck is z standard deviations from the middle [N].</summary>
    internal static double At(in Spread spread, double z)
    {
        var far = Math.Abs(z) / OneInTwenty;
        return z < 0 ? Between(spread.Likely, spread.Low, far) : Between(spread.Likely, spread.High, far);
    }

    private static double Between(double from, double to, double far) =>
        from > 0 && to > 0 ? from * Math.Pow(to / from, far) : Math.Max(0, from + far * (to - from));
}
