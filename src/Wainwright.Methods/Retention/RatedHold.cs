namespace Wainwright.Methods.Retention;

/// <summary>Straps, clips, catches and runners: only what their maker or a test says.</summary>
/// <remarks>A working limit holds for certain and is likely to hold twice (webbing by rule breaks at three times, hooks at two); a breaking load is what it is.</remarks>
public static class RatedHold
{
    /// <summary>Rated values.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 12195-2: webbing breaks at no less than three times, fittings at no less than two times the lashing capacity",
        Assumes: ["the rating belongs to this piece, in this direction", "no cut, burn, rust or knot"],
        Caution: "A strap is as good as what it is hooked to. Without a rating there is no value: none is guessed.",
        How: Provenance.FromMemory);

    /// <summary>What the figure says.</summary>
    public enum Rating
    {
        /// <summary>Greatest load it is meant for (lashing capacity, working load).</summary>
        WorkingLimit,

        /// <summary>Load at which the maker's pieces break.</summary>
        Breaking,

        /// <summary>Load that this piece was seen to hold.</summary>
        HeldInTest,
    }

    /// <summary>Strength [N]; the high of a held load is open and counts as three times.</summary>
    /// <param name="ratedN">The figure [N], 0 or more.</param>
    /// <param name="rating">What it says.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative figure.</exception>
    public static Spread StrengthN(double ratedN, Rating rating) => rating switch
    {
        Rating.WorkingLimit => new Spread(1, 2, 3) * ratedN,
        Rating.Breaking => new Spread(0.9, 1, 1.2) * ratedN, // a tenth below for age: our rule
        _ => new Spread(1, 1.5, 3) * ratedN,
    };
}
