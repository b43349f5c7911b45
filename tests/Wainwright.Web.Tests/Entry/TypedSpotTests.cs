using Wainwright.Fitout;
using Wainwright.Web.Entry;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Entry;

public sealed class TypedSpotTests
{
    [Theory]
    [InlineData(Axis.X, "350", 350)]
    [InlineData(Axis.X, "rear 120", 3000 - 120 - 400)]
    [InlineData(Axis.X, "rear doors", 3000 - 400)]
    [InlineData(Axis.X, "behind A20", 1900)]
    [InlineData(Axis.X, "behind a20 25", 1925)]
    [InlineData(Axis.X, "ahead of A20 10", 1000 - 10 - 400)]
    [InlineData(Axis.Y, "left 40", 40)]
    [InlineData(Axis.Y, "right wall", 1700 - 400)]
    [InlineData(Axis.Y, "right 35", 1700 - 35 - 400)]
    [InlineData(Axis.Y, "middle", 650)]
    [InlineData(Axis.Z, "floor", 0)]
    [InlineData(Axis.Z, "on A20", 872)]
    [InlineData(Axis.Z, "on top of A20 15", 887)]
    [InlineData(Axis.Z, "roof 60", 1900 - 60 - 400)]
    public void A_place_is_typed_as_it_is_said_in_the_van(Axis axis, string text, double mm) =>
        Assert.Equal((mm, null), TypedSpot.Of(axis, text, 400, SmallVan.Job, Measures.Metric));

    [Theory]
    [InlineData(Axis.Z, "on A99", "there is no part A99")]
    [InlineData(Axis.Z, "on A21", "no measured place")]
    [InlineData(Axis.Z, "on", "name the part")]
    [InlineData(Axis.Y, "on A20", "not understood")]
    [InlineData(Axis.X, "rear wide", "not a measure")]
    public void What_cannot_be_placed_says_why(Axis axis, string text, string reason)
    {
        var (mm, fault) = TypedSpot.Of(axis, text, 400, SmallVan.Job, Measures.Metric);
        Assert.Null(mm);
        Assert.Contains(reason, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void From_the_far_end_it_takes_the_size_to_know_the_near_one() =>
        Assert.Contains("needs the size first", TypedSpot.Of(Axis.X, "rear 120", null, SmallVan.Job, Measures.Metric).Fault, StringComparison.Ordinal);

    [Fact]
    public void On_a_part_also_says_that_it_rests_there()
    {
        Assert.Equal(new PartId("A20"), TypedSpot.RestsOn("on a20 15", SmallVan.Job));
        Assert.Null(TypedSpot.RestsOn("872", SmallVan.Job));
    }
}
