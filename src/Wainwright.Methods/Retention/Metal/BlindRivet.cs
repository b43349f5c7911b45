namespace Wainwright.Methods.Retention;

/// <summary>Blind rivets: what the rivet itself stands. Thin sheet round it usually gives first.</summary>
/// <remarks>
/// Least shear and tension as remembered of the standards, three sizes; low is four fifths of it because the figures are unconfirmed,
/// high a third above. Take the lesser with the sheet: <see cref="SheetScrewEn.PullThroughN"/>, <see cref="SheetScrewEn.BearingN"/>.
/// </remarks>
public static class BlindRivet
{
    /// <summary>Open-end rivets.</summary>
    public static readonly Basis Basis = new(
        Source: "ISO 15977 (aluminium body, class 08) and ISO 15979 (steel), minimum loads; tests ISO 14589",
        Assumes: ["set with the right grip length", "body in one piece: the pin may be lost"],
        Caution: "Unconfirmed figures: prefer the maker's sheet. Pull-out from the sheet governs; a rivet that turns in its hole holds nothing straight out.",
        How: Provenance.FromMemory);

    /// <summary>Body of the rivet.</summary>
    public enum Body
    {
        /// <summary>Aluminium alloy body, steel pin.</summary>
        Aluminium,

        /// <summary>Steel body and pin.</summary>
        Steel,
    }

    /// <param name="PullN">Along the rivet [N].</param>
    /// <param name="ShearN">Across it [N].</param>
    public readonly record struct Strength(Spread PullN, Spread ShearN);

    /// <summary>Strength of the rivet itself.</summary>
    /// <param name="diameterMm">3.2, 4.0 or 4.8 mm.</param>
    /// <param name="body">Of what.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size that is not tabled.</exception>
    public static Strength Of(double diameterMm, Body body)
    {
        var (shear, pull) = (body, diameterMm) switch
        {
            (Body.Aluminium, 3.2) => (750.0, 950.0),
            (Body.Aluminium, 4.0) => (1_200, 1_500),
            (Body.Aluminium, 4.8) => (1_700, 2_200),
            (Body.Steel, 3.2) => (1_200, 1_300),
            (Body.Steel, 4.0) => (1_700, 2_100),
            (Body.Steel, 4.8) => (2_900, 3_100),
            _ => throw new ArgumentOutOfRangeException(nameof(diameterMm), diameterMm, "diameterMm: must be 3.2, 4.0 or 4.8"),
        };
        Spread doubt = new(0.8, 1, 4.0 / 3);
        return new(doubt * pull, doubt * shear);
    }
}
