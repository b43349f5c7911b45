using Wainwright.Fitout;

namespace Wainwright.Survey.Damp;

/// <summary>Cuts the solids of a board into pieces.</summary>
internal static class BoardCells
{
    /// <summary>What is thinner is a film on or in the board, not wood: vinyl, a bund [mm].</summary>
    public const double ThinnestMm = 2;

    /// <summary>The pieces of one part; a turned or round solid counts as the box round it.</summary>
    public static IEnumerable<DampCell> Of(Part part, int sheet, double cellMm)
    {
        for (var s = 0; s < part.Solids.Count; s++)
        {
            var (low, high) = part.Solids[s].Bounds();
            var size = Sides(high - low);
            if (size.Min() < ThinnestMm) continue;
            var across = Array.IndexOf(size, size.Min());
            var count = new int[3];
            for (var a = 0; a < 3; a++) count[a] = a == across ? 1 : Math.Max(1, (int)Math.Round(size[a] / cellMm));
            var from = Sides(low);
            for (var i = 0; i < count[0]; i++)
                for (var j = 0; j < count[1]; j++)
                    for (var k = 0; k < count[2]; k++)
                    {
                        Place Corner(int di, int dj, int dk) => new(from[0] + (size[0] * (i + di) / count[0]), from[1] + (size[1] * (j + dj) / count[1]), from[2] + (size[2] * (k + dk) / count[2]));
                        yield return new(sheet, Corner(0, 0, 0), Corner(1, 1, 1), across, s);
                    }
        }
    }

    public static double[] Sides(Place p) => [p.XMm, p.YMm, p.ZMm];
}
