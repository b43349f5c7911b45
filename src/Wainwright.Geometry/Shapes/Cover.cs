namespace Wainwright.Geometry;

/// <summary>Boxes that hold a prism (outer) or lie within it (inner).</summary>
internal static class Cover
{
    // more cells follow a slope more closely and make every question dearer
    private const int CellsPerAxis = 8;

    public static IReadOnlyList<Box> Outer(Prism prism) => Of(prism, box => !prism.IsClearOf(box));

    public static IReadOnlyList<Box> Inner(Prism prism) => Of(prism, prism.Holds);

    private static List<Box> Of(Prism prism, Func<Box, bool> keeps)
    {
        var bounds = Bounds(prism.Corners);
        var (xs, ys, zs) = (Cuts(bounds.X0, bounds.X1), Cuts(bounds.Y0, bounds.Y1), Cuts(bounds.Z0, bounds.Z1));
        var kept = new List<Box>();
        for (var x = 0; x + 1 < xs.Count; x++)
            for (var y = 0; y + 1 < ys.Count; y++)
                for (var z = 0; z + 1 < zs.Count; z++)
                {
                    var cell = new Box(xs[x], ys[y], zs[z], xs[x + 1], ys[y + 1], zs[z + 1]);
                    if (keeps(cell)) kept.Add(cell);
                }
        return Joined(kept);
    }

    /// <summary>The same boxes with those made one that meet end to end with the same cross-section.</summary>
    public static List<Box> Joined(IEnumerable<Box> boxes) => Joined(Joined(Joined([.. boxes], 2), 1), 0);

    private static Box Bounds(IReadOnlyList<Point> corners)
    {
        static int Down(double mm) => (int)Math.Floor(mm + 1e-6);
        static int Up(double mm) => (int)Math.Ceiling(mm - 1e-6);
        return new(
            Down(corners.Min(c => c.XMm)), Down(corners.Min(c => c.YMm)), Down(corners.Min(c => c.ZMm)),
            Up(corners.Max(c => c.XMm)), Up(corners.Max(c => c.YMm)), Up(corners.Max(c => c.ZMm)));
    }

    private static List<int> Cuts(int from, int to) =>
        [.. Enumerable.Range(0, CellsPerAxis + 1).Select(i => from + (int)((long)(to - from) * i / CellsPerAxis)).Distinct()];

    /// <summary>Boxes that meet end to end along an axis with the same cross-section become one.</summary>
    private static List<Box> Joined(List<Box> boxes, int axis)
    {
        var joined = new List<Box>();
        var runs = boxes.GroupBy(b => axis switch
        {
            0 => (b.Y0, b.Y1, b.Z0, b.Z1),
            1 => (b.X0, b.X1, b.Z0, b.Z1),
            _ => (b.X0, b.X1, b.Y0, b.Y1),
        });
        foreach (var run in runs)
        {
            Box? open = null;
            foreach (var box in run.OrderBy(b => b.Low(axis)))
            {
                if (open is { } before && before.High(axis) == box.Low(axis)) open = before.Around(box);
                else
                {
                    if (open is { } done) joined.Add(done);
                    open = box;
                }
            }
            if (open is { } last) joined.Add(last);
        }
        return joined;
    }
}
