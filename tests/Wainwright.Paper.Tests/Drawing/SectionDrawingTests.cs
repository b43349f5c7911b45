using System.Xml.Linq;
using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

public sealed class SectionDrawingTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<SeenFrom> Views => [.. Enum.GetValues<SeenFrom>()];

    private static SectionView Cut(SeenFrom from) => SectionView.Usual(SmallJob.Job).First(v => v.From == from);

    [Theory, MemberData(nameof(Views))]
    public void Every_view_is_one_well_formed_element_that_fetches_nothing(SeenFrom from)
    {
        var drawing = XElement.Parse(SectionDrawing.Svg(SmallJob.Job, Cut(from), new() { Pins = Pin.OfPoints(SmallJob.Job), Key = true }));
        Assert.Equal(Svg + "svg", drawing.Name);
        Assert.DoesNotContain(drawing.DescendantsAndSelf(), e => e.Name.LocalName is "image" or "use" or "script" or "style" or "a" or "foreignObject");
        Assert.DoesNotContain(drawing.DescendantsAndSelf().Attributes(), a => a.Name.LocalName is "href" || a.Value.Contains("url(", StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Views))]
    public void Nothing_is_drawn_off_the_paper(SeenFrom from)
    {
        var drawing = XElement.Parse(SectionDrawing.Svg(SmallJob.Job, Cut(from)));
        var box = Numbers(drawing.Attribute("viewBox")!.Value);
        var at = drawing.Descendants(Svg + "polygon").SelectMany(p => Numbers(p.Attribute("points")!.Value).Chunk(2)).ToList();
        Assert.NotEmpty(at);
        Assert.All(at, p => Assert.True(p[0] >= 0 && p[0] <= box[2] && p[1] >= 0 && p[1] <= box[3]));
    }

    [Theory, MemberData(nameof(Views))]
    public void No_line_is_thinner_than_a_copier_can_keep(SeenFrom from)
    {
        var widths = XElement.Parse(SectionDrawing.Svg(SmallJob.Job, Cut(from))).Descendants().Attributes("stroke-width");
        Assert.All(widths, w => Assert.True(Numbers(w.Value)[0] >= 0.18));
    }

    [Fact]
    public void Seen_from_the_left_shows_the_right_half_and_the_front_to_the_left()
    {
        var ids = Drawn(Cut(SeenFrom.Left));
        Assert.Contains("K1", ids);
        Assert.DoesNotContain("L1", ids);
        Assert.True(MiddleX(Cut(SeenFrom.Left), "K1") > 89, "the kitchen stands in the rear half, so right of the middle");
    }

    [Fact]
    public void Seen_from_the_right_shows_the_left_half()
    {
        Assert.Contains("L1", Drawn(Cut(SeenFrom.Right)));
        Assert.DoesNotContain("K1", Drawn(Cut(SeenFrom.Right)));
        Assert.True(MiddleX(Cut(SeenFrom.Right), "L1") > 89, "the locker hangs in the front half, so right of the middle");
    }

    [Fact]
    public void In_the_plan_what_is_overhead_is_dashed()
    {
        var locker = Part(Cut(SeenFrom.Above), "L1");
        Assert.All(locker.Elements(), e => Assert.NotNull(e.Attribute("stroke-dasharray")));
        Assert.All(Part(Cut(SeenFrom.Above), "K1").Elements(Svg + "polygon"), e => Assert.Null(e.Attribute("stroke-dasharray")));
    }

    [Fact]
    public void A_part_that_is_out_is_not_drawn() =>
        Assert.DoesNotContain("data-part=\"K1\"", SectionDrawing.Svg(SmallJob.Job, Cut(SeenFrom.Left), new() { Out = new HashSet<PartId> { new("K1") } }), StringComparison.Ordinal);

    [Fact]
    public void A_part_nobody_measured_is_named_as_not_drawn() =>
        Assert.Equal("X1", Assert.Single(SectionDrawing.Of(SmallJob.Job, Cut(SeenFrom.Left)).NotDrawn).Id.Text);

    [Fact]
    public void The_plan_carries_every_pin_and_the_key_says_what_each_is()
    {
        var drawing = SectionDrawing.Of(SmallJob.Job, Cut(SeenFrom.Above), new() { Pins = Pin.OfPoints(SmallJob.Job), Key = true });
        Assert.Equal(["P1", "P2"], drawing.Pins.Select(p => p.Label));
        Assert.Contains("rear left floor corner", drawing.Svg, StringComparison.Ordinal);
    }

    [Fact]
    public void The_measures_of_the_load_space_stand_on_the_drawing_with_their_doubt()
    {
        var plan = SectionDrawing.Svg(SmallJob.Job, Cut(SeenFrom.Above));
        Assert.Contains("2400 mm", plan, StringComparison.Ordinal);
        Assert.Contains("1700 ± 5 mm", System.Net.WebUtility.HtmlDecode(plan), StringComparison.Ordinal);
    }

    [Fact]
    public void Hostile_names_are_only_text()
    {
        const string hostile = "\"><script>alert(1)</script>";
        var job = SmallJob.Job with { Id = hostile, Parts = [.. SmallJob.Job.Parts.Select(p => p with { Name = hostile, Id = new(hostile + p.Id.Text) })] };
        var drawing = XElement.Parse(SectionDrawing.Svg(job, Cut(SeenFrom.Above), new() { Pins = [new(hostile, new(1, 1, 1), PinKind.Finding, hostile)], Key = true }));
        Assert.DoesNotContain(drawing.Descendants(), e => e.Name.LocalName == "script");
    }

    [Fact]
    public void A_finding_is_pinned_at_its_part_else_at_its_point()
    {
        Assert.Equal(new(750, 160, 1500), Pin.PlaceOf(SmallJob.Job, SmallJob.Job.Findings[1]));
        Assert.Equal(new(2200, 200, 12), Pin.PlaceOf(SmallJob.Job, SmallJob.Job.Findings[0] with { Parts = [new("X1")] }));
        Assert.Null(Pin.PlaceOf(SmallJob.Job, SmallJob.Job.Findings[0] with { Parts = [], Points = [] }));
    }

    private static IEnumerable<string> Drawn(SectionView view) =>
        XElement.Parse(SectionDrawing.Svg(SmallJob.Job, view)).Descendants().Attributes("data-part").Select(a => a.Value).Distinct();

    private static XElement Part(SectionView view, string id) =>
        XElement.Parse(SectionDrawing.Svg(SmallJob.Job, view)).Descendants().First(e => (string?)e.Attribute("data-part") == id);

    private static double MiddleX(SectionView view, string id) =>
        Numbers(Part(view, id).Element(Svg + "polygon")!.Attribute("points")!.Value).Chunk(2).Average(p => p[0]);

    private static double[] Numbers(string text) =>
        [.. text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, System.Globalization.CultureInfo.InvariantCulture))];
}
