namespace Wainwright.Methods.Moisture;

/// <summary>What the caravan trade reads out of a moisture meter's figure: two published scales.</summary>
public static class MeterBands
{
    /// <summary>Two scales from the caravan trade.</summary>
    public static readonly Basis Basis = new(
        Source: "Two caravan workshops' published damp scales",
        Assumes: ["pin meter on a wood scale", "background reading of the same van known to be dry"],
        Caution: "A wet spot is evidence of a path, not of a source. Foil, screws, salts, cold and meters made for masonry mislead: compare with a dry place in the same van.",
        How: Provenance.Read);

    /// <summary>One band of a scale.</summary>
    /// <param name="Scale">1 coarse, 2 finer.</param>
    /// <param name="FromPercent">Reading from which it holds [%], inclusive.</param>
    /// <param name="ToPercent">Reading up to which it holds [%], exclusive; positive infinity at the top.</param>
    /// <param name="Means">What the trade reads out of it.</param>
    public sealed record Band(int Scale, double FromPercent, double ToPercent, string Means);

    /// <summary>Both scales.</summary>
    public static readonly IReadOnlyList<Band> All =
    [
        new(1, 0, 15, "normal"),
        new(1, 15, 20, "look further; measure again in three months"),
        new(1, 20, 30, "look closer; sealing and inside work may be needed; measure again in three months"),
        new(1, 30, double.PositiveInfinity, "structural damage going on: strip the area"),
        new(2, 0, 15, "no concern"),
        new(2, 15, 20, "note it; measure at the next service"),
        new(2, 20, 25, "possible early ingress: look for something to touch or see"),
        new(2, 25, 31, "moisture evident: remedial work; strip only where stained, pimpled or soft"),
        new(2, 31, double.PositiveInfinity, "structural damage going on: strip the area"),
    ];

    /// <summary>The band of a reading on a scale.</summary>
    /// <param name="scale">1 or 2.</param>
    /// <param name="readingPercent">Reading [%], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such scale, or a negative reading.</exception>
    public static Band Of(int scale, double readingPercent)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(scale, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(scale, 2);
        Must.NotBeNegative(readingPercent);
        return All.First(b => b.Scale == scale && readingPercent >= b.FromPercent && readingPercent < b.ToPercent);
    }
}
