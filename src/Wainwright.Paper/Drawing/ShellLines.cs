using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>Draws the base vehicle: skins, doors, wheel arches, ribs and bows, and a sketch of what lies around.</summary>
internal sealed class ShellLines(Job job, SectionView view, Projection on, Sheet sheet, Ink ink)
{
    /// <summary>How much of the cab and the running gear is hinted at [mm]; a sketch, not a measure.</summary>
    public const double CabMm = 420, UnderMm = 190;

    private const double WheelRadiusMm = 345, WheelCentreMm = -250; // a sketch; common practice, no source

    private const double LetterMm = 2.3;

    private readonly LoadSpace room = job.Vehicle.LoadSpace;

    private double Length => room.LengthMm.Value;

    private double Width => room.WidthMm.Value;

    private double Height => room.HeightMm.Value;

    private bool Sideways => view.From is SeenFrom.Left or SeenFrom.Right;

    private Direction FarWall => view.From is SeenFrom.Left ? Direction.Right : Direction.Left;

    /// <summary>Corners of the inner skin where it is cut.</summary>
    public static IReadOnlyList<Place> Corners(LoadSpace room, SectionView view)
    {
        var (l, w, h) = (room.LengthMm.Value, room.WidthMm.Value, room.HeightMm.Value);
        if (view.From is SeenFrom.Left or SeenFrom.Right) return [new(0, 0, 0), new(l, 0, 0), new(l, 0, h), new(0, 0, h)];
        if (view.From is SeenFrom.Above)
        {
            var near = InMm(room, view.CutMm);
            return [new(0, near, 0), new(l, near, 0), new(l, w - near, 0), new(0, w - near, 0)];
        }
        if (room.Taper is not { } taper) return [new(0, 0, 0), new(0, w, 0), new(0, w, h), new(0, 0, h)];
        return [new(0, 0, 0), new(0, w, 0), new(0, w, taper.FromZMm), new(0, w - taper.InAtRoofMm, h), new(0, taper.InAtRoofMm, h), new(0, 0, taper.FromZMm)];
    }

    /// <summary>How far each wall has come in at a height [mm].</summary>
    private static double InMm(LoadSpace room, double zMm) => room.Taper is { } taper && zMm > taper.FromZMm
        ? taper.InAtRoofMm * (zMm - taper.FromZMm) / Math.Max(1, room.HeightMm.Value - taper.FromZMm)
        : 0;

    /// <summary>What lies behind the parts.</summary>
    public void Behind()
    {
        if (Sideways)
        {
            Around();
            foreach (var o in job.Vehicle.Openings.Where(o => o.Face == (FarWall == Direction.Right ? Face.Right : Face.Left))) Box(OnSide(o), Pen.Door);
            foreach (var f in job.Vehicle.Frames.Where(f => f.Side is null || f.Side == FarWall)) SideFrame(f);
        }
        if (view.From is SeenFrom.Rear)
            foreach (var o in job.Vehicle.Openings.Where(o => o.Face == Face.Front))
                Box((new(0, o.FromMm.Value, o.SillMm.Value), new(0, o.FromMm.Value + o.WidthMm.Value, o.SillMm.Value + o.HeightMm.Value)), Pen.Door);
        foreach (var arch in room.WheelArches) Arch(arch);
        if (view.From is SeenFrom.Above)
            foreach (var rib in job.Vehicle.Frames.Where(f => f.Kind is FrameKind.Rib or FrameKind.Pillar)) RibFromAbove(rib);
    }

    /// <summary>What is cut: the skin, with a gap where a door is.</summary>
    public void Skin()
    {
        ink.Polygon(sheet.At(Corners(room, view).Select(on.Of)), Pen.Shell);
        foreach (var o in job.Vehicle.Openings)
            if (Gap(o) is var (from, to))
            {
                var (a, b) = (sheet.At(on.Of(from)), sheet.At(on.Of(to)));
                ink.Line(a.X, a.Y, b.X, b.Y, Pen.Halo with { WidthMm = 1.1 });
                ink.Line(a.X, a.Y, b.X, b.Y, Pen.Door);
            }
        if (Sideways)
            foreach (var bow in job.Vehicle.Frames.Where(f => f.Kind == FrameKind.Bow))
                Box((new(bow.XMm - FaceMm(bow) / 2, 0, Height - 22), new(bow.XMm + FaceMm(bow) / 2, 0, Height)), Pen.Black);
    }

    /// <summary>Names of doors and sides, over everything; returns the room they take.</summary>
    public IReadOnlyList<PaperBox> Names()
    {
        var taken = new List<PaperBox>();
        if (Sideways)
        {
            foreach (var o in job.Vehicle.Openings.Where(o => o.Face == (FarWall == Direction.Right ? Face.Right : Face.Left)))
            {
                var (low, high) = OnSide(o);
                var (a, b) = (sheet.At(on.Of(low)), sheet.At(on.Of(high)));
                Name((a.X + b.X) / 2, b.Y + LetterMm + 0.6, o.Name, Anchor.Middle);
            }
            var cab = sheet.At(on.Of(new(-CabMm * 0.5, 0, Height * 0.45)));
            Name(cab.X, cab.Y, "cab", Anchor.Middle);
        }
        if (view.From is SeenFrom.Above)
        {
            foreach (var o in job.Vehicle.Openings.Where(o => o.Face is Face.Left or Face.Right))
            {
                var at = sheet.At(on.Of(new(o.FromMm.Value + o.WidthMm.Value / 2, o.Face == Face.Right ? Width : 0, 0)));
                Name(at.X, at.Y + (o.Face == Face.Right ? -1.2 : LetterMm + 0.8), o.Name, Anchor.Middle);
            }
            var (left, right) = (sheet.At(on.Of(new(Length, 0, 0))), sheet.At(on.Of(new(Length, Width, 0))));
            Name(left.X, left.Y + LetterMm + 0.8, "left side", Anchor.End);
            Name(right.X, right.Y - 1.2, "right side", Anchor.End);
        }
        if (view.From is SeenFrom.Rear)
        {
            var (left, right) = (sheet.At(on.Of(new(0, 0, 0))), sheet.At(on.Of(new(0, Width, 0))));
            Name(left.X, left.Y + LetterMm + 0.9, "left", Anchor.Start);
            Name(right.X, right.Y + LetterMm + 0.9, "right", Anchor.End);
        }
        return taken;

        void Name(double x, double y, string text, Anchor anchor)
        {
            ink.Text(x, y, text, LetterMm, anchor, halo: true);
            var wide = Lettering.WidthMm(text, LetterMm);
            taken.Add(PaperBox.Around(anchor switch { Anchor.Start => x + wide / 2, Anchor.End => x - wide / 2, _ => x }, y - LetterMm / 2, wide, LetterMm));
        }
    }

    private static double FaceMm(Frame frame) => frame.FaceMm ?? 40;

    private void SideFrame(Frame frame)
    {
        if (frame.Kind is FrameKind.Rib or FrameKind.Pillar)
            Box((new(frame.XMm - FaceMm(frame) / 2, 0, Math.Max(0, frame.ZMm ?? 0)), new(frame.XMm + FaceMm(frame) / 2, 0, Height)), Pen.Frame);
        if (frame is { Kind: FrameKind.Rail, ZMm: { } z })
            Box((new(frame.XMm, 0, z - FaceMm(frame) / 2), new(frame.ToXMm ?? Length, 0, z + FaceMm(frame) / 2)), Pen.Frame);
    }

    private void RibFromAbove(Frame rib)
    {
        const double deep = 24;
        var near = InMm(room, view.CutMm);
        if (rib.Side is null or Direction.Left) Box((new(rib.XMm - FaceMm(rib) / 2, near, 0), new(rib.XMm + FaceMm(rib) / 2, near + deep, 0)), Pen.Black);
        if (rib.Side is null or Direction.Right) Box((new(rib.XMm - FaceMm(rib) / 2, Width - near - deep, 0), new(rib.XMm + FaceMm(rib) / 2, Width - near, 0)), Pen.Black);
    }

    private void Arch(WheelArch arch)
    {
        if (Sideways && arch.Side != FarWall) return;
        if (view.From is SeenFrom.Rear && arch.FromXMm > view.CutMm) return;
        var (y0, y1) = arch.Side == Direction.Left ? (0.0, arch.WidthMm) : (Width - arch.WidthMm, Width);
        var (low, high) = (new Place(arch.FromXMm, y0, 0), new Place(arch.ToXMm, y1, arch.HeightMm));
        Box((low, high), Pen.Arch);
        if (view.From is SeenFrom.Rear && arch.ToXMm >= view.CutMm)
            ink.Lines(Outline.Hatch([on.Of(low), on.Of(new(0, y1, 0)), on.Of(high), on.Of(new(0, y0, arch.HeightMm))], 1.1 * sheet.Scale, true)
                .Select(l => (sheet.At(l.A), sheet.At(l.B))), Pen.Hatch);
    }

    private static (Place Low, Place High) OnSide(Opening o) =>
        (new(o.FromMm.Value, 0, o.SillMm.Value), new(o.FromMm.Value + o.WidthMm.Value, 0, o.SillMm.Value + o.HeightMm.Value));

    /// <summary>Where the cut goes through an opening: the two ends of the gap in the skin.</summary>
    private (Place From, Place To)? Gap(Opening o)
    {
        var (from, to, sill, top) = (o.FromMm.Value, o.FromMm.Value + o.WidthMm.Value, o.SillMm.Value, o.SillMm.Value + o.HeightMm.Value);
        var cut = view.CutMm;
        return (view.From, o.Face) switch
        {
            (SeenFrom.Above, Face.Left or Face.Right) when sill <= cut && cut <= top => At(o.Face == Face.Left ? InMm(room, cut) : Width - InMm(room, cut)),
            (SeenFrom.Above, Face.Front or Face.Rear) when sill <= cut && cut <= top => (new(End(o), from, 0), new(End(o), to, 0)),
            (SeenFrom.Left or SeenFrom.Right, Face.Front or Face.Rear) when from <= cut && cut <= to => (new(End(o), 0, sill), new(End(o), 0, top)),
            (SeenFrom.Left or SeenFrom.Right, Face.Roof) when sill <= cut && cut <= top => (new(from, 0, Height), new(to, 0, Height)),
            (SeenFrom.Rear, Face.Left) when from <= cut && cut <= to => (new(0, 0, sill), new(0, InMm(room, top), top)),
            (SeenFrom.Rear, Face.Right) when from <= cut && cut <= to => (new(0, Width, sill), new(0, Width - InMm(room, top), top)),
            (SeenFrom.Rear, Face.Roof) when from <= cut && cut <= to => (new(0, sill, Height), new(0, top, Height)),
            _ => null,
        };

        (Place, Place) At(double y) => (new(from, y, 0), new(to, y, 0));
    }

    private double End(Opening o) => o.Face == Face.Front ? 0 : Length;

    private void Around()
    {
        foreach (var axle in job.Vehicle.Axles.Where(a => a.XMm.Value > -CabMm && a.XMm.Value < Length + 200))
        {
            var arc = Enumerable.Range(0, 73).Select(i => Math.SinCos(Math.PI * i / 72)).Select(a => new Place(axle.XMm.Value + WheelRadiusMm * a.Cos, 0, WheelCentreMm + WheelRadiusMm * a.Sin));
            ink.Polyline(sheet.At(arc.Where(p => p.ZMm > -UnderMm).Select(on.Of)), Pen.Sketch);
        }
        ink.Polyline(sheet.At(new Place[] { new(0, 0, Height), new(-CabMm, 0, Height - 60) }.Select(on.Of)), Pen.Sketch);
        ink.Polyline(sheet.At(new Place[] { new(0, 0, -60), new(-CabMm, 0, -60) }.Select(on.Of)), Pen.Sketch);
        var zigzag = new Place[] { new(-CabMm, 0, -60), new(-CabMm, 0, Height * 0.42), new(-CabMm - 50, 0, Height * 0.45), new(-CabMm + 50, 0, Height * 0.49), new(-CabMm, 0, Height * 0.52), new(-CabMm, 0, Height - 60) };
        ink.Polyline(sheet.At(zigzag.Select(on.Of)), Pen.Sketch);
    }

    private void Box((Place Low, Place High) box, Pen pen)
    {
        var (a, b) = (sheet.At(on.Of(box.Low)), sheet.At(on.Of(box.High)));
        ink.Rectangle(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y), pen);
    }
}
