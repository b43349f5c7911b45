namespace Wainwright.Methods.Reach;

/// <summary>Free swing a spanner needs before it can be put on afresh.</summary>
/// <remarks>
/// A hexagon repeats every 60°. An open spanner whose head is set 15° off its handle, turned over, finds a new grip after 30°;
/// a ring of twelve points every 30°, a ratchet every tooth: 360°/teeth.
/// </remarks>
public static class SpannerSwing
{
    /// <summary>Geometry of the hexagon.</summary>
    public static readonly Basis Basis = new(
        Source: "symmetry of the hexagon; open spanner heads set at 15° to the handle",
        Assumes: ["hexagon head in good order", "room to turn the spanner over where it is turned over"],
        Caution: "A rounded head needs a ring or a socket whatever the swing.",
        How: Provenance.OwnRule);

    /// <summary>Which spanner.</summary>
    public enum Spanner
    {
        /// <summary>Open, straight head, or not turned over.</summary>
        Open,

        /// <summary>Open, head at 15°, turned over at each grip.</summary>
        OpenTurnedOver,

        /// <summary>Ring of six points.</summary>
        RingOfSix,

        /// <summary>Ring of twelve points.</summary>
        RingOfTwelve,
    }

    /// <summary>Swing it needs [°].</summary>
    /// <param name="spanner">Which spanner.</param>
    public static double NeededDegrees(Spanner spanner) => spanner is Spanner.OpenTurnedOver or Spanner.RingOfTwelve ? 30 : 60;

    /// <summary>Swing a ratchet needs [°].</summary>
    /// <param name="teeth">Teeth, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one tooth.</exception>
    public static double RatchetDegrees(int teeth)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(teeth, 1);
        return 360.0 / teeth;
    }

    /// <summary>Whether a hexagon can be turned on and on with so much free swing.</summary>
    /// <param name="spanner">Which spanner.</param>
    /// <param name="freeDegrees">Free swing [°], 0 to 360.</param>
    /// <exception cref="ArgumentOutOfRangeException">A swing out of range.</exception>
    public static bool Turns(Spanner spanner, double freeDegrees) => Must.BeWithin(freeDegrees, 0, 360) >= NeededDegrees(spanner);
}
