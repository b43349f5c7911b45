using System.Xml.Linq;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Paper.Tests;

public sealed class DampPlanTests
{
    private static readonly DampMap Map = DampMapping.Of(WetJob.Job, new DateOnly(2026, 3, 2))!;

    private static readonly CutPlan Cut = CutPlanning.Of(Map, CutStakes.Usual with { KeptRottenPerM2 = 3_000 });

    private static XElement[] Of(string svg, string pen) => [.. XDocument.Parse(svg).Descendants().Where(e => e.Attribute("class")?.Value == pen)];

    private static string[] Words(string svg) => [.. XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value)];

    private static LaidFace Laid(string part) => DampLayout.Unfolded(Map).Single(f => Map.Net.Sheets[f.Face.Sheet].Part.Text == part);

    [Fact]
    public void Walls_lie_along_the_edge_of_the_floor_and_the_ceiling_along_the_right_wall()
    {
        // 1 800 wide and 1 900 high: the right wall rises from v 1 800, the ceiling's right edge lies at 3 700, the left wall goes down from 0
        Assert.Equal(new Flat(700, 1_500), Laid("F").At(700, 1_500));
        Assert.Equal(new Flat(700, 1_800), Laid("R").At(700, 0));
        Assert.Equal(new Flat(700, 3_700), Laid("C").At(700, 1_800));
        Assert.Equal(new Flat(700, 3_900), Laid("C").At(700, 1_600));
        Assert.Equal(new Flat(700, -900), Laid("L").At(700, 900));
        Assert.Equal(new(0, 1_900, 2_000, 3_400), Laid("R").Extent);
    }

    [Fact]
    public void The_plan_has_every_reading_with_its_number_and_value()
    {
        var words = Words(DampPlan.Unfolded(Map));
        Assert.All((string[])["P1 12", "P2 ≥28", "P3 22", "P4 11.5", "P5 11"], w => Assert.Contains(w, words));
    }

    [Fact]
    public void Each_threshold_has_its_own_dashes_and_its_number_and_nothing_is_said_by_colour()
    {
        var svg = DampPlan.OfBoard(Map, new("F"));
        Assert.All((string[])["16 %", "20 %", "28 %"], w => Assert.Contains(w, Words(svg)));
        Assert.Equal(3, Of(svg, "contour").Where(e => e.Name.LocalName == "polyline").Select(e => (e.Attribute("stroke-dasharray")?.Value, e.Attribute("stroke-width")?.Value)).Distinct().Count());
        var inks = XDocument.Parse(svg).Descendants().SelectMany(e => new[] { e.Attribute("fill")?.Value, e.Attribute("stroke")?.Value }).OfType<string>().Where(c => c[0] == '#').Distinct();
        Assert.All(inks, c => Assert.True(c[1..3] == c[3..5] && c[3..5] == c[5..7], $"{c} is no grey"));
    }

    [Fact]
    public void What_to_cut_is_drawn_only_where_it_is_given()
    {
        Assert.Contains(Cut.Boards, b => b.Fate == BoardFate.Replace);
        Assert.Contains(Of(DampPlan.Unfolded(Map, new() { Cut = Cut }), "cut-line"), e => e.Name.LocalName == "polygon");
        Assert.Contains("OUT", Words(DampPlan.Unfolded(Map, new() { Cut = Cut })));
        Assert.Empty(Of(DampPlan.Unfolded(Map), "cut-line"));
    }

    [Fact]
    public void A_frame_of_another_day_is_drawn_instead_of_the_map()
    {
        var dry = Enumerable.Repeat(12.0, Map.Net.Cells.Count).ToList();
        var svg = DampPlan.OfBoard(Map, new("F"), new() { Frame = new DampFrame(30, dry, dry, dry), Key = false });
        Assert.Empty(Of(svg, "contour"));
        Assert.Empty(Of(svg, "drop"));
    }

    [Fact]
    public void A_contour_lies_where_the_moisture_crosses_it()
    {
        var face = Laid("F");
        // 10 % at the front, 30 % at x 2 000: 20 % at x 1 000
        var rising = Map.Net.Cells.Select(c => 10 + (c.Middle.XMm / 100)).ToList();
        var ink = new Ink();
        DampContours.Draw(ink, new Sheet(1, 0, 0), face, rising, [20]);
        var lines = Of(ink.Done(100, 100, "t"), "contour");
        Assert.NotEmpty(lines);
        Assert.All(lines.SelectMany(l => l.Attribute("points")!.Value.Split(' ')), p => Assert.Equal(1_000, double.Parse(p.Split(',')[0], System.Globalization.CultureInfo.InvariantCulture), tolerance: 0.5));
    }

    [Fact]
    public void Hatching_and_drops_stay_in_their_piece()
    {
        foreach (var rising in (bool[])[true, false])
            Assert.All(DampHatch.Strokes(3, 5, 11, 9, 1.6, rising), s =>
            {
                foreach (var (x, y) in (ReadOnlySpan<(double, double)>)[s.Item1, s.Item2])
                {
                    Assert.InRange(x, 3 - 1e-9, 11 + 1e-9);
                    Assert.InRange(y, 5 - 1e-9, 9 + 1e-9);
                }
            });
        Assert.True(DampDrops.In(0, 0, 20, 20, 3).Count() > 2 * DampDrops.In(0, 0, 20, 20, 1).Count());
        Assert.All(DampDrops.In(3, 5, 11, 9, 2), s => Assert.True(s.Item1.Item1 is >= 3 and < 11 && s.Item1.Item2 is >= 5 and < 9 && s.Item2.Item2 <= 9));
    }

    [Fact]
    public void The_rim_goes_round_the_board_and_not_through_it()
    {
        var length = DampRim.Of(Laid("F")).Sum(s => Math.Abs(s.A.U - s.B.U) + Math.Abs(s.A.V - s.B.V));
        Assert.Equal(2 * (2_000 + 1_800), length, tolerance: 1e-6);
    }

    [Fact]
    public void A_board_that_the_map_does_not_have_is_refused() => Assert.Throws<ArgumentException>(() => DampPlan.OfBoard(Map, new("none")));
}
