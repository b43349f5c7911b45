namespace Wainwright.Methods.Reach;

/// <summary>Whether a hand, a fist or an arm passes an opening: common figures, source not checked.</summary>
/// <remarks>A rectangular opening passes it when both sides suffice, either way round, or when the round figure fits within it.</remarks>
public static class AccessOpening
{
    /// <summary>The figures of the trade, not those of a standard.</summary>
    public static readonly Basis Basis = new(
        Source: "common figures for hand and arm openings, source not checked; not to be shown as the figures of a standard",
        Assumes: ["least sizes, not comfortable ones", "light clothing or bare skin unless gloved"],
        Caution: "Remembered figures. An arm to the shoulder through 125 mm passes only some 85 of 100 tensed men's arms of ANSUR II: ask for 145 mm where force is needed inside.",
        How: Provenance.FromMemory);

    /// <summary>What goes through.</summary>
    public enum Passing
    {
        /// <summary>Empty hand, flat, to the wrist.</summary>
        FlatHand,

        /// <summary>Empty hand, rolled, to the wrist.</summary>
        RolledHand,

        /// <summary>Clenched hand, to the wrist.</summary>
        Fist,

        /// <summary>Hand holding a thing of 25 mm, to the wrist.</summary>
        HandWithSmallThing,

        /// <summary>Arm to the elbow.</summary>
        ArmToElbow,

        /// <summary>Arm to the shoulder.</summary>
        ArmToShoulder,
    }

    /// <summary>What is worn.</summary>
    public enum Wear
    {
        /// <summary>Bare or light clothing.</summary>
        Light,

        /// <summary>Work gloves.</summary>
        Gloves,

        /// <summary>Arctic clothing.</summary>
        Arctic,
    }

    /// <param name="NarrowMm">Shorter side of the least rectangle [mm].</param>
    /// <param name="WideMm">Longer side of the least rectangle [mm].</param>
    /// <param name="RoundMm">Least diameter [mm].</param>
    public readonly record struct Least(double NarrowMm, double WideMm, double RoundMm);

    static readonly Dictionary<(Passing, Wear), Least> Figures = new()
    {
        [(Passing.FlatHand, Wear.Light)] = new(55, 100, 100),
        [(Passing.FlatHand, Wear.Gloves)] = new(100, 150, 150),
        [(Passing.FlatHand, Wear.Arctic)] = new(125, 165, 165),
        [(Passing.RolledHand, Wear.Light)] = new(95, 95, 95),
        [(Passing.Fist, Wear.Light)] = new(95, 125, 125),
        [(Passing.Fist, Wear.Gloves)] = new(115, 150, 150),
        [(Passing.Fist, Wear.Arctic)] = new(180, 215, 215),
        [(Passing.HandWithSmallThing, Wear.Light)] = new(95, 95, 95),
        [(Passing.HandWithSmallThing, Wear.Gloves)] = new(150, 150, 150),
        [(Passing.HandWithSmallThing, Wear.Arctic)] = new(180, 180, 180),
        [(Passing.ArmToElbow, Wear.Light)] = new(100, 115, 115),
        [(Passing.ArmToElbow, Wear.Arctic)] = new(180, 180, 180),
        [(Passing.ArmToShoulder, Wear.Light)] = new(125, 125, 125),
        [(Passing.ArmToShoulder, Wear.Arctic)] = new(215, 215, 215),
    };

    /// <summary>The least opening; null where no figure is remembered.</summary>
    /// <param name="passing">What goes through.</param>
    /// <param name="wear">What is worn.</param>
    public static Least? For(Passing passing, Wear wear) => Figures.TryGetValue((passing, wear), out var least) ? least : null;

    /// <summary>Whether it passes a rectangular opening; null where no figure is remembered.</summary>
    /// <param name="passing">What goes through.</param>
    /// <param name="wear">What is worn.</param>
    /// <param name="oneMm">One side [mm], above 0.</param>
    /// <param name="otherMm">The other side [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side is not above 0.</exception>
    public static bool? Passes(Passing passing, Wear wear, double oneMm, double otherMm)
    {
        var (narrow, wide) = (Math.Min(Must.BePositive(oneMm), Must.BePositive(otherMm)), Math.Max(oneMm, otherMm));
        return For(passing, wear) is { } least ? (narrow >= least.NarrowMm && wide >= least.WideMm) || narrow >= least.RoundMm : null;
    }

    /// <summary>Room round a thing held by the wrist's depth inside: the opening is that much larger all round [mm]; null where no figure is remembered.</summary>
    /// <param name="wear">What is worn.</param>
    public static double? RoundHeldThingMm(Wear wear) => wear switch { Wear.Light => 45, Wear.Gloves => 65, Wear.Arctic => 90, _ => null };

    /// <summary>Least width for both hands 150 to 490 mm deep [mm]; the height is 125 mm.</summary>
    /// <param name="depthMm">Depth of reach [mm], 150 to 490.</param>
    /// <exception cref="ArgumentOutOfRangeException">A depth for which no figure is remembered.</exception>
    public static double BothHandsWidthMm(double depthMm) => Math.Max(200, Must.BeWithin(depthMm, 150, 490));
}
