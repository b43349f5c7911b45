namespace Wainwright.Methods.Retention;

/// <summary>Brads and staples: what holds trim, ceilings and thin boards in too many vans.</summary>
/// <remarks>
/// A staple counts as two smooth nails of its leg; 0.7 of that when the crown lies within 30° of the grain. A brad has no head to
/// speak of: it pulls out of the held board or of the batten, whichever is weaker, its head counting nothing. Once wetted, dried or
/// loaded to and fro, both count as nothing straight out. With glue beneath them the glue carries, the brads only clamp.
/// </remarks>
public static class BradsAndStaples
{
    /// <summary>Two legs as nails.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1995-1-1, 8.4 (staples as two nails, 0.7 with the crown along the grain), from memory; brads: smooth-nail equations, common practice, no source for zero when wetted",
        Assumes: ["dry wood that stayed dry", "a load that does not swing to and fro"],
        Caution: "Nails in caravan furniture shake loose, the trade's texts say: screw overhead things.",
        How: Provenance.FromMemory);

    const double CrownAlongGrain = 0.7;

    /// <summary>Working value of one brad straight out [N]; 0 once wetted or loaded to and fro.</summary>
    /// <param name="holdingGravity">Specific gravity of the batten [-], above 0.</param>
    /// <param name="heldGravity">Specific gravity of the held board [-], above 0.</param>
    /// <param name="diameterMm">Brad [mm], above 0; 1.2 for 18 gauge.</param>
    /// <param name="penetrationMm">In the batten [mm], 0 or more.</param>
    /// <param name="boardMm">In the held board [mm], 0 or more.</param>
    /// <param name="isWettedOrReversed">Wetted since, or loaded to and fro.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double BradAllowableN(double holdingGravity, double heldGravity, double diameterMm, double penetrationMm, double boardMm, bool isWettedOrReversed)
    {
        var batten = NdsWithdrawal.Of(new(WoodFixing.SmoothNail, holdingGravity, diameterMm, penetrationMm)).AllowableN;
        var board = NdsWithdrawal.Of(new(WoodFixing.SmoothNail, heldGravity, diameterMm, boardMm)).AllowableN;
        return isWettedOrReversed ? 0 : Math.Min(batten, board);
    }

    /// <summary>Mean breaking load of one brad straight out [N]; 0 once wetted or loaded to and fro.</summary>
    /// <inheritdoc cref="BradAllowableN"/>
    public static double BradMeanUltimateN(double holdingGravity, double heldGravity, double diameterMm, double penetrationMm, double boardMm, bool isWettedOrReversed)
    {
        var batten = WoodHandbookWithdrawal.Of(new(WoodFixing.SmoothNail, holdingGravity, diameterMm, penetrationMm)).MeanUltimateN;
        var board = WoodHandbookWithdrawal.Of(new(WoodFixing.SmoothNail, heldGravity, diameterMm, boardMm)).MeanUltimateN;
        return isWettedOrReversed ? 0 : Math.Min(batten, board);
    }

    /// <summary>A staple from the value of one leg taken as a nail, in the unit and of the kind of that value.</summary>
    /// <param name="oneLegN">Value of one nail of the leg's size [N], 0 or more.</param>
    /// <param name="crownDegreesToGrain">Angle between crown and grain [°], 0 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double StapleN(double oneLegN, double crownDegreesToGrain) =>
        2 * Must.NotBeNegative(oneLegN) * (Must.BeWithin(crownDegreesToGrain, 0, 90) < 30 ? CrownAlongGrain : 1);
}
