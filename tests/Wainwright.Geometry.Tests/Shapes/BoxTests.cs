using CsCheck;
using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Shapes;

public class BoxTests
{
    [Fact]
    public void Boxes_that_touch_do_not_overlap()
    {
        Assert.False(new Box(0, 0, 0, 10, 10, 10).Overlaps(new(10, 0, 0, 20, 10, 10)));
        Assert.True(new Box(0, 0, 0, 10, 10, 10).Overlaps(new(9, 9, 9, 20, 20, 20)));
    }

    [Fact]
    public void What_remains_round_a_hole_fills_the_box_without_the_hole() =>
        Gen.Select(Gen.Int[0, 8], Gen.Int[0, 8], Gen.Int[0, 8], Gen.Int[1, 9], Gen.Int[1, 9], Gen.Int[1, 9]).Sample(
            (x, y, z, w, d, h) =>
            {
                var whole = new Box(2, 2, 2, 9, 9, 9);
                var hole = new Box(x, y, z, x + w, y + d, z + h);
                var rest = whole.Without(hole).ToList();
                Assert.All(rest, b => Assert.False(b.Overlaps(hole)));
                Assert.All(rest, b => Assert.DoesNotContain(rest, o => o != b && o.Overlaps(b)));
                return rest.Sum(b => b.VolumeMm3) == whole.VolumeMm3 - whole.Common(hole).VolumeMm3;
            },
            iter: 500, seed: "0000KOIPe036");
}
