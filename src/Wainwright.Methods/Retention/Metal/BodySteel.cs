namespace Wainwright.Methods.Retention;

/// <summary>What the sheet of a van body usually is, until somebody has measured it.</summary>
/// <remarks>Ranges to be marked *assumed* wherever they decide: measure the edge of a hole, or the sheet with a thickness gauge.</remarks>
public static class BodySteel
{
    /// <summary>Usual sheets.</summary>
    public static readonly Basis Basis = new(
        Source: "thickness: common practice, no source; strength: EN 10130, DC01 to DC04 (from memory)",
        Assumes: ["mild drawing steel without rust", "thread in one layer only"],
        Caution: "Rust takes thickness first where the screw is. Newer ribs of stronger steel hold more; aluminium bodies hold less.",
        How: Provenance.CommonPractice);

    /// <summary>Where in the body.</summary>
    public enum Place
    {
        /// <summary>Outer skin: never a place for screws.</summary>
        OuterSkin,

        /// <summary>Inner rib, pillar or rail.</summary>
        Rib,

        /// <summary>Floor pan.</summary>
        Floor,
    }

    /// <summary>Tensile strength [MPa]: 270 when nothing is known, up to 410.</summary>
    public static Spread TensileMPa => new(270, 320, 410);

    /// <summary>Thickness [mm].</summary>
    /// <param name="place">Where.</param>
    public static Spread ThicknessMm(Place place) => place switch
    {
        Place.OuterSkin => new(0.65, 0.7, 0.8),
        Place.Floor => new(0.7, 0.8, 1.0),
        _ => new(0.8, 1.0, 1.5),
    };
}
