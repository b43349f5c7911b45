namespace Wainwright.Methods.Reach;

/// <summary>What a fastener must offer to whoever has to undo it.</summary>
public static class FastenerRules
{
    /// <summary>MIL-STD-1472E.</summary>
    public static readonly Basis Basis = new(
        Source: "MIL-STD-1472E, 5.9.10.5 and 5.9.10.6: drive by torque; room for hand and tool, also when the fastener is loose",
        Assumes: ["turned out by hand tools"],
        Caution: "Read in a poor scan: the sense is sure, the letter is not.",
        How: Provenance.Read);

    const double HexagonAboveNm = 14; // 10 lbf ft

    /// <summary>How the head is driven.</summary>
    public enum Drive
    {
        /// <summary>External hexagon.</summary>
        ExternalHexagon,

        /// <summary>Internal hexagon or other internal drive.</summary>
        Internal,

        /// <summary>Slot or cross recess.</summary>
        SlotOrCross,
    }

    /// <summary>Whether a drive suits a torque: above 14 N m an external hexagon; slot and cross recess for wood screws only, or as bought in.</summary>
    /// <param name="drive">The drive.</param>
    /// <param name="torqueNm">Torque [N m], 0 or more.</param>
    /// <param name="isWoodScrew">Whether it is a wood screw, or comes so on a bought-in thing.</param>
    /// <param name="isTight">Whether access is tight and dirt is kept out, so that an internal drive is allowed above 14 N m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative torque.</exception>
    public static bool Suits(Drive drive, double torqueNm, bool isWoodScrew = false, bool isTight = false) => Must.NotBeNegative(torqueNm) > HexagonAboveNm
        ? drive == Drive.ExternalHexagon || (drive == Drive.Internal && isTight)
        : drive != Drive.SlotOrCross || isWoodScrew;

    /// <summary>How much room is missing in front of a head for the fastener to be drawn [mm]; 0 when it can be.</summary>
    /// <param name="lengthMm">Length of the fastener under its head [mm], 0 or more.</param>
    /// <param name="freeMm">Free in front of its head [mm], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative length.</exception>
    public static double ShortToDrawMm(double lengthMm, double freeMm) => Math.Max(0, Must.NotBeNegative(lengthMm) - Must.NotBeNegative(freeMm));
}
