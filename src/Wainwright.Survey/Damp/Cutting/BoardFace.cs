using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>One flat face of a board: pieces that lie in one plane, seen along two axes u and v of the van.</summary>
/// <remarks>A board that is a box, a locker say, has several. Lying, u is x and v is y; along a side, u is x and v is z; across the van, u is y and v is z.</remarks>
public sealed class BoardFace
{
    private BoardFace(int sheet, int across, IReadOnlyList<int> cells, DampNet net)
    {
        (Sheet, Across, Cells) = (sheet, across, cells);
        (UAxis, VAxis) = (across == 0 ? 1 : 0, across == 2 ? 1 : 2);
        LowMm = cells.Min(c => BoardCells.Sides(net.Cells[c].Low)[across]);
        HighMm = cells.Max(c => BoardCells.Sides(net.Cells[c].High)[across]);
        Boxes = [.. cells.Select(c =>
        {
            double[] low = BoardCells.Sides(net.Cells[c].Low), high = BoardCells.Sides(net.Cells[c].High);
            return new FaceBox(low[UAxis], low[VAxis], high[UAxis], high[VAxis]);
        })];
        Extent = new(Boxes.Min(b => b.U0), Boxes.Min(b => b.V0), Boxes.Max(b => b.U1), Boxes.Max(b => b.V1));
    }

    /// <summary>The board, by its place in the net's list.</summary>
    public int Sheet { get; }

    /// <summary>The axis through it: 0 x, 1 y, 2 z.</summary>
    public int Across { get; }

    /// <summary>The axis that u runs along.</summary>
    public int UAxis { get; }

    /// <summary>The axis that v runs along.</summary>
    public int VAxis { get; }

    /// <summary>Its lower face along <see cref="Across"/> [mm].</summary>
    public double LowMm { get; }

    /// <summary>Its upper face [mm].</summary>
    public double HighMm { get; }

    /// <summary>Its pieces, by their place in the net.</summary>
    public IReadOnlyList<int> Cells { get; }

    /// <summary>Where each of them lies in u and v.</summary>
    public IReadOnlyList<FaceBox> Boxes { get; }

    /// <summary>The rectangle round them all.</summary>
    public FaceBox Extent { get; }

    /// <summary>A place on the face that looks to the middle of the room.</summary>
    /// <param name="uMm">u [mm].</param>
    /// <param name="vMm">v [mm].</param>
    /// <param name="room">The load space.</param>
    public Place At(double uMm, double vMm, LoadSpace room)
    {
        ArgumentNullException.ThrowIfNull(room);
        double[] middle = [room.LengthMm.Value / 2, room.WidthMm.Value / 2, room.HeightMm.Value / 2], at = new double[3];
        (at[UAxis], at[VAxis]) = (uMm, vMm);
        at[Across] = HighMm <= middle[Across] ? HighMm : LowMm;
        return new(at[0], at[1], at[2]);
    }

    /// <summary>The faces of all boards of a net, board by board.</summary>
    /// <param name="net">The net.</param>
    public static IReadOnlyList<BoardFace> Of(DampNet net)
    {
        ArgumentNullException.ThrowIfNull(net);
        List<BoardFace> faces = [];
        foreach (var board in Enumerable.Range(0, net.Cells.Count).GroupBy(c => (net.Cells[c].Sheet, net.Cells[c].Across)).OrderBy(g => g.Key.Sheet).ThenByDescending(g => g.Key.Across))
        {
            List<int> plane = [];
            var top = double.NegativeInfinity;
            // pieces whose thicknesses overlap lie in one plane
            foreach (var cell in board.OrderBy(c => BoardCells.Sides(net.Cells[c].Low)[board.Key.Across]).ThenBy(c => c))
            {
                if (plane.Count > 0 && BoardCells.Sides(net.Cells[cell].Low)[board.Key.Across] >= top - 0.5)
                {
                    faces.Add(new(board.Key.Sheet, board.Key.Across, [.. plane.Order()], net));
                    plane.Clear();
                    top = double.NegativeInfinity;
                }
                plane.Add(cell);
                top = Math.Max(top, BoardCells.Sides(net.Cells[cell].High)[board.Key.Across]);
            }
            faces.Add(new(board.Key.Sheet, board.Key.Across, [.. plane.Order()], net));
        }
        return faces;
    }
}

/// <summary>A rectangle on a face [mm].</summary>
/// <param name="U0">Least u.</param>
/// <param name="V0">Least v.</param>
/// <param name="U1">Greatest u.</param>
/// <param name="V1">Greatest v.</param>
public readonly record struct FaceBox(double U0, double V0, double U1, double V1)
{
    /// <summary>Area [mm²].</summary>
    public double AreaMm2 => Math.Max(0, U1 - U0) * Math.Max(0, V1 - V0);

    /// <summary>What it shares with another; of no area when they are apart.</summary>
    /// <param name="other">The other.</param>
    public FaceBox Shared(FaceBox other) => new(Math.Max(U0, other.U0), Math.Max(V0, other.V0), Math.Min(U1, other.U1), Math.Min(V1, other.V1));
}
