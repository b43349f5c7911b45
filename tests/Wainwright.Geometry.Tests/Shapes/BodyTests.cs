using CsCheck;
using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Shapes;

public class BodyTests
{
    [Fact]
    public void A_box_of_whole_millimetres_lying_straight_is_itself()
    {
        var body = Body.BoxBetween(new(10, 20, 30), new(110, 220, 330), default);

        Assert.True(body.IsExact);
        Assert.Equal([new Box(10, 20, 30, 110, 220, 330)], body.Outer);
    }

    [Fact]
    public void Half_millimetres_are_rounded_outwards_and_inwards()
    {
        var body = Body.BoxBetween(new(0.5, 0, 0), new(10.5, 10, 10), default);

        Assert.Equal([new Box(0, 0, 0, 11, 10, 10)], body.Outer);
        Assert.Equal([new Box(1, 0, 0, 10, 10, 10)], body.Inner);
    }

    [Fact]
    public void A_quarter_turn_of_a_box_is_the_box_the_other_way_round()
    {
        var body = Body.BoxBetween(new(0, 0, 0), new(200, 100, 50), new(90, 0));

        Assert.Equal(new Box(50, -50, 0, 150, 150, 50), body.Bounds);
    }

    [Fact]
    public void Every_point_of_a_turned_box_lies_in_an_outer_box_and_every_inner_box_in_the_turned_box() =>
        Gen.Select(Gen.Int[50, 900], Gen.Int[5, 600], Gen.Int[5, 600], Gen.Int[-180, 180], Gen.Int[-90, 90]).Sample(
            (length, width, height, yaw, tilt) =>
            {
                var turn = new Turn(yaw, tilt);
                var middle = new Point(length / 2.0, width / 2.0, height / 2.0);
                var body = Body.BoxBetween(new(0, 0, 0), new(length, width, height), turn);
                bool Inside(Point p, double slack)
                {
                    var own = Unturned(p - middle, turn);
                    return Math.Abs(own.XMm) <= middle.XMm + slack && Math.Abs(own.YMm) <= middle.YMm + slack && Math.Abs(own.ZMm) <= middle.ZMm + slack;
                }
                var random = new Random(length * 7 + yaw);
                for (var i = 0; i < 50; i++)
                {
                    var p = new Point(random.Next(-800, 1600), random.Next(-800, 1600), random.Next(-800, 1600));
                    if (Inside(p, 0)) Assert.Contains(body.Outer, b => Contains(b, p));
                }
                return body.Inner.All(b => Corners(b).All(c => Inside(c, 1e-3)));
            },
            iter: 60, seed: "0000KOIPe036");

    [Fact]
    public void A_cylinder_is_held_between_its_two_covers_and_no_wider_than_its_diameter()
    {
        var body = Body.Cylinder(2, (0, 0), 75, 0, 400, default);

        Assert.Equal(new Box(-75, -75, 0, 75, 75, 400), body.Bounds);
        var round = Math.PI * 75 * 75 * 400;
        Assert.InRange(body.Outer.Sum(b => b.VolumeMm3), round, 1.35 * round);
        Assert.InRange(body.Inner.Sum(b => b.VolumeMm3), 0.6 * round, round);
    }

    [Fact]
    public void A_prism_lying_straight_loses_nothing_on_its_straight_sides()
    {
        var body = Body.Prism(1, [(0, 0), (400, 0), (400, 200), (0, 400)], 0, 100, default);

        Assert.Equal(new Box(0, 0, 0, 400, 100, 400), body.Bounds);
        Assert.Contains(body.Inner, b => b.Z0 == 0 && b.Y0 == 0 && b.Y1 == 100);
    }

    private static Point Unturned(Point p, Turn turn)
    {
        var (sinYaw, cosYaw) = Math.SinCos(-turn.YawDeg * Math.PI / 180);
        var (sinTilt, cosTilt) = Math.SinCos(-turn.TiltDeg * Math.PI / 180);
        var (x, y) = (p.XMm * cosYaw - p.YMm * sinYaw, p.XMm * sinYaw + p.YMm * cosYaw);
        return new(x, y * cosTilt - p.ZMm * sinTilt, y * sinTilt + p.ZMm * cosTilt);
    }

    private static bool Contains(Box b, Point p) =>
        b.X0 <= p.XMm && p.XMm <= b.X1 && b.Y0 <= p.YMm && p.YMm <= b.Y1 && b.Z0 <= p.ZMm && p.ZMm <= b.Z1;

    private static IEnumerable<Point> Corners(Box b) =>
        from x in new[] { b.X0, b.X1 } from y in new[] { b.Y0, b.Y1 } from z in new[] { b.Z0, b.Z1 } select new Point(x, y, z);
}
