using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>The way a part goes when it pulls a fixing out.</summary>
internal static class PullWay
{
    /// <summary>
    /// Unit vector; absent when nobody said how the shank points. As a rule the head is on the part and the tip in what holds it:
    /// the part pulls back along the shank. Where the tip is in the part (a worktop screwed from below, a stud), it pulls on along it.
    /// </summary>
    public static Vector3D? Of(Joint joint, Place at, Part part, Part? to)
    {
        if (joint.Axis is not { } axis) return null;
        var shank = Of(axis);
        return TipInPart(joint, at, part, to, shank) ? shank : -shank;
    }

    /// <summary>The way away from what holds it, for a fixing whose shank nobody described.</summary>
    public static Vector3D Guessed(Place at, Part part, Part? to, LoadSpace room)
    {
        if (to is not null && Near(part, at) is { } own && Near(to, at) is { } other) return Main(own - other);
        // away from the nearest side of the shell
        var ways = new (double Mm, Vector3D Way)[]
        {
            (at.ZMm, new(0, 0, 1)), (room.HeightMm.Value - at.ZMm, new(0, 0, -1)), (at.YMm, new(0, 1, 0)), (room.WidthMm.Value - at.YMm, new(0, -1, 0)),
        };
        return ways.MinBy(w => Math.Abs(w.Mm)).Way;
    }

    public static Vector3D Of(Direction direction) => direction.Step() is var s ? new(s.XMm, s.YMm, s.ZMm) : default;

    public static Vector3D Of(Place place) => new(place.XMm, place.YMm, place.ZMm);

    private static bool TipInPart(Joint joint, Place at, Part part, Part? to, Vector3D shank)
    {
        if (joint.Type is FixingType.Strap or FixingType.Pin || Near(part, at) is not { } own) return false;
        if (to is not null) return Near(to, at) is { } other && (other - own).Dot(shank) < -5;
        // into the van: from inside outwards, or from outside inwards, with the head on the part; a stud comes the other way
        var inward = joint.Axis switch { Direction.Down => at.ZMm > 300, Direction.Up => at.ZMm < 300, _ => false };
        return inward && !part.Outside && (own - Of(at)).Dot(shank) > 10;
    }

    /// <summary>Middle of the solid that is nearest to a place.</summary>
    private static Vector3D? Near(Part part, Place at) => part.Solids.Count == 0 ? null : part.Solids.Select(s => s.Bounds())
        .MinBy(b => Away(at.XMm, b.Low.XMm, b.High.XMm) + Away(at.YMm, b.Low.YMm, b.High.YMm) + Away(at.ZMm, b.Low.ZMm, b.High.ZMm)) is var (low, high)
            ? new((low.XMm + high.XMm) / 2, (low.YMm + high.YMm) / 2, (low.ZMm + high.ZMm) / 2) : null;

    private static double Away(double x, double low, double high) => Math.Max(0, Math.Max(low - x, x - high));

    private static Vector3D Main(Vector3D way)
    {
        var (x, y, z) = (Math.Abs(way.X), Math.Abs(way.Y), Math.Abs(way.Z));
        return x >= y && x >= z ? new(way.X < 0 ? -1 : 1, 0, 0) : y >= z ? new(0, way.Y < 0 ? -1 : 1, 0) : new(0, 0, way.Z < 0 ? -1 : 1);
    }
}
