using Wainwright.Fitout;
using Wainwright.Survey.Damp;

namespace Wainwright.Paper;

/// <summary>Boards of one side of the van, or one board that stands in it, laid flat.</summary>
/// <remarks>
/// For a screen: each side by itself and turned as one stands before it, with what lies behind it and with furniture, one under the other to scroll through. A sheet of paper has room for
/// one drawing in which every board lies along the edge where it joins, so <see cref="DampPlan"/> keeps an order of its own; the pieces, contours and doubts are the same.
/// </remarks>
/// <param name="Name">Which: <c>Floor</c>, <c>Ceiling, behind it</c>, or a board by its id and name.</param>
/// <param name="Says">What is right and up on the page.</param>
/// <param name="Panels">What is drawn; none lies over another by much.</param>
public sealed record FlatView(string Name, string Says, IReadOnlyList<FlatPanel> Panels)
{
    // boards may overlap by their joints; what shares more than this of the smaller lies in another layer. Own rule
    private const double MuchShared = 0.2;

    // between views of one board side by side [mm]
    private const double Apart = 150;

    /// <summary>The same panels board by board.</summary>
    public IReadOnlyList<FlatBoard> Boards { get; } = [.. Panels.GroupBy(p => p.Sheet).Select(g => new FlatBoard(g.Key, [.. g]))];

    /// <summary>Left end [mm].</summary>
    public double Left => Panels.Min(p => p.U[0]);

    /// <summary>Upper end [mm].</summary>
    public double Top => Panels.Min(p => p.V[0]);

    /// <summary>Width [mm].</summary>
    public double Wide => Panels.Max(p => p.U[^1]) - Left;

    /// <summary>Height [mm].</summary>
    public double High => Panels.Max(p => p.V[^1]) - Top;

    /// <summary>The boards of a van unfolded: floor, ceiling and walls, layer by layer from the room outwards, then every other board by itself.</summary>
    public static IReadOnlyList<FlatView> Of(DampNet net, Vehicle van)
    {
        ArgumentNullException.ThrowIfNull(net);
        ArgumentNullException.ThrowIfNull(van);
        var room = van.LoadSpace;
        double[] middle = [room.LengthMm.Value / 2, room.WidthMm.Value / 2, room.HeightMm.Value / 2];
        List<FlatView> views = [];
        var sides = net.Sheets.Select((s, i) => (Sheet: i, Shell: s.System is PartSystem.Floor or PartSystem.Lining, Side: SideOf(net, i, middle))).ToList();
        foreach (var side in sides.Where(s => s.Shell).GroupBy(s => s.Side.Name).OrderBy(g => Array.IndexOf(Order, g.Key)))
            views.AddRange(Layers(net, side.Key, [.. side.OrderBy(s => s.Side.FromTheMiddle).Select(s => s.Sheet)], side.First().Side.Frame));
        views.AddRange(sides.Where(s => !s.Shell).Select(s => Board(net, s.Sheet, middle)));
        return views;
    }

    /// <summary>One board laid flat, its faces side by side.</summary>
    public static FlatView Of(DampNet net, Vehicle van, PartId board)
    {
        ArgumentNullException.ThrowIfNull(net);
        ArgumentNullException.ThrowIfNull(van);
        var room = van.LoadSpace;
        return Board(net, net.Sheets.Select((s, i) => (s, i)).First(s => s.s.Part == board).i, [room.LengthMm.Value / 2, room.WidthMm.Value / 2, room.HeightMm.Value / 2]);
    }

    private static readonly string[] Order = ["Floor", "Left wall", "Right wall", "Ceiling", "Front wall", "Rear wall"];

    /// <summary>The side of the van that a board is of, how it is looked at, and how far it is from the middle of the room [mm].</summary>
    private static (string Name, FlatFrame Frame, double FromTheMiddle) SideOf(DampNet net, int sheet, double[] middle)
    {
        var cells = net.Cells.Where(c => c.Sheet == sheet).ToList();
        var across = cells.GroupBy(c => c.Across).MaxBy(g => g.Sum(c => c.AreaMm2))!.Key;
        var off = cells.Where(c => c.Across == across).Average(c => Along(c.Middle, across)) - middle[across];
        return ((across, off > 0) switch { (0, false) => "Front wall", (0, true) => "Rear wall", (1, false) => "Left wall", (1, true) => "Right wall", (_, false) => "Floor", _ => "Ceiling" }, new(across, off < 0), Math.Abs(off));
    }

    private static IEnumerable<FlatView> Layers(DampNet net, string name, IReadOnlyList<int> sheets, FlatFrame frame)
    {
        List<List<FlatPanel>> layers = [];
        foreach (var sheet in sheets)
        {
            var panels = Solids(net, sheet).Select(s => FlatPanel.Of(net, s, net.Cells[s[0]].Across == frame.Across ? frame : new(net.Cells[s[0]].Across, frame.FromTheRight))).Where(p => p.Frame == frame).ToList();
            var layer = layers.FirstOrDefault(l => panels.All(p => l.Sum(p.Shared) <= MuchShared * p.AreaMm2));
            if (layer is null) layers.Add(layer = []);
            layer.AddRange(panels);
        }
        return layers.Select((l, i) => new FlatView(i == 0 ? name : $"{name}, {(name == "Floor" ? "beneath it" : "behind it")}", name == "Ceiling" ? $"as through the roof: {frame.Says}" : frame.Says, l));
    }

    private static FlatView Board(DampNet net, int sheet, double[] middle)
    {
        var side = SideOf(net, sheet, middle);
        var faces = Solids(net, sheet).Select(s => FlatPanel.Of(net, s, new(net.Cells[s[0]].Across, side.Frame.FromTheRight))).OrderBy(p => p.Frame == side.Frame ? 0 : 1).ThenByDescending(p => p.AreaMm2);
        List<FlatPanel> placed = [], aside = [];
        // what looks another way, or would hide what is drawn, is laid beside it
        foreach (var face in faces) (face.Frame == side.Frame && placed.All(p => p.Shared(face) <= MuchShared * face.AreaMm2) ? placed : aside).Add(face);
        var (top, left) = (placed.Min(p => p.V[0]), placed.Max(p => p.U[^1]) + Apart);
        var (bottom, wide) = (Math.Max(placed.Max(p => p.V[^1]), top + (left - placed.Min(p => p.U[0])) / 2), 0d);
        var (u, v) = (left, top);
        foreach (var face in aside)
        {
            if (v > top && v + (face.V[^1] - face.V[0]) > bottom) (u, v, wide) = (u + wide + Apart, top, 0);
            placed.Add(face.At(u, v));
            (v, wide) = (v + (face.V[^1] - face.V[0]) + Apart, Math.Max(wide, face.U[^1] - face.U[0]));
        }
        var board = net.Sheets[sheet];
        return new($"{board.Part} {board.Name}", aside.Count == 0 ? side.Frame.Says : $"{side.Frame.Says}; its other faces beside it", placed);
    }

    private static IEnumerable<IReadOnlyList<int>> Solids(DampNet net, int sheet) =>
        net.Cells.Select((c, i) => (c, i)).Where(c => c.c.Sheet == sheet).GroupBy(c => c.c.Solid).Select(g => (IReadOnlyList<int>)[.. g.Select(c => c.i)]);

    private static double Along(Place place, int axis) => axis switch { 0 => place.XMm, 1 => place.YMm, _ => place.ZMm };
}
