using Wainwright.Geometry;
using Wainwright.Geometry.Tests.Tilting;

namespace Wainwright.Geometry.Tests.Shapes;

public class ConvexTests
{
    [Fact]
    public void Straight_boxes_are_as_far_apart_as_their_nearest_corners_edges_or_faces()
    {
        var random = new Random(711);
        for (var n = 0; n < 2000; n++)
        {
            var (a, b) = (RandomBox(random), RandomBox(random));
            double Gap(int axis) => Math.Max(0, Math.Max(a.Low(axis) - b.High(axis), b.Low(axis) - a.High(axis)));
            var distance = Math.Sqrt(Gap(0) * Gap(0) + Gap(1) * Gap(1) + Gap(2) * Gap(2));

            Assert.Equal(distance, Convex.Of(a).DistanceMm(Convex.Of(b)), 1e-6);
        }
    }

    [Fact]
    public void Turned_and_tilted_boxes_touch_exactly_when_no_axis_parts_them()
    {
        var random = new Random(712);
        var (apart, together) = (0, 0);
        for (var n = 0; n < 3000; n++)
        {
            var ((a, turnA), (b, turnB)) = ((RandomBox(random), RandomTurn(random)), (RandomBox(random), RandomTurn(random)));
            var (one, two) = (Body(a, turnA), Body(b, turnB));
            var depth = Separating.GapMm(Separating.Of(a, turnA), Separating.Of(b, turnB));
            if (Math.Abs(depth) < 0.01) continue; // too near to call for either

            Assert.Equal(depth < 0, one.Touches(two));
            if (depth > 0) apart++;
            else together++;
            Assert.True(one.DistanceMm(two) >= depth - 1e-6); // a plane that parts them is no farther away than they are
        }
        Assert.True(apart > 400 && together > 400, $"{apart} apart, {together} together");
    }

    [Fact]
    public void The_distance_is_never_greater_than_that_of_any_two_of_their_points()
    {
        var random = new Random(713);
        for (var n = 0; n < 100; n++)
        {
            var (a, b) = (RandomShape(random), RandomShape(random));
            var distance = a.DistanceMm(b);
            for (var i = 0; i < 12; i++)
            {
                var (p, q) = (PointOf(a, random), PointOf(b, random));
                Assert.True(distance <= Length(p - q) + 1e-6);
            }
        }
    }

    [Theory]
    [InlineData(60, 0, 0, 60 - 50 - 1)] // beside the round side
    [InlineData(30, 40, 0, 0)] // 50 from the axis, the cube reaches a millimetre nearer
    [InlineData(0, 0, 120, 120 - 100 - 1)] // above the end
    [InlineData(300, 400, 0, 450 - 1.4)] // a round side has no corners: 500 − 50, less the cube's own corner towards it
    public void A_cylinder_is_round(double x, double y, double z, double distance)
    {
        var round = Convex.Cylinder(2, (0, 0), 50, -100, 100);
        var cube = Convex.Box(new(x - 1, y - 1, z - 1), new(x + 1, y + 1, z + 1));

        Assert.Equal(distance, round.DistanceMm(cube), 0.01 + (x == 300 ? 0.05 : 0));
    }

    [Fact]
    public void Contact_touches_and_a_thousandth_of_a_millimetre_does_not()
    {
        Assert.True(Convex.Of(new(0, 0, 0, 10, 10, 10)).Touches(Convex.Of(new(10, 0, 0, 20, 10, 10))));
        Assert.False(Convex.Box(new(0, 0, 0), new(9.999, 10, 10)).Touches(Convex.Of(new(10, 0, 0, 20, 10, 10))));
    }

    [Fact]
    public void A_body_at_a_posture_lies_where_the_turn_about_its_middle_and_the_shift_bring_it()
    {
        var bar = Convex.Of(new(0, 0, 0, 100, 20, 20)).At(new(50, 10, 10), new(new(0, 0, 500), Attitude.About(1, 90)));

        // upright now: 40 above and below the middle more than before
        Assert.Equal(100, bar.DistanceMm(Convex.Of(new(40, 0, 660, 60, 20, 700))), 1e-6);
        Assert.True(bar.Touches(Convex.Of(new(40, 0, 560, 60, 20, 600))));
        Assert.Equal(30, bar.DistanceMm(Convex.Of(new(90, 0, 500, 100, 20, 520))), 1e-6);
    }

    [Theory]
    [InlineData(0, 0, 400, 0, 400, 200, 0, 200, 100)] // a rectangle: half its short side
    [InlineData(0, 0, 300, 0, 300, 400, 0, 0, 100)] // a right-angled triangle 300, 400, 500: (300 + 400 − 500) / 2
    public void The_largest_circle_of_an_outline_is_the_known_one(double u0, double v0, double u1, double v1, double u2, double v2, double u3, double v3, double radius)
    {
        var bar = Convex.Drawn(2, u3 == 0 && v3 == 0 ? [(u0, v0), (u1, v1), (u2, v2)] : [(u0, v0), (u1, v1), (u2, v2), (u3, v3)], 0, 1000);

        Assert.Equal(radius, bar.BallMm, 0.01);
    }

    private static double Length(Point p) => Math.Sqrt(p.XMm * p.XMm + p.YMm * p.YMm + p.ZMm * p.ZMm);

    private static Box RandomBox(Random random)
    {
        var (x, y, z) = (random.Next(0, 500), random.Next(0, 500), random.Next(0, 500));
        return new(x, y, z, x + random.Next(5, 300), y + random.Next(5, 300), z + random.Next(5, 300));
    }

    private static Turn RandomTurn(Random random) => new(random.Next(-180, 181), random.Next(-180, 181));

    private static Convex Body(Box box, Turn turn) => Convex.Box(new(box.X0, box.Y0, box.Z0), new(box.X1, box.Y1, box.Z1), turn);

    private static Convex RandomShape(Random random)
    {
        var box = RandomBox(random);
        return random.Next(3) switch
        {
            0 => Body(box, RandomTurn(random)),
            1 => Convex.Cylinder(random.Next(3), (box.X0, box.Y0), random.Next(10, 150), box.Z0, box.Z1, RandomTurn(random)),
            _ => Convex.Drawn(random.Next(3), [(box.X0, box.Y0), (box.X1, box.Y0), (box.X0, box.Y1)], box.Z0, box.Z1, RandomTurn(random)),
        };
    }

    /// <summary>A point within, between the middle and the surface: shown to be within by touching it.</summary>
    private static Point PointOf(Convex body, Random random)
    {
        for (var share = 1.0; ; share *= 0.8)
        {
            var p = body.MiddleMm + new Point(Signed(random) * share * body.RadiusMm, Signed(random) * share * body.RadiusMm, Signed(random) * share * body.RadiusMm);
            if (body.Touches(Convex.Box(p - new Point(1e-9, 1e-9, 1e-9), p + new Point(1e-9, 1e-9, 1e-9)))) return p;
        }
    }

    private static double Signed(Random random) => 2 * random.NextDouble() - 1;
}
