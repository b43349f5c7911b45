namespace Wainwright.Paper.Tests;

public sealed class ContourTests
{
    private static readonly LaidTile[] Tiles = Board(100);

    // 1 000 by 600 in square pieces, row by row
    private static LaidTile[] Board(int side) => [.. from row in Enumerable.Range(0, 600 / side) from column in Enumerable.Range(0, 1_000 / side) select new LaidTile((1_000 / side * row) + column, new(side * column, side * row, side * (column + 1), side * (row + 1)))];

    private static double Area(IReadOnlyList<Flat> round) => Math.Abs(round.Select((a, i) => (a, b: round[(i + 1) % round.Count])).Sum(s => (s.a.U * s.b.V) - (s.b.U * s.a.V))) / 2;

    private static double[] Figures(LaidTile[] tiles, Func<double, double, double> at) => [.. tiles.Select(t => at((t.Box.U0 + t.Box.U1) / 2, (t.Box.V0 + t.Box.V1) / 2))];

    [Fact]
    public void Of_a_slope_the_area_over_a_level_is_what_lies_beyond_the_line()
    {
        var (areas, lines) = new Contour(Tiles).Over(Figures(Tiles, (u, _) => u / 10), 62);
        Assert.All(Assert.Single(lines), p => Assert.Equal(620, p.U, tolerance: 1e-9));
        Assert.Equal((1_000 - 620) * 600, areas.Sum(Area), tolerance: 1e-6);
    }

    [Fact]
    public void Round_a_spot_the_line_closes_and_encloses_the_area()
    {
        var fine = Board(25);
        var (areas, lines) = new Contour(fine).Over(Figures(fine, (u, v) => 40 - (Math.Sqrt(((u - 450) * (u - 450)) + ((v - 250) * (v - 250))) / 10)), 21);
        var line = Assert.Single(lines);
        Assert.Equal(line[0], line[^1]);
        Assert.Equal(Area(line), areas.Sum(Area), tolerance: 1e-6);
        // a cone, 190 mm from its middle at that height; straight bits cut its roundness a little
        Assert.Equal(Math.PI * 190 * 190, Area(line), tolerance: 0.01 * Math.PI * 190 * 190);
    }

    [Fact]
    public void Over_nothing_there_is_neither_and_over_all_there_is_no_line()
    {
        var level = Figures(Tiles, (_, _) => 12);
        Assert.Empty(new Contour(Tiles).Over(level, 16).Areas);
        var (areas, lines) = new Contour(Tiles).Over(level, 10);
        Assert.Empty(lines);
        // one to a row
        Assert.Equal(6, areas.Count);
        Assert.Equal(600_000, areas.Sum(Area), tolerance: 1e-6);
    }
}
