using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;

namespace Wainwright.Web.Shown;

/// <summary>A place on a board laid flat.</summary>
/// <param name="U">To the right [mm].</param>
/// <param name="V">Down [mm].</param>
public readonly record struct FlatPlace(double U, double V);

/// <summary>A rectangle of board laid flat.</summary>
/// <param name="U">Left end [mm].</param>
/// <param name="V">Upper end [mm].</param>
/// <param name="Wide">Width [mm].</param>
/// <param name="High">Height [mm].</param>
public readonly record struct FlatRectangle(double U, double V, double Wide, double High);

/// <summary>A board with its cut pieces laid flat, looked at square to its largest face: floor and ceiling from above with the front of the van to the left, walls from inside.</summary>
/// <param name="Faces">The board's solids.</param>
/// <param name="Pieces">Corners of each piece.</param>
/// <param name="Low">Upper left end of all of it.</param>
/// <param name="Wide">Width [mm].</param>
/// <param name="High">Height [mm].</param>
/// <param name="Says">What is right and up, in words.</param>
public sealed record FlatBoard(IReadOnlyList<FlatRectangle> Faces, IReadOnlyList<IReadOnlyList<FlatPlace>> Pieces, FlatPlace Low, double Wide, double High, string Says)
{
    /// <summary>Height of a letter that can be read on it [mm].</summary>
    public double Letter => Math.Max(Wide, High) / 14;

    /// <summary>Lays it flat.</summary>
    public static FlatBoard Of(DampNet net, BoardCut board)
    {
        ArgumentNullException.ThrowIfNull(net);
        ArgumentNullException.ThrowIfNull(board);
        var cells = net.Cells.Where(c => net.Sheets[c.Sheet].Part == board.Sheet.Part).ToList();
        var across = cells.GroupBy(c => c.Across).MaxBy(g => g.Sum(c => c.AreaMm2))!.Key;
        FlatPlace Flat(Place p) => across switch { 0 => new(p.YMm, -p.ZMm), 1 => new(p.XMm, -p.ZMm), _ => new(p.XMm, p.YMm) };
        FlatRectangle Rectangle(IEnumerable<DampCell> of)
        {
            var ends = of.SelectMany(c => new[] { Flat(c.Low), Flat(c.High) }).ToList();
            var (u, v) = (ends.Min(e => e.U), ends.Min(e => e.V));
            return new(u, v, ends.Max(e => e.U) - u, ends.Max(e => e.V) - v);
        }
        var faces = cells.Where(c => c.Across == across).GroupBy(c => c.Solid).Select(Rectangle).ToList();
        IReadOnlyList<IReadOnlyList<FlatPlace>> pieces = [.. board.Pieces.Select(p => (IReadOnlyList<FlatPlace>)[.. p.Corners.Select(Flat)])];
        var (left, top) = (faces.Min(f => f.U), faces.Min(f => f.V));
        var says = across switch { 0 => "Right is the right wall, up is up.", 1 => "Right is the rear, up is up.", _ => "From above: right is the rear, down is the right wall." };
        return new(faces, pieces, new(left, top), faces.Max(f => f.U + f.Wide) - left, faces.Max(f => f.V + f.High) - top, says);
    }
}
