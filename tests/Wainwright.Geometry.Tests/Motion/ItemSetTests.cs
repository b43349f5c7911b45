using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Motion;

public class ItemSetTests
{
    [Fact]
    public void Numbers_beyond_one_word_are_kept_in_order()
    {
        var set = ItemSet.Of(200, 130, 2, 64);

        Assert.Equal([2, 64, 130], set);
        Assert.Equal(3, set.Count);
        Assert.Equal(set, ItemSet.Of(200, 64, 130, 2));
    }

    [Fact]
    public void Set_words_mean_what_they_say()
    {
        var (a, b) = (ItemSet.Of(100, 1, 70), ItemSet.Of(100, 1, 70, 71));

        Assert.True(a.IsWithin(b));
        Assert.False(b.IsWithin(a));
        Assert.Equal([71], b.Without(a));
        Assert.False(b.Without(a).Meets(a));
        Assert.Equal([1, 70], b.Without(71));
        Assert.Equal([1, 70], a);
    }
}
