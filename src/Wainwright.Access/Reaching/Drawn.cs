using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>How much room a screw needs to be drawn: its length, where its size gives it.</summary>
/// <remarks>Room for hand and tool also when the fastener is loose: MIL-STD-1472E, 5.9.10.6.</remarks>
internal static class Drawn
{
    /// <summary>Length under the head of what is unscrewed, from a size such as <c>4x45</c> [mm]; absent where the size does not tell.</summary>
    public static int? LengthMm(Joint joint)
    {
        if (joint.Release.Way != ReleaseWay.Unscrew || joint.Size?.Split(['x', '×']) is not [_, var length]) return null;
        return double.TryParse(length, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm) && mm is > 0 and < 1_000 ? (int)Math.Ceiling(mm) : null;
    }
}
