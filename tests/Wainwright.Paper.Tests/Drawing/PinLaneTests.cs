using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

public sealed class PinLaneTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(70)]
    public void No_two_labels_overlap_and_all_stay_on_the_paper(int count)
    {
        var random = new Random(count);
        var pins = Enumerable.Range(1, count).Select(i => (new Pin($"P{i:00}", default, PinKind.Point, ""), random.NextDouble() * random.NextDouble() * 170, 0.0)).ToList();
        var set = PinLane.Set(pins, 0, 178);

        Assert.Equal(count, set.Count);
        foreach (var row in set.GroupBy(p => p.Row))
        {
            var along = row.OrderBy(p => p.LabelX).ToList();
            foreach (var (a, b) in along.Zip(along.Skip(1)))
                Assert.True(b.LabelX - a.LabelX >= (PinLane.WidthMm(a.Pin) + PinLane.WidthMm(b.Pin)) / 2 - 1e-9);
        }
        Assert.All(set, p => Assert.InRange(p.LabelX, 0, 178));
    }

    [Fact]
    public void A_label_with_room_stands_straight_over_its_place()
    {
        var set = PinLane.Set([(new Pin("1", default, PinKind.Finding, ""), 40, 0), (new Pin("2", default, PinKind.Finding, ""), 90, 0)], 0, 178);
        Assert.All(set, p => Assert.Equal(p.AtX, p.LabelX, 1e-9));
    }

    [Fact]
    public void Labels_keep_the_order_of_their_places()
    {
        var set = PinLane.Set([(new Pin("b", default, PinKind.Finding, ""), 50.2, 0), (new Pin("a", default, PinKind.Finding, ""), 50.1, 0), (new Pin("c", default, PinKind.Finding, ""), 50.3, 0)], 0, 178);
        Assert.Equal(["a", "b", "c"], set.OrderBy(p => p.LabelX).Select(p => p.Pin.Label));
    }
}
