using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;

namespace Wainwright.Paper;

/// <summary>A piece of board where it lies on the plan.</summary>
internal readonly record struct LaidTile(int Cell, Extent Box);

/// <summary>A face of a board laid on the plane of the drawing: moved, and turned over where it folds that way.</summary>
/// <param name="Face">The face.</param>
/// <param name="OffsetU">Added to u [mm].</param>
/// <param name="OffsetV">Added to v, or taken v from, [mm].</param>
/// <param name="Over">v grows down the page.</param>
internal sealed record LaidFace(BoardFace Face, double OffsetU, double OffsetV, bool Over)
{
    private static readonly string[] Axes = ["x", "y", "z"];

    public IReadOnlyList<LaidTile> Tiles { get; } = [.. Face.Cells.Select((c, i) => new LaidTile(c, Laid(Face.Boxes[i], OffsetU, OffsetV, Over)))];

    public Extent Extent { get; } = Laid(Face.Extent, OffsetU, OffsetV, Over);

    public string UName => Axes[Face.UAxis];

    public string VName => Axes[Face.VAxis];

    public Flat At(double u, double v) => new(u + OffsetU, Over ? OffsetV - v : OffsetV + v);

    /// <summary>A place in the van, brought square to the face.</summary>
    public Flat At(Place place)
    {
        double[] sides = [place.XMm, place.YMm, place.ZMm];
        return At(Math.Clamp(sides[Face.UAxis], Face.Extent.U0, Face.Extent.U1), Math.Clamp(sides[Face.VAxis], Face.Extent.V0, Face.Extent.V1));
    }

    private static Extent Laid(FaceBox box, double du, double dv, bool over) => over ? new(box.U0 + du, dv - box.V1, box.U1 + du, dv - box.V0) : new(box.U0 + du, box.V0 + dv, box.U1 + du, box.V1 + dv);
}

/// <summary>Where the faces of boards lie on a flat plan of paper.</summary>
/// <remarks>
/// Another order than that of the screen (<see cref="FlatView"/>): one drawing in which water can be followed over an edge from board to board, so walls and ceiling are folded open about the
/// floor, the left wall and the ceiling upside down. On a screen each side stands upright by itself.
/// </remarks>
internal static class DampLayout
{
    // between faces side by side, and a row of them, on the van's scale [mm]
    private const double GapMm = 140, RowMm = 3_400;

    // a face no larger than this against the largest of its board is left out of its plan
    private const double Little = 0.004;

    // boards of which so much lies behind others from the room are not in the folded-open plan
    private const double Hidden = 0.3;

    public static IReadOnlyList<LaidFace> Unfolded(DampMap map)
    {
        var room = map.Job.Vehicle.LoadSpace;
        var (width, height) = (room.WidthMm.Value, room.HeightMm.Value);
        var shell = BoardFace.Of(map.Net).Where(f => f.Across != 0 && map.Net.Sheets[f.Sheet].System is PartSystem.Floor or PartSystem.Lining && f.Across != 0).Select(f => (Face: f, Laid: Folded(f, width, height)))
            // what is nearest the room hides what lies behind it
            .OrderBy(f => f.Face.Across == 2 ? f.Face.LowMm > height / 2 ? f.Face.LowMm : -f.Face.HighMm : f.Face.LowMm > width / 2 ? f.Face.LowMm : -f.Face.HighMm).ToList();
        List<LaidFace> laid = [];
        foreach (var (_, face) in shell)
        {
            var area = face.Tiles.Sum(t => t.Box.Width * t.Box.Height);
            if (face.Tiles.Sum(t => laid.Sum(o => o.Tiles.Sum(x => Shared(t.Box, x.Box)))) <= Hidden * area) laid.Add(face);
        }
        return laid.Count > 0 ? laid : [.. BoardFace.Of(map.Net).Take(1).Select(f => new LaidFace(f, 0, 0, false))];
    }

    public static IReadOnlyList<LaidFace> SideBySide(DampMap map, PartId board)
    {
        var faces = BoardFace.Of(map.Net).Where(f => map.Net.Sheets[f.Sheet].Part == board).OrderByDescending(Area).ToList();
        List<LaidFace> laid = [];
        double u = 0, v = 0, row = 0;
        foreach (var face in faces.Where(f => Area(f) >= Little * Area(faces[0])))
        {
            var (wide, high) = (face.Extent.U1 - face.Extent.U0, face.Extent.V1 - face.Extent.V0);
            if (u > 0 && u + wide > RowMm)
            {
                (u, v) = (0, v - row - GapMm);
                row = 0;
            }
            laid.Add(new(face, u - face.Extent.U0, v - face.Extent.V1, false));
            u += wide + GapMm;
            row = Math.Max(row, high);
        }
        return laid;
    }

    private static LaidFace Folded(BoardFace face, double width, double height) => face.Across == 2
        ? face.LowMm > height / 2 ? new(face, 0, (2 * width) + height, true) : new(face, 0, 0, false)
        : face.LowMm > width / 2 ? new(face, 0, width, false) : new(face, 0, 0, true);

    private static double Area(BoardFace face) => face.Boxes.Sum(b => b.AreaMm2);

    private static double Shared(Extent a, Extent b) => Math.Max(0, Math.Min(a.U1, b.U1) - Math.Max(a.U0, b.U0)) * Math.Max(0, Math.Min(a.V1, b.V1) - Math.Max(a.V0, b.V0));
}
