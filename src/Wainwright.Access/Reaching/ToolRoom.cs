using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Geometry;
using Wainwright.Methods.Reach;

namespace Wainwright.Access;

/// <summary>Measures the room in front of fixings, for saying by how much a tool does not fit.</summary>
internal sealed class ToolRoom(Scene scene, Crowd crowd)
{
    private const int HandleMm = 150, HandleRadiusMm = 8, FistRadiusMm = 40, FistFromMm = 90, StepsPerDegree = 2, ScrewHalfMm = 4;

    public IEnumerable<ToolFit> Of(Joint joint, ItemSet gone)
    {
        var standing = crowd.Around(null).Where(b => b.Item == Obstacle.Fixed || !gone.Has(b.Item)).ToList();
        foreach (var point in joint.Points.Distinct())
        {
            var sides = HandReach.PlacesOf(joint, point, scene.HeldBy(joint));
            yield return sides.Select(s => HandReach.IsOutside(crowd.Shell, s.At, s.Side) ? FromOutside(joint, point, s.Side) : Fit(joint, point, s.Side, s.At, standing)).MinBy(f => Math.Max(f.ShortMm, f.DrawShortMm))!;
        }
    }

    /// <summary>Worked from outside the van, where nothing modelled stands in front.</summary>
    private ToolFit FromOutside(Joint joint, Place point, Heading side)
    {
        var need = HandTool.For(joint, scene.Options.Person.HandMm).Where(IsInLine).Min(t => t.Boxes.Max(b => b.Z1));
        return new()
        {
            Joint = joint.Id, At = point, From = PartBody.DirectionOf(side), Tool = Named(joint), NeedMm = need, FreeMm = need, DrawMm = Drawn.LengthMm(joint), DrawShortMm = 0,
            Words = $"{Named(joint)}: worked from outside the van; what stands there is not modelled.",
        };
    }

    private ToolFit Fit(Joint joint, Place point, Heading side, Geometry.Point at, List<(int Item, Box Box)> standing)
    {
        // the hand straight behind the tool first, then beside its line: what asks least is said
        var room = HandTool.For(joint, scene.Options.Person.HandMm).Where(IsInLine).Select(t => Room(t, side, at, standing)).ToList();
        var (need, free, item) = room.MinBy(r => (r.Need - r.Free, r.Need));
        var draw = Drawn.LengthMm(joint);
        var (drawFree, drawItem) = draw is { } mm ? Along(new(-ScrewHalfMm, -ScrewHalfMm, 0, ScrewHalfMm, ScrewHalfMm, mm), side, at, standing) : (int.MaxValue, (int?)null);
        var fit = new ToolFit
        {
            Joint = joint.Id,
            At = point,
            From = PartBody.DirectionOf(side),
            Tool = Named(joint),
            NeedMm = need,
            FreeMm = free,
            By = free < need ? PartAt(item) : null,
            DrawMm = draw,
            DrawShortMm = draw is { } length ? (int)FastenerRules.ShortToDrawMm(length, drawFree) : 0,
            DrawBy = draw > drawFree ? PartAt(drawItem) : null,
            SwingDegrees = joint is { Drive: Drive.HexHead, Release.Way: ReleaseWay.Unscrew } ? Swing(side, at, standing) : null,
            Words = "",
        };
        return fit with { Words = Said(fit) };
    }

    /// <summary>Whether the hand is behind the tool, not beside it.</summary>
    private static bool IsInLine(HandTool tool) => tool.Boxes.Count == 1 || tool.Boxes[^1].Z0 >= tool.Boxes[^2].Z1;

    /// <summary>What a tool needs along its line, and how much of it is free of what its boxes would meet.</summary>
    private static (int Need, int Free, int? Item) Room(HandTool tool, Heading side, Geometry.Point at, List<(int Item, Box Box)> standing)
    {
        var need = tool.Boxes.Max(b => b.Z1);
        var (free, item) = (need, (int?)null);
        foreach (var box in tool.Boxes)
            if (Along(box, side, at, standing) is var (to, by) && to < box.Z1 && to < free) (free, item) = (to, by);
        return (need, free, item);
    }

    /// <summary>How far along the line a box of a tool is free [mm from the fixing], and of whom.</summary>
    private static (int Free, int? Item) Along(Box toolBox, Heading side, Geometry.Point at, List<(int Item, Box Box)> standing)
    {
        var placed = FixingReach.Placed(new HandTool([toolBox]).From(side)[0], at);
        var (free, by) = (toolBox.Z1, (int?)null);
        var origin = (int)Math.Round(side.Axis() switch { 0 => at.XMm, 1 => at.YMm, _ => at.ZMm });
        foreach (var (item, box) in standing)
        {
            if (!placed.Overlaps(box)) continue;
            var near = side.Sign() > 0 ? box.Low(side.Axis()) - origin : origin - box.High(side.Axis());
            if (Math.Max(near, toolBox.Z0) < free) (free, by) = (Math.Max(0, Math.Max(near, toolBox.Z0)), item);
        }
        return (free, by);
    }

    /// <summary>The longest run of angles in which handle and fist are clear.</summary>
    private static int Swing(Heading side, Geometry.Point at, List<(int Item, Box Box)> standing)
    {
        const int Steps = 360 * StepsPerDegree;
        var (u, v) = (((Heading)((side.Axis() + 1) % 3 * 2 + 1)).Direction(), ((Heading)((side.Axis() + 2) % 3 * 2 + 1)).Direction());
        var near = standing.Where(b => b.Box.Overlaps(Around(at, HandleMm + FistRadiusMm))).ToList();
        bool IsClear(int step)
        {
            var (sin, cos) = Math.SinCos(step * Math.PI / (180 * StepsPerDegree));
            Geometry.Point Out(double mm, double up) => at.Towards(u, mm * cos).Towards(v, mm * sin).Towards(side.Direction(), up);
            Stick[] sticks = [new(Out(HandleRadiusMm, HandleRadiusMm + 1), Out(HandleMm, HandleRadiusMm + 1), HandleRadiusMm), new(Out(FistFromMm, FistRadiusMm + 1), Out(HandleMm - FistRadiusMm + 1, FistRadiusMm + 1), FistRadiusMm)];
            return !near.Exists(b => Array.Exists(sticks, s => s.Meets(b.Box)));
        }
        var clear = Enumerable.Range(0, Steps).Select(IsClear).ToArray();
        if (Array.TrueForAll(clear, c => c)) return 360;
        var (longest, run) = (0, 0);
        for (var i = 0; i < 2 * Steps; i++)
        {
            run = clear[i % Steps] ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }
        return Math.Max(0, longest - 1) / StepsPerDegree;
    }

    private static Box Around(Geometry.Point at, int mm) => FixingReach.Placed(new Box(-mm, -mm, -mm, mm, mm, mm), at);

    private PartId? PartAt(int? item) => item is { } i ? scene.PartBehind(i)?.Id : null;

    private string Said(ToolFit fit)
    {
        string To(PartId? by) => by is { } id ? Wording.Name(scene.PartOf(id)) : "the van itself";
        var words = new List<string>
        {
            fit.ShortMm > 0
                ? string.Create(CultureInfo.InvariantCulture, $"{fit.Tool} and hand need {fit.NeedMm} mm in front; {fit.FreeMm} mm are free: {fit.ShortMm} mm short to {To(fit.By)}")
                : string.Create(CultureInfo.InvariantCulture, $"{fit.Tool} and hand find the {fit.NeedMm} mm they need in front"),
        };
        if (fit.DrawShortMm > 0) words.Add(string.Create(CultureInfo.InvariantCulture, $"the screw is {fit.DrawMm} mm long and cannot be drawn: {fit.DrawShortMm} mm short to {To(fit.DrawBy)}"));
        if (fit.SwingDegrees is { } swing and < 360) words.Add(string.Create(CultureInfo.InvariantCulture, $"a spanner swings {swing}°: {With(swing)}"));
        return string.Join("; ", words);
    }

    private static string With(int swing) =>
        SpannerSwing.Turns(SpannerSwing.Spanner.RingOfSix, swing) ? "any spanner will do"
        : SpannerSwing.Turns(SpannerSwing.Spanner.OpenTurnedOver, swing) ? "an open spanner turned over at each grip, or a ring of twelve points; not a ring of six"
        : "only a ratchet or a socket from the front";

    private static string Named(Joint joint) => joint.Release.Way switch
    {
        ReleaseWay.Drill => "drill",
        ReleaseWay.Cut => "knife",
        ReleaseWay.Pry => "lever",
        ReleaseWay.ByHand => "fingers",
        _ => joint.Drive switch
        {
            Drive.HexHead => "socket",
            Drive.HexSocket or Drive.Hexalobular or Drive.Square => "key",
            _ => "screwdriver",
        },
    };
}
