using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>
/// A can of water, fresh or grey: loose goods, carried to be filled and emptied. It is lifted out as it is, with what is in it,
/// and nothing else in the van is drained for it. Common practice, no source.
/// </summary>
internal static class Can
{
    private const double KgPerLitre = 1;

    /// <summary>Whether the part is such a can.</summary>
    public static bool Is(Part part) => part.LooseGoods && part.Devices.OfType<Tank>().Any(HoldsWater);

    /// <summary>Whether what is in it may go along on the way out.</summary>
    public static bool HoldsWater(Tank tank) => tank.Holds is Medium.Water or Medium.Waste;

    /// <summary>
    /// Whether a hose comes off it without anything being made safe: one that only hangs in it. A hose that goes on to another
    /// part may be under pressure, or empty that part.
    /// </summary>
    public static bool FreesHose(Part part, Line line) => Is(part) && line.Medium is (Medium.Water or Medium.Waste) && (line.From.Part is null || line.To.Part is null);

    /// <summary>What it weighs beside its empty mass [kg]; full where nobody has looked, nothing for what is no can.</summary>
    public static double FillKg(Part part) => Is(part) ? part.Devices.OfType<Tank>().Where(HoldsWater).Sum(t => (t.FilledL ?? t.VolumeL).High * KgPerLitre) : 0;
}
