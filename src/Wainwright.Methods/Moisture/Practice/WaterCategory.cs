namespace Wainwright.Methods.Moisture.Practice;

/// <summary>How dirty the water is, which decides what may be kept.</summary>
public static class WaterCategory
{
    /// <summary>Restoration trade.</summary>
    public static readonly Basis Basis = new(
        Source: "IICRC S500, categories as three trade pages give them; sources in a van: common practice, no source",
        Assumes: ["what ran out is known"],
        Caution: "Category 3 and any growth: gloves, mask, keep others away, soft goods out. When in doubt take the higher.",
        How: Provenance.Quoted);

    /// <summary>Where water came from.</summary>
    public enum Origin
    {
        /// <summary>Fresh tank, supply line.</summary>
        Fresh,

        /// <summary>Rain through a seam.</summary>
        Rain,

        /// <summary>Condensation.</summary>
        Condensation,

        /// <summary>Sink or shower waste.</summary>
        Waste,

        /// <summary>Toilet cassette.</summary>
        Toilet,

        /// <summary>River, flood, ground water.</summary>
        Flood,
    }

    /// <summary>Hours after which clean water counts as the next category [h].</summary>
    public const double StandingHours = 48;

    /// <summary>Category 1, 2 or 3.</summary>
    /// <param name="origin">Where it came from.</param>
    /// <param name="standingHours">How long it has stood [h]; null when nobody knows: taken as over 48 h.</param>
    /// <param name="growthSeen">Mould or slime on it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public static int Of(Origin origin, double? standingHours, bool growthSeen)
    {
        var old = standingHours is not { } hours || Must.NotBeNegative(hours) > StandingHours;
        if (growthSeen || origin is Origin.Toilet or Origin.Flood) return 3;
        return origin is Origin.Waste || old ? 2 : 1;
    }
}
