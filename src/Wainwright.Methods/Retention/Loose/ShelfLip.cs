namespace Wainwright.Methods.Retention;

/// <summary>An object on an open shelf: when it slides, when it tips, when it goes over the lip.</summary>
/// <remarks>
/// In g, with u the lift that unloads it: slides at μ·(1 − u). Without lip it tips at b/h·(1 − u), b half its foot, h the height of its
/// centre. A lip of height l stops the sliding; the object then turns over the lip's edge at b/(h − l)·(1 − u), and never when l reaches h.
/// </remarks>
public static class ShelfLip
{
    /// <summary>Sliding and tipping.</summary>
    public static readonly Basis Basis = new(
        Source: "statics of a rigid block with friction on a level shelf",
        Assumes: ["a rigid object with a flat foot that leans on the lip", "the lip itself stands", "steady acceleration"],
        Caution: "Things that shake hop and wander: friction is no lock. A lip as high as the centre is the least; a bar or net is better. Glass and tins fly.",
        How: Provenance.OwnRule);

    /// <param name="Friction">Friction between object and shelf [-], 0 to 2.</param>
    /// <param name="CentreMm">Height of the centre above the shelf [mm], above 0.</param>
    /// <param name="FootMm">Depth of its foot the way it would tip [mm], above 0.</param>
    /// <param name="LipMm">Height of the lip [mm], 0 or more; 0 for none.</param>
    /// <param name="LiftG">Vertical acceleration that unloads it [g], 0 to 1: a bump, 0 on smooth road.</param>
    public sealed record Input(double Friction, double CentreMm, double FootMm, double LipMm = 0, double LiftG = 0);

    /// <param name="SlidesAtG">Begins to slide, if nothing is in the way [g].</param>
    /// <param name="TipsAtG">Turns over its own edge, if friction holds its foot [g].</param>
    /// <param name="LeavesAtG">Leaves the shelf [g]; infinite when the lip is as high as its centre.</param>
    /// <param name="LeastLipMm">Lip from which it never goes over [mm]: the height of its centre.</param>
    public sealed record Result(double SlidesAtG, double TipsAtG, double LeavesAtG, double LeastLipMm);

    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(Input thing)
    {
        double weight = 1 - Must.BeWithin(thing.LiftG, 0, 1), centre = Must.BePositive(thing.CentreMm), half = Must.BePositive(thing.FootMm) / 2, lip = Must.NotBeNegative(thing.LipMm);
        double slides = Must.BeWithin(thing.Friction, 0, 2) * weight, tips = half / centre * weight;
        // what is lifted off altogether no lip holds
        var leaves = lip == 0 ? Math.Min(slides, tips) : lip >= centre && weight > 0 ? double.PositiveInfinity : half / Math.Max(centre - lip, 1e-9) * weight;
        return new(slides, tips, leaves, centre);
    }

    /// <summary>Friction of the floor alone: what a box that only stands there resists [g].</summary>
    /// <param name="friction">Friction [-], 0 to 2.</param>
    /// <param name="liftG">Vertical acceleration that unloads it [g], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double FrictionHoldsToG(double friction, double liftG) => Must.BeWithin(friction, 0, 2) * Math.Max(0, 1 - Must.NotBeNegative(liftG));
}
