using System.Globalization;
using System.Text;

namespace Wainwright.Paper;

/// <summary>Contours of a figure over a panel, as paths of an SVG drawing in mm: what is over a level, filled, and the line round it.</summary>
/// <remarks>The figure stands in the middle of each piece, runs straight between neighbours and level out to the rim.</remarks>
public static class Contour
{
    /// <summary>What is over a level.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="values">The figure of each piece, in the order of the net.</param>
    /// <param name="level">The level.</param>
    /// <returns>The filled path and the line; both empty where nothing is over it.</returns>
    public static (string Fill, string Line) Over(FlatPanel panel, IReadOnlyList<double> values, double level)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(values);
        var (u, v) = (Nodes(panel.U), Nodes(panel.V));
        double At(int i, int j) => values[panel.Cell(Math.Clamp(i - 1, 0, panel.U.Count - 2), Math.Clamp(j - 1, 0, panel.V.Count - 2))];
        StringBuilder fill = new(), line = new();
        for (var j = 0; j < v.Length - 1; j++)
            for (var i = 0; i < u.Length - 1; i++)
            {
                // squares that are over it throughout are drawn as one with their neighbours to the right
                var run = 0;
                while (i + run < u.Length - 1 && At(i + run, j) > level && At(i + run + 1, j) > level && At(i + run, j + 1) > level && At(i + run + 1, j + 1) > level) run++;
                if (run > 0)
                {
                    fill.Append(CultureInfo.InvariantCulture, $"M{u[i]:0} {v[j]:0}H{u[i + run]:0}V{v[j + 1]:0}H{u[i]:0}Z");
                    i += run - 1;
                    continue;
                }
                Square((u[i], v[j], At(i, j)), (u[i + 1], v[j], At(i + 1, j)), (u[i + 1], v[j + 1], At(i + 1, j + 1)), (u[i], v[j + 1], At(i, j + 1)), level, fill, line);
            }
        return (fill.ToString(), line.ToString());
    }

    /// <summary>The middles of the pieces with the rim on either side.</summary>
    private static double[] Nodes(IReadOnlyList<double> borders) => [borders[0], .. Enumerable.Range(0, borders.Count - 1).Select(i => (borders[i] + borders[i + 1]) / 2), borders[^1]];

    private static void Square((double U, double V, double Value) a, (double U, double V, double Value) b, (double U, double V, double Value) c, (double U, double V, double Value) d, double level, StringBuilder fill, StringBuilder line)
    {
        (double U, double V, double Value)[] corners = [a, b, c, d];
        List<(double U, double V, bool Crossing)> round = [];
        for (var k = 0; k < 4; k++)
        {
            var (from, to) = (corners[k], corners[(k + 1) % 4]);
            if (from.Value > level) round.Add((from.U, from.V, false));
            if ((from.Value > level) == (to.Value > level)) continue;
            var share = (level - from.Value) / (to.Value - from.Value);
            round.Add((from.U + (share * (to.U - from.U)), from.V + (share * (to.V - from.V)), true));
        }
        if (round.Count < 3) return;
        for (var k = 0; k < round.Count; k++) fill.Append(CultureInfo.InvariantCulture, $"{(k == 0 ? 'M' : 'L')}{round[k].U:0.#} {round[k].V:0.#}");
        fill.Append('Z');
        // the line goes from where the rim of the filled part leaves this square to where it comes back: between two crossings that follow one another
        for (var k = 0; k < round.Count; k++)
        {
            var (from, to) = (round[k], round[(k + 1) % round.Count]);
            if (from.Crossing && to.Crossing) line.Append(CultureInfo.InvariantCulture, $"M{from.U:0.#} {from.V:0.#}L{to.U:0.#} {to.V:0.#}");
        }
    }
}
