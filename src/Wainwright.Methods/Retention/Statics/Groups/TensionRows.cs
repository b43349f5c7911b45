namespace Wainwright.Methods.Retention;

/// <summary>Rows of fixings that keep a bracket from tipping about its edge: pull in each by the elastic rule, and the moment when all rows are at strength.</summary>
/// <remarks>Elastic: T = M l / Σ n l²; limit: M = Σ n T_ult l. With shear on the same area: τ = √((T/2A)² + (V/A)²).</remarks>
public static class TensionRows
{
    /// <summary>The handbook method.</summary>
    public static readonly Basis Basis = new(
        Source: "Bracket that tips about its edge: Bhandari, Design of Machine Elements, section 7.11",
        Assumes: ["the bracket is rigid and presses at its edge only", "pull grows with the distance from the edge (elastic) or every row reaches its strength (limit)"],
        Caution: "Prying, which adds pull, is not in it. The edge must be able to take the push.",
        How: Provenance.Quoted);

    /// <param name="ArmMm">Distance of the row from the tipping edge [mm], above 0.</param>
    /// <param name="Count">Fixings in it, 1 or more.</param>
    /// <param name="PullN">What one of them can be pulled with [N], above 0.</param>
    public readonly record struct Row(double ArmMm, int Count, double PullN);

    /// <param name="Rows">One or more.</param>
    /// <param name="MomentNmm">Tipping moment [N mm], 0 or more.</param>
    /// <param name="ShearN">Load along the wall [N], 0 or more, shared alike.</param>
    public sealed record Input(IReadOnlyList<Row> Rows, double MomentNmm, double ShearN);

    /// <param name="PullN">Pull in one fixing of each row [N].</param>
    /// <param name="ShearN">Shear in each fixing [N].</param>
    /// <param name="FirstYieldNmm">Moment at which the first row reaches its strength [N mm], elastic.</param>
    /// <param name="LimitNmm">Moment at which all rows are at strength [N mm]; never below the elastic one.</param>
    public sealed record Result(IReadOnlyList<double> PullN, double ShearN, double FirstYieldNmm, double LimitNmm);

    /// <exception cref="ArgumentException">No row, or a row without a fixing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Result Of(Input bracket)
    {
        if (bracket.Rows.Count == 0 || bracket.Rows.Any(r => r.Count < 1)) throw new ArgumentException("name one row at least, each with one fixing at least", nameof(bracket));
        var squares = bracket.Rows.Sum(r => r.Count * Must.BePositive(r.ArmMm) * r.ArmMm);
        var moment = Must.NotBeNegative(bracket.MomentNmm);
        return new(
            [.. bracket.Rows.Select(r => moment * r.ArmMm / squares)],
            Must.NotBeNegative(bracket.ShearN) / bracket.Rows.Sum(r => r.Count),
            bracket.Rows.Min(r => Must.BePositive(r.PullN) * squares / r.ArmMm),
            bracket.Rows.Sum(r => r.Count * r.PullN * r.ArmMm));
    }

    /// <summary>Force that, over the area, is the largest shear stress under pull and shear together: √((T/2)² + V²) [N].</summary>
    public static double LargestShearN(double pullN, double shearN) =>
        Math.Sqrt(Must.NotBeNegative(pullN) * pullN / 4 + Must.NotBeNegative(shearN) * shearN);
}
