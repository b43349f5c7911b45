using Wainwright.Geometry;
using static Wainwright.Geometry.Tests.Motion.VanOfBlocks;

namespace Wainwright.Geometry.Tests.Motion;

public class ProbeTests
{
    private static readonly Box Pump = new(100, 100, 0, 300, 300, 200);

    // a box round the pump with a hole of 100 × 100 in its rear side
    private static readonly Box[] Boxed =
    [
        new(0, 0, 300, 500, 500, 320), new(0, 0, 0, 500, 20, 300), new(0, 480, 0, 500, 500, 300), new(0, 20, 0, 20, 480, 300),
        new(480, 20, 0, 500, 200, 300), new(480, 300, 0, 500, 480, 300), new(480, 200, 100, 500, 300, 300),
    ];

    [Theory]
    [InlineData(100, true)]
    [InlineData(101, false)]
    public void A_hand_gets_through_a_hole_of_its_own_size_and_no_smaller(int handMm, bool reaches)
    {
        var hand = new Probe([new(0, 0, 0, 80, handMm, 100)], [new(0, Boxed), new(Obstacle.Fixed, [Pump])], Van);

        Assert.Equal(reaches, hand.Touch(new(1), new(1), [Pump]) is WayOut);
        Assert.IsType<WayOut>(hand.Touch(ItemSet.Of(1, 0), new(1), [Pump]));
    }

    [Fact]
    public void A_wall_round_the_target_names_what_closes_it()
    {
        var hand = new Probe([new(0, 0, 0, 80, 101, 100)], [new(0, Boxed), new(Obstacle.Fixed, [Pump])], Van);

        Assert.Equal([0], Assert.IsType<Stuck>(hand.Touch(new(1), new(1), [Pump])).Wall);
    }

    [Fact]
    public void A_screwdriver_needs_its_own_length_in_front_of_the_head()
    {
        Box[] wall = [new(0, 300, 0, 4000, 310, 2000)];
        var driver = new Probe([new(-20, -200, -20, 20, 0, 20)], [new(0, wall)], Van);

        Assert.IsType<Stuck>(driver.Reach(new(1), new(1), new(500, 400, 500)));
        Assert.IsType<WayOut>(driver.Reach(ItemSet.Of(1, 0), new(1), new(500, 400, 500)));
        Assert.IsType<WayOut>(driver.Reach(new(1), new(1), new(500, 510, 500)));
    }
}
