using Wainwright.Fitout;
using Wainwright.Web.Entry;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Entry;

public sealed class TypedPartTests
{
    [Fact]
    public void A_name_is_enough_and_nothing_is_made_up_for_the_rest()
    {
        var part = new TypedPart { Id = "A22", Name = "mystery box" }.Read(SmallVan.Job, Measures.Metric);
        Assert.NotNull(part);
        Assert.Empty(part.Solids);
        Assert.Null(part.MassKg);
        Assert.Equal(Known.Seen, part.Known);
    }

    [Fact]
    public void A_whole_line_is_a_measured_part_in_its_place()
    {
        var part = new TypedPart { Id = "A22", Name = "hob", System = PartSystem.Gas, Size = "300x400x100", Along = "rear 500", Across = "right 20", Up = "on A20", Mass = "4,5" }.Read(SmallVan.Job, Measures.Metric);
        var box = Assert.IsType<BoxSolid>(Assert.Single(part!.Solids));
        Assert.Equal(new Place(2200, 1280, 872), box.At);
        Assert.Equal(4.5, part.MassKg!.Value.Value);
        Assert.Equal([new PartId("A20")], part.StandsOn);
    }

    [Fact]
    public void A_place_without_a_size_is_no_place()
    {
        var typed = new TypedPart { Id = "A22", Name = "hob", Along = "500" };
        Assert.Null(typed.Read(SmallVan.Job, Measures.Metric));
        Assert.Contains("belong together", typed.Faults["size"], StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_rules_refuse_stands_at_the_field_it_comes_from()
    {
        var typed = new TypedPart { Id = "A22", Name = "hob", Size = "300x400x100", Along = "2900", Across = "0", Up = "1850" };
        var part = typed.Read(SmallVan.Job, Measures.Metric)!;
        typed.Refuse([.. new Change("look", [Edit.Put(SmallVan.Job, "parts", "A22", part)]).On(SmallVan.Job).Issues]);
        Assert.Contains("beyond the rear doors", typed.Faults["along"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A20", "there already")]
    [InlineData("", "an id is short")]
    [InlineData("a/b", "an id is short")]
    public void An_id_is_its_own_and_short(string id, string reason)
    {
        var typed = new TypedPart { Id = id, Name = "hob" };
        Assert.Null(typed.Read(SmallVan.Job, Measures.Metric));
        Assert.Contains(reason, typed.Faults["id"], StringComparison.OrdinalIgnoreCase);
    }
}
