using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>Dry density of a board by the words for its wood.</summary>
/// <remarks>From memory, no table opened: bought boards of one name differ by a fifth. What the part itself gives is taken before it.</remarks>
internal static class BoardDensity
{
    // dry mass over volume as bought; the water of an ordinary room is about a tenth of what a board weighs. Own rule
    private const double RoomDry = 1 / 1.1, GivenShare = 0.1;

    private static readonly (string Word, Span KgPerM3)[] ByWord =
    [
        ("birch ply", new(600, 640, 680)),
        ("poplar ply", new(370, 410, 460)),
        ("light ply", new(370, 420, 480)),
        ("faced ply", new(430, 530, 630)),
        ("ply", new(430, 520, 640)),
        ("osb", new(550, 600, 640)),
        ("chipboard", new(570, 630, 690)),
        ("particleboard", new(570, 630, 690)),
        ("mdf", new(630, 700, 760)),
        ("fibreboard", new(630, 700, 760)),
        ("hardboard", new(800, 880, 960)),
        ("faced board", new(500, 600, 700)),
    ];

    private static readonly Span Wood = new(370, 450, 600);

    /// <summary>Dry density [kg/m³].</summary>
    public static Span KgPerM3(Part part, string material)
    {
        if (part.DensityKgPerM3 is { } given) return Span.Of(given.Value * RoomDry, given.PlusMinus * RoomDry ?? GivenShare * given.Value);
        foreach (var (word, density) in ByWord)
            if (material.Contains(word, StringComparison.Ordinal)) return density;
        return Wood;
    }
}
