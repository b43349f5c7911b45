using Wainwright.Fitout;
using Wainwright.Web.Entry;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Entry;

public sealed class TypedSizeTests
{
    [Theory]
    [InlineData("800x560x428", 800, 560, 428)]
    [InlineData("800 X 560 × 428 mm", 800, 560, 428)]
    [InlineData("80 x 56 x 42.8 cm", 800, 560, 428)]
    [InlineData("0,8 m x 56 cm x 428", 800, 560, 428)]
    public void Three_measures_in_any_metric_hand_are_one_size(string text, double l, double w, double h) =>
        Assert.Equal((new Place(l, w, h), null), TypedSize.Of(text, Measures.Metric));

    [Fact]
    public void Bare_numbers_are_inches_for_those_who_read_inches()
    {
        var (size, fault) = TypedSize.Of("31 1/2 x 22 x 16 7/8", Measures.Us);
        Assert.Null(fault);
        Assert.Equal(31.5 * 25.4, size!.Value.XMm, 9);
        Assert.Equal(22 * 25.4, size.Value.YMm, 9);
        Assert.Equal(16.875 * 25.4, size.Value.ZMm, 9);
    }

    [Theory]
    [InlineData("800 x 560", "three measures")]
    [InlineData("800 x wide x 428", "“wide” is not a measure")]
    [InlineData("800 x 0 x 428", "above 0")]
    [InlineData("800 x -5 x 428", "above 0")]
    public void What_is_no_size_is_refused_with_the_reason(string text, string reason)
    {
        var (size, fault) = TypedSize.Of(text, Measures.Metric);
        Assert.Null(size);
        Assert.Contains(reason, fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_typed_is_no_size_and_no_fault() => Assert.Equal((null, null), TypedSize.Of(" ", Measures.Metric));
}
