using System.Globalization;
using System.Text;

namespace Wainwright.Paper;

/// <summary>What a view shows of one board: its panels, with contours that run on from one to the next where they touch.</summary>
public sealed class FlatBoard
{
    private readonly Contour contour;

    internal FlatBoard(int sheet, IReadOnlyList<FlatPanel> panels) => (Sheet, Panels, contour) = (sheet, panels, new([.. panels.SelectMany(p => p.Tiles)]));

    /// <summary>The board, by its place in the net's list.</summary>
    public int Sheet { get; }

    /// <summary>Its panels.</summary>
    public IReadOnlyList<FlatPanel> Panels { get; }

    /// <summary>What is over a level, as paths of an SVG drawing in mm: the areas, to be filled, and the lines round them.</summary>
    /// <param name="values">The figure of each piece, in the order of the net.</param>
    /// <param name="level">The level.</param>
    /// <returns>Both empty where nothing is over it.</returns>
    public (string Fill, string Line) Over(IReadOnlyList<double> values, double level)
    {
        ArgumentNullException.ThrowIfNull(values);
        var (areas, lines) = contour.Over(values, level);
        return (Path(areas, "Z"), Path(lines, ""));
    }

    private static string Path(IReadOnlyList<IReadOnlyList<Flat>> bits, string end)
    {
        var path = new StringBuilder();
        foreach (var bit in bits)
        {
            for (var i = 0; i < bit.Count; i++) path.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? 'M' : 'L')}{bit[i].U:0.#} {bit[i].V:0.#}");
            path.Append(end);
        }
        return path.ToString();
    }
}
