namespace Wainwright.Methods.Retention;

/// <summary>A group of fixings under a load in its plane that misses its centre: the elastic, or vector, method.</summary>
/// <remarks>Direct force by stiffness; turning force k_i M r_i / Σ k r² square to the arm from the centre of stiffness; added as vectors.</remarks>
public static class ElasticGroup
{
    /// <summary>The handbook method.</summary>
    public static readonly Basis Basis = new(
        Source: "Eccentrically loaded bolt group, elastic method: Shigley, Mechanical Engineering Design, section 8-12",
        Assumes: ["the plate is rigid and turns about the centre of stiffness", "friction under the heads carries nothing", "the load lies in the plane of the fixings"],
        Caution: "Says when the first fixing is full, not when the group lets go.",
        How: Provenance.Quoted);

    /// <param name="XMm">Place [mm].</param>
    /// <param name="YMm">Place [mm].</param>
    /// <param name="Stiffness">Stiffness or area, in any one unit, above 0; 1 where all are alike.</param>
    public readonly record struct Point(double XMm, double YMm, double Stiffness = 1);

    /// <param name="Fixings">One or more.</param>
    /// <param name="LoadXN">Load on the plate [N].</param>
    /// <param name="LoadYN">Load on the plate [N].</param>
    /// <param name="AtXMm">Where it acts [mm].</param>
    /// <param name="AtYMm">Where it acts [mm].</param>
    public sealed record Input(IReadOnlyList<Point> Fixings, double LoadXN, double LoadYN, double AtXMm, double AtYMm);

    /// <param name="ForceN">Force of the plate on each fixing [N].</param>
    /// <param name="Worst">The one with the largest force.</param>
    /// <param name="LargestN">That force [N].</param>
    /// <param name="SumOfSquaresMm2">Σ k r² about the centre of stiffness [mm² × stiffness].</param>
    public sealed record Result(IReadOnlyList<(double XN, double YN)> ForceN, int Worst, double LargestN, double SumOfSquaresMm2);

    /// <exception cref="ArgumentException">No fixing, or all at one place under a load that misses it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or a stiffness not above 0.</exception>
    public static Result Of(Input group)
    {
        if (group.Fixings.Count == 0) throw new ArgumentException("a group has one fixing at least", nameof(group));
        var sum = group.Fixings.Sum(f => Must.BePositive(f.Stiffness));
        var (x, y) = (group.Fixings.Sum(f => f.Stiffness * Must.BeFinite(f.XMm)) / sum, group.Fixings.Sum(f => f.Stiffness * Must.BeFinite(f.YMm)) / sum);
        var squares = group.Fixings.Sum(f => f.Stiffness * ((f.XMm - x) * (f.XMm - x) + (f.YMm - y) * (f.YMm - y)));
        var moment = (Must.BeFinite(group.AtXMm) - x) * Must.BeFinite(group.LoadYN) - (Must.BeFinite(group.AtYMm) - y) * Must.BeFinite(group.LoadXN);
        if (squares == 0 && moment != 0) throw new ArgumentException("fixings at one place cannot take a load that misses it", nameof(group));
        var turn = squares == 0 ? 0 : moment / squares;
        var forces = group.Fixings.Select(f => (XN: f.Stiffness * (group.LoadXN / sum - turn * (f.YMm - y)), YN: f.Stiffness * (group.LoadYN / sum + turn * (f.XMm - x)))).ToList();
        var sizes = forces.Select(f => Math.Sqrt(f.XN * f.XN + f.YN * f.YN)).ToList();
        return new(forces, sizes.IndexOf(sizes.Max()), sizes.Max(), squares);
    }
}
