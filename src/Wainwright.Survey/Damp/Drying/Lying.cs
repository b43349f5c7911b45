using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>What a face of a board looks onto, past all that lies on it.</summary>
internal enum Beyond
{
    /// <summary>The room.</summary>
    Room,

    /// <summary>A hollow under or behind furniture.</summary>
    Hollow,

    /// <summary>The hollow between a lining and the skin.</summary>
    Void,

    /// <summary>Metal.</summary>
    Skin,

    /// <summary>Something that stands hard on it.</summary>
    Closed,
}

/// <summary>A thing that lies on a face of a board.</summary>
/// <param name="Part">The part.</param>
/// <param name="ThicknessMm">How thick it is there [mm].</param>
/// <param name="Sheet">The net's board that it is, or −1.</param>
/// <param name="IsClose">It touches what lies below it.</param>
internal readonly record struct Layed(Part Part, double ThicknessMm, int Sheet, bool IsClose);

/// <summary>One side of a piece of board: what lies on it, one on the other, and what comes after.</summary>
/// <param name="On">What lies on it, the nearest first.</param>
/// <param name="End">What comes after.</param>
internal sealed record SideOfBoard(IReadOnlyList<Layed> On, Beyond End);

/// <summary>Finds what lies on and behind the boards of a van, along a line through the middle of each piece.</summary>
internal sealed class Lying
{
    // as the joins of the net: tape's doubt. How far the skin may be behind a lining, and how low a hollow under furniture is: own rules [mm]
    private const double TouchMm = 4, SkinMm = 200, HollowMm = 600, SheetMm = 60;

    private const int MostLayers = 6;

    private readonly Job job;

    private readonly DampNet net;

    private readonly List<(Part Part, int Sheet, double[] Low, double[] High)> boxes;

    public Lying(Job job, DampNet net, IReadOnlyList<PartId> outNow)
    {
        (this.job, this.net) = (job, net);
        var sheetOf = net.Sheets.Select((s, i) => (s.Part, i)).ToDictionary(p => p.Part, p => p.i);
        boxes = [.. job.Parts.Where(p => !p.Outside && !p.LooseGoods && !outNow.Contains(p.Id))
            .SelectMany(p => p.Solids.Select(s => s.Bounds()).Select(b => (p, sheetOf.GetValueOrDefault(p.Id, -1), BoardCells.Sides(b.Low), BoardCells.Sides(b.High))))];
    }

    /// <summary>The way to the room through a floor or lining, +1 or −1 along the axis through it; 0 for what stands free.</summary>
    public int ToRoom(DampCell cell)
    {
        if (net.Sheets[cell.Sheet].System is not (PartSystem.Floor or PartSystem.Lining)) return 0;
        return BoardCells.Sides(cell.Middle)[cell.Across] < Shell(cell.Across) / 2 ? 1 : -1;
    }

    /// <summary>What lies on one side of a piece.</summary>
    /// <param name="cell">The piece.</param>
    /// <param name="way">+1 or −1 along the axis through it.</param>
    public SideOfBoard Of(DampCell cell, int way)
    {
        var across = cell.Across;
        var middle = BoardCells.Sides(cell.Middle);
        var own = net.Sheets[cell.Sheet].Part;
        double Near((Part, int, double[] Low, double[] High) b) => way > 0 ? b.Low[across] : -b.High[across];
        double Far((Part, int, double[] Low, double[] High) b) => way > 0 ? b.High[across] : -b.Low[across];
        var at = way > 0 ? BoardCells.Sides(cell.High)[across] : -BoardCells.Sides(cell.Low)[across];
        var skin = way > 0 ? Shell(across) : 0;
        var over = boxes.Where(b => b.Part.Id != own && Far(b) > at + 0.01 && Near(b) >= at - TouchMm && Holds(b.Low, b.High, middle, across)).OrderBy(Near).ToList();
        List<Layed> on = [];
        foreach (var box in over)
        {
            if (Far(box) <= at + 0.01) continue;
            var gap = Math.Max(0, Near(box) - at);
            var thick = Far(box) - Math.Max(at, Near(box));
            var toSkin = skin - at;
            if (gap > TouchMm)
            {
                if (toSkin > SkinMm) return new(on, gap <= HollowMm && box.Part.System is not (PartSystem.Floor or PartSystem.Lining or PartSystem.Insulation or PartSystem.Vehicle or PartSystem.Loose) ? Beyond.Hollow : Beyond.Room);
                // wires and pipes in the hollow of a wall stop nothing
                if (box.Part.System is not (PartSystem.Insulation or PartSystem.Lining or PartSystem.Floor) || on.Count >= MostLayers) continue;
            }
            if (on.Count >= MostLayers) break;
            if (thick > SheetMm && box.Part.System is not PartSystem.Insulation) return new(on, Beyond.Closed);
            on.Add(new(box.Part, thick, box.Sheet, gap <= TouchMm));
            at = Far(box);
        }
        var left = skin - at;
        return new(on, left <= TouchMm ? Beyond.Skin : left <= SkinMm ? Beyond.Void : Beyond.Room);
    }

    private double Shell(int axis) => axis switch
    {
        0 => job.Vehicle.LoadSpace.LengthMm.Value,
        1 => job.Vehicle.LoadSpace.WidthMm.Value,
        _ => job.Vehicle.LoadSpace.HeightMm.Value,
    };

    private static bool Holds(double[] low, double[] high, double[] middle, int across)
    {
        for (var axis = 0; axis < 3; axis++)
            if (axis != across && (middle[axis] < low[axis] || middle[axis] > high[axis])) return false;
        return true;
    }
}
