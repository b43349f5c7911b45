namespace Wainwright.Geometry;

/// <summary>A straight push from where the thing was found.</summary>
internal static class Push
{
    public static Hindrance? Along(Heading heading, Forbidden[] forbidden, ItemSet gone)
    {
        Hindrance? first = null;
        foreach (var f in forbidden)
        {
            if (f.Item != Obstacle.Fixed && gone.Has(f.Item)) continue;
            if (Meeting(heading, f) is not { } met) continue;
            if (first is null || met.FreeMm < first.FreeMm || (met.FreeMm == first.FreeMm && met.ShortMm > first.ShortMm)) first = met;
        }
        return first;
    }

    private static Hindrance? Meeting(Heading heading, Forbidden f)
    {
        var axis = heading.Axis();
        // the open forbidden box in millimetres: cells 2a + 1 to 2b − 1 stand for a to b
        var near = heading.Sign() > 0 ? (f.Where.Low(axis) - 1) / 2 : -(f.Where.High(axis) + 1) / 2;
        var far = heading.Sign() > 0 ? (f.Where.High(axis) + 1) / 2 : -(f.Where.Low(axis) - 1) / 2;
        if (far <= 0) return null;
        var (least, dodge) = (int.MaxValue, heading);
        for (var side = Heading.MinusX; side <= Heading.PlusZ; side++)
        {
            if (side.Axis() == axis) continue;
            var need = side.Sign() > 0 ? (f.Where.High(side.Axis()) + 1) / 2 : -(f.Where.Low(side.Axis()) - 1) / 2;
            if (need <= 0) return null; // it passes by
            if (need < least) (least, dodge) = (need, side);
        }
        return new(heading, f.Item, Math.Max(0, near), least, dodge);
    }
}
