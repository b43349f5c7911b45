namespace Wainwright.Methods.Moisture.Field;

/// <summary>Surfaces cut into cells and joined where water can walk from one to the next: the ground that a damp field lives on.</summary>
/// <remarks>Distance is never used across a gap: two cells are near only by a chain of links. A sheet that ends, a seam or a door is a link left out.</remarks>
public sealed class SurfaceNet
{
    /// <summary>One cell of a sheet.</summary>
    /// <param name="AreaMm2">Its area [mm²], above 0.</param>
    /// <param name="Sheet">The sheet it is on, 0 or more.</param>
    /// <param name="XMm">Its middle [mm].</param>
    /// <param name="YMm">Its middle [mm].</param>
    /// <param name="ZMm">Its middle [mm].</param>
    public readonly record struct Cell(double AreaMm2, int Sheet, double XMm, double YMm, double ZMm);

    /// <summary>Two cells that touch.</summary>
    /// <param name="A">One cell.</param>
    /// <param name="B">Another one.</param>
    /// <param name="Conductance">Length of the face they share over the distance of their middles, times what a joint lets through (0 to 1) [-]; above 0.</param>
    public readonly record struct Link(int A, int B, double Conductance);

    /// <summary>Takes a net.</summary>
    /// <param name="cells">At least one.</param>
    /// <param name="links">Pairs may repeat: their conductances add.</param>
    /// <exception cref="ArgumentOutOfRangeException">No cell, an area or conductance that is not above 0, a link to nowhere or to itself.</exception>
    public SurfaceNet(IReadOnlyList<Cell> cells, IReadOnlyList<Link> links)
    {
        ArgumentOutOfRangeException.ThrowIfZero(cells.Count);
        foreach (var cell in cells)
        {
            Must.BePositive(cell.AreaMm2);
            ArgumentOutOfRangeException.ThrowIfNegative(cell.Sheet);
            Must.BeFinite(cell.XMm + cell.YMm + cell.ZMm);
        }
        foreach (var link in links)
        {
            Must.BePositive(link.Conductance);
            Must.BeWithin(link.A, 0, cells.Count - 1);
            Must.BeWithin(link.B, 0, cells.Count - 1);
            ArgumentOutOfRangeException.ThrowIfEqual(link.A, link.B);
        }
        Cells = cells;
        Links = links;
        Sheets = cells.Max(c => c.Sheet) + 1;
    }

    /// <summary>The cells.</summary>
    public IReadOnlyList<Cell> Cells { get; }

    /// <summary>What touches what.</summary>
    public IReadOnlyList<Link> Links { get; }

    /// <summary>Number of sheets, counted from 0 to the highest one named.</summary>
    public int Sheets { get; }
}
