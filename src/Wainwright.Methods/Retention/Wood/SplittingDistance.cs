namespace Wainwright.Methods.Retention;

/// <summary>How far a screw or nail under 1/4 in should be from edge, end and neighbour so that the wood does not split.</summary>
/// <remarks>
/// In diameters, US guide: edge 2.5; end 15 pulled towards, 10 pushed away, halved nearly when bored (10 and 5); spacing along the
/// grain 15 (bored 10), across 10 (bored 5). European: <see cref="Ec5Distances"/>.
/// </remarks>
public static class SplittingDistance
{
    /// <summary>Guide against splitting.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS commentary, table C12.1.5.7-1",
        Assumes: ["fixings under 1/4 in", "wood of a kind that does not split easily"],
        Caution: "Guide, not rule: what counts is whether the wood has split. Look at the edge.",
        How: Provenance.FromMemory);

    /// <param name="EdgeMm">From an edge along the grain [mm].</param>
    /// <param name="EndMm">From an end [mm].</param>
    /// <param name="AlongGrainMm">Between fixings along the grain [mm].</param>
    /// <param name="AcrossGrainMm">Between fixings across the grain [mm].</param>
    public sealed record Distances(double EdgeMm, double EndMm, double AlongGrainMm, double AcrossGrainMm);

    /// <summary>Least distances.</summary>
    /// <param name="diameterMm">Nominal diameter [mm], above 0.</param>
    /// <param name="isBored">A lead hole was bored.</param>
    /// <param name="pullsTowardsEnd">The load pulls towards the end grain.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above 0.</exception>
    public static Distances Of(double diameterMm, bool isBored, bool pullsTowardsEnd)
    {
        var d = Must.BePositive(diameterMm);
        return isBored
            ? new(2.5 * d, (pullsTowardsEnd ? 10 : 5) * d, 10 * d, 5 * d)
            : new(2.5 * d, (pullsTowardsEnd ? 15 : 10) * d, 15 * d, 10 * d);
    }

    /// <summary>What an edge that is too near leaves of the strength [-]: squared, straight and all of the ratio of distance to least distance.</summary>
    /// <param name="edgeMm">Distance found [mm], 0 or more.</param>
    /// <param name="leastMm">Least distance [mm], above 0.</param>
    /// <remarks>Common practice, no source: nobody publishes what a screw too near an edge holds.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Spread Left(double edgeMm, double leastMm)
    {
        var ratio = Math.Min(1, Must.NotBeNegative(edgeMm) / Must.BePositive(leastMm));
        return new(ratio * ratio, ratio, ratio > 0 ? 1 : 0);
    }
}
