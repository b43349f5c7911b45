using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

public sealed class OutlineTests
{
    private static readonly BoxSolid Box = new() { At = new(0, 0, 0), Size = new(100, 200, 300) };

    [Fact]
    public void A_cut_through_a_box_gives_a_face_of_its_cross_section()
    {
        var (face, beyond) = Outline.Cut(Outline.Corners(Box), new(SectionView.Across(50)));
        Assert.Equal(200.0 * 300.0, Area(face), 1e-6);
        Assert.Equal(200.0 * 300.0, Area(beyond), 1e-6);
    }

    [Fact]
    public void What_stands_before_the_cut_is_not_seen()
    {
        var (face, beyond) = Outline.Cut(Outline.Corners(Box), new(new SectionView(SeenFrom.Left, 500)));
        Assert.Empty(face);
        Assert.Empty(beyond);
    }

    [Fact]
    public void What_lies_beyond_the_cut_is_seen_and_not_cut()
    {
        var (face, beyond) = Outline.Cut(Outline.Corners(Box), new(new SectionView(SeenFrom.Right, 500)));
        Assert.Empty(face);
        Assert.Equal(100.0 * 300.0, Area(beyond), 1e-6);
    }

    [Fact]
    public void A_tilted_board_is_cut_along_its_slope()
    {
        var board = new BoxSolid { At = new(0, 0, 0), Size = new(100, 200, 10), TiltDeg = 45 };
        var (face, _) = Outline.Cut(Outline.Corners(board), new(SectionView.Across(50)));
        Assert.Equal(200.0 * 10.0, Area(face), 1e-6);
        Assert.Equal(148.5, face.Max(p => p.U) - face.Min(p => p.U), 0.1);
    }

    [Theory]
    [InlineData(Axis.X)]
    [InlineData(Axis.Y)]
    [InlineData(Axis.Z)]
    public void A_cylinder_seen_along_its_axis_is_round(Axis along)
    {
        var round = new CylinderSolid { At = new(500, 500, 500), Along = along, DiameterMm = 100, LengthMm = 400 };
        var view = along switch { Axis.X => SectionView.Across(9999), Axis.Y => new SectionView(SeenFrom.Left, -9999), _ => new SectionView(SeenFrom.Above, 9999) };
        var (_, seen) = Outline.Cut(Outline.Corners(round), new(view));

        // area of a regular 32-gon in a circle of radius 50: 16 · 50² · sin(2π/32)
        Assert.Equal(16 * 50 * 50 * Math.Sin(2 * Math.PI / 32), Area(seen), 1e-6);
    }

    [Fact]
    public void Hatching_stays_inside_and_is_evenly_spaced()
    {
        var square = Outline.Hull([new(0, 0), new(100, 0), new(100, 100), new(0, 100)]);
        var lines = Outline.Hatch(square, 10, leansRight: true).ToList();
        Assert.InRange(lines.Count, 13, 15); // a diagonal of 141 mm at 10 mm
        Assert.All(lines, l => Assert.True(l.A.U is >= 0 and <= 100 && l.B.V is >= 0 and <= 100));
        Assert.All(lines, l => Assert.Equal(l.B.U - l.A.U, l.B.V - l.A.V, 1e-9));
    }

    private static double Area(IReadOnlyList<Flat> corners) =>
        Math.Abs(corners.Select((a, i) => (A: a, B: corners[(i + 1) % corners.Count])).Sum(e => e.A.U * e.B.V - e.B.U * e.A.V)) / 2;
}
