namespace Wainwright.Methods.Electrics;

/// <summary>How fast a residual-current device must be, by standard and multiple of its rating.</summary>
public static class ResidualCurrentLimits
{
    /// <summary>Break times of the product standards.</summary>
    public static readonly Basis Basis = new(
        Source: "IEC 61008/61009 break times; BS 7671 415.1.1 (30 mA, 40 ms at five times); BS 4293 for old devices; as quoted in a testing article and a tester's manual",
        Assumes: ["a tester with sine half-wave start", "downstream loads unplugged"],
        Caution: "Mains work and its certificate belong to a qualified electrician; local codes rule. A device that trips in time still does not make a wet outlet safe.",
        How: Provenance.Quoted);

    /// <summary>Largest rating that counts as protection of people [mA].</summary>
    public const double ProtectsPeopleToMilliamp = 30;

    /// <summary>One test point.</summary>
    /// <param name="Standard">Which product standard or rule.</param>
    /// <param name="Kind">General (not delayed) or type S (delayed).</param>
    /// <param name="TimesRating">Test current over rated residual current [-].</param>
    /// <param name="LeastMs">It must not trip before this time [ms]; null when no such rule.</param>
    /// <param name="MostMs">It must trip by this time [ms]; null when it must not trip at all.</param>
    /// <param name="How">How the figure is known.</param>
    public sealed record Point(string Standard, string Kind, double TimesRating, double? LeastMs, double? MostMs, Provenance How);

    /// <summary>Every point.</summary>
    public static readonly IReadOnlyList<Point> All =
    [
        new("IEC 61008/61009", "general", 0.5, null, null, Provenance.Quoted),
        new("IEC 61008/61009", "general", 1, null, 300, Provenance.Quoted),
        new("IEC 61008/61009", "general", 2, null, 150, Provenance.Quoted),
        new("IEC 61008/61009", "general", 5, null, 40, Provenance.Quoted),
        new("IEC 61008/61009", "type S", 0.5, null, null, Provenance.Quoted),
        new("IEC 61008/61009", "type S", 1, 130, 500, Provenance.Quoted),
        new("IEC 61008/61009", "type S", 2, 60, 200, Provenance.FromMemory), // the least time comes from memory
        new("IEC 61008/61009", "type S", 5, 50, 150, Provenance.Quoted),
        new("BS 4293", "general", 1, null, 200, Provenance.Quoted),
    ];

    /// <param name="Standard">Product standard on the device's label, as in <see cref="All"/>.</param>
    /// <param name="Kind">General or type S.</param>
    /// <param name="TimesRating">Test current over rated residual current [-].</param>
    /// <param name="TripMs">Measured time [ms]; null when it did not trip.</param>
    public sealed record Input(string Standard, string Kind, double TimesRating, double? TripMs);

    /// <param name="WithinLimits">True or false against the point; null when the table has no such point.</param>
    /// <param name="Point">The point judged by.</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(bool? WithinLimits, Point? Point, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">The time is negative or not finite.</exception>
    public static Result Of(Input test)
    {
        if (test.TripMs is { } ms) Must.NotBeNegative(ms, nameof(test.TripMs));
        var point = All.FirstOrDefault(p => p.Standard == test.Standard && p.Kind == test.Kind && p.TimesRating == test.TimesRating);
        if (point is null) return new(null, null, ["no published limit for this standard, kind and multiple of the rating"]);
        return new(
            point.MostMs is null
                ? test.TripMs is null
                : test.TripMs is { } t && t <= point.MostMs && (point.LeastMs is null || t >= point.LeastMs),
            point, []);
    }
}
