using Wainwright.Survey.Damp.Cutting;

namespace Wainwright.Survey.Tests.Damp.Cutting;

/// <summary>The search against looking at everything, with gains added up tile by tile.</summary>
public sealed class PieceSearchTests
{
    static readonly CutStakes Stakes = new(FreeCutPerM: 25, FramingCutPerM: 10, PiecePerPiece: 5, MarginMm: 60);

    [Fact]
    public void Best_one_or_two_rectangles_are_those_found_by_trying_all()
    {
        int one = 0, two = 0;
        for (var start = 0; start < 60; start++)
        {
            var (tiles, u, v) = Invented(start);
            var table = new CutTable(tiles, u, v, Stakes);
            var best = PieceSearch.Best(table);
            Assert.Equal(ByHand(tiles, u, v), best.Sum(f => f.Gain), tolerance: 1e-9);
            if (best.Count == 1) one++;
            if (best.Count == 2) two++;
        }
        // the invented boards must put both to the test
        Assert.True(one >= 5 && two >= 5, $"one piece {one} times, two {two} times");
    }

    [Fact]
    public void A_summed_table_gives_what_adding_up_tile_by_tile_gives()
    {
        for (var start = 100; start < 140; start++)
        {
            var (tiles, u, v) = Invented(start);
            var table = new CutTable(tiles, u, v, Stakes);
            foreach (var (u0, u1, v0, v1) in Rectangles(u.Count, v.Count)) Assert.Equal(Gain(tiles, u[u0], u[u1], v[v0], v[v1]), table.Gain(u0, u1, v0, v1), tolerance: 1e-9);
        }
    }

    /// <summary>A board of up to twelve tiles, some missing, of two owners, with wet places.</summary>
    static (List<CutTable.Tile> Tiles, List<CutLine> U, List<CutLine> V) Invented(int start)
    {
        var chance = new Random(start);
        List<CutTable.Tile> tiles = [];
        double[] x = [0, 100, 220, 340, 430], y = [0, 90, 200, 300];
        for (var i = 0; i < 4; i++)
            for (var j = 0; j < 3; j++)
            {
                if (chance.NextDouble() < 0.1) continue;
                var spent = chance.NextDouble() < 0.3 ? chance.NextDouble() : 0;
                tiles.Add(new(new(x[i], y[j], x[i + 1], y[j + 1]), i < 2 || start % 2 == 0 ? 0 : 1, (1e-3 * chance.NextDouble()) - (2e-3 * (1 - spent)), 6e-3 * spent));
            }
        List<CutLine> u = [new(0), new(60), new(130, "rib 1"), new(220), new(300, "rib 2", 0, 150), new(430)];
        List<CutLine> v = [new(0), new(50), new(120), new(210, "rail", 90, 430), new(300)];
        return (tiles, u, v);
    }

    static double ByHand(List<CutTable.Tile> tiles, List<CutLine> u, List<CutLine> v)
    {
        var all = Rectangles(u.Count, v.Count).Select(r => (R: r, Gain: Gain(tiles, u[r.U0], u[r.U1], v[r.V0], v[r.V1]))).ToList();
        var best = Math.Max(0, all.Max(r => r.Gain));
        foreach (var a in all)
            foreach (var b in all)
                if (a.R.U1 <= b.R.U0 || b.R.U1 <= a.R.U0 || a.R.V1 <= b.R.V0 || b.R.V1 <= a.R.V0) best = Math.Max(best, a.Gain + b.Gain);
        return best;
    }

    static IEnumerable<(int U0, int U1, int V0, int V1)> Rectangles(int nu, int nv) =>
        from u0 in Enumerable.Range(0, nu) from u1 in Enumerable.Range(u0 + 1, nu - u0 - 1) from v0 in Enumerable.Range(0, nv) from v1 in Enumerable.Range(v0 + 1, nv - v0 - 1) select (u0, u1, v0, v1);

    static double Gain(List<CutTable.Tile> tiles, CutLine u0, CutLine u1, CutLine v0, CutLine v1)
    {
        var box = new FaceBox(u0.AtMm, v0.AtMm, u1.AtMm, v1.AtMm);
        double minutes = Stakes.PiecePerPiece, margin = Stakes.MarginMm;
        double Side(CutLine line, bool upright, double from, double to)
        {
            var cut = 0.0;
            foreach (var a in tiles)
                foreach (var b in tiles)
                    if (a.Owner == b.Owner)
                    {
                        var (al, ah, bl, bh) = upright ? (a.Box.U0, a.Box.U1, b.Box.U0, b.Box.U1) : (a.Box.V0, a.Box.V1, b.Box.V0, b.Box.V1);
                        // the line runs inside one tile, or between two that touch on it
                        if (!(a.Equals(b) ? al < line.AtMm && line.AtMm < ah : ah == line.AtMm && bl == line.AtMm)) continue;
                        var (a0, a1, b0, b1) = upright ? (a.Box.V0, a.Box.V1, b.Box.V0, b.Box.V1) : (a.Box.U0, a.Box.U1, b.Box.U0, b.Box.U1);
                        var (low, high) = (Math.Max(from, Math.Max(a0, b0)), Math.Min(to, Math.Min(a1, b1)));
                        if (high <= low) continue;
                        cut += high - low;
                        var framed = line.Framing is null ? 0 : Math.Max(0, Math.Min(high, line.ToMm) - Math.Max(low, line.FromMm));
                        minutes += ((framed * Stakes.FramingCutPerM) + ((high - low - framed) * Stakes.FreeCutPerM)) / 1000;
                    }
            return cut;
        }
        var inner = new FaceBox(
            box.U0 + (Side(u0, true, box.V0, box.V1) > 0.5 ? margin : 0), box.V0 + (Side(v0, false, box.U0, box.U1) > 0.5 ? margin : 0),
            box.U1 - (Side(u1, true, box.V0, box.V1) > 0.5 ? margin : 0), box.V1 - (Side(v1, false, box.U0, box.U1) > 0.5 ? margin : 0));
        return tiles.Sum(t => (t.Box.Shared(box).AreaMm2 * t.GainPerMm2) + (t.Box.Shared(inner).AreaMm2 * t.RotPerMm2)) - minutes;
    }
}
