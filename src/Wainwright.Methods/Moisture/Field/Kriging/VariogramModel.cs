namespace Wainwright.Methods.Moisture.Field.Kriging;

/// <summary>How alike two measurements are by their distance.</summary>
/// <param name="Shape">The curve.</param>
/// <param name="Nugget">Step at distance 0, in the square of the value's unit; 0 or more.</param>
/// <param name="Sill">Height of the curve above the nugget, the same unit, above 0.</param>
/// <param name="Range">Length of the curve, in the unit of the places, above 0: where a spherical one ends; of an exponential one a third of its practical range.</param>
public sealed record VariogramModel(VariogramModel.Curve Shape, double Nugget, double Sill, double Range)
{
    /// <summary>Curves.</summary>
    public enum Curve
    {
        /// <summary>1.5 h/a − 0.5 (h/a)³, 1 from a on.</summary>
        Spherical,

        /// <summary>1 − exp(−h/a).</summary>
        Exponential,
    }

    /// <summary>The two curves.</summary>
    public static readonly Basis Basis = new(
        Source: "Geostatistics' usual curves, in the definitions of the R package gstat (its printed test output)",
        Assumes: ["likeness depends on distance alone"],
        Caution: "Across a gap, a corner or the end of a board distance says nothing: use the field on a net.",
        How: Provenance.Read);

    /// <summary>Half the mean squared difference at a distance.</summary>
    /// <param name="distance">Distance, 0 or more.</param>
    public double Gamma(double distance) => distance == 0 ? 0 : Nugget + (Sill * Rise(distance));

    /// <summary>Covariance at a distance; the nugget stands at 0 only.</summary>
    /// <param name="distance">Distance, 0 or more.</param>
    public double Covariance(double distance) => Nugget + Sill - Gamma(distance);

    internal double Rise(double distance)
    {
        var h = Must.NotBeNegative(distance) / Must.BePositive(Range);
        return Shape == Curve.Exponential ? 1 - Math.Exp(-h) : h >= 1 ? 1 : (1.5 * h) - (0.5 * h * h * h);
    }
}
