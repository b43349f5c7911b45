using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention.Statics;

/// <summary>Things that are held, made up for the tests. A wall at y = 0, the body at y above 0, z up.</summary>
static class Some
{
    public const double GravityMPerS2 = 9.80665;

    public static readonly Vector3D Forward = new(-1, 0, 0), Rearward = new(1, 0, 0), OffWall = new(0, 1, 0), IntoWall = new(0, -1, 0), Up = new(0, 0, 1), Down = new(0, 0, -1);

    public static FixingStrength Strength(double pullN, double shearN, Sharing sharing = Sharing.Straight) => new(pullN, shearN, sharing, 1000, 2000);

    public static HeldFixing Screw(double x, double z, FixingStrength strength, int body = 0) => new($"screw {x} {z}", new(x, 0, z), OffWall, strength, body);

    public static Contact Rest(double x, double z, int body = 0) => new($"rest {x} {z}", new(x, 0, z), OffWall, body);

    public static Held One(double massKg, Vector3D centreMm, HeldFixing[] fixings, Contact[] contacts) => new([new("it", massKg, centreMm)], fixings, contacts);

    /// <summary>A cupboard on a wall, its screws and its mass by chance: the same for the same number.</summary>
    public static Held Cupboard(int number, int screws, int bodies = 1)
    {
        var chance = new Random(number);
        double R(double a, double b) => a + (b - a) * chance.NextDouble();
        var strengths = Enumerable.Range(0, 3).Select(s => new FixingStrength(R(50, 2000), R(50, 2000), (Sharing)chance.Next(3), R(100, 3000), R(100, 3000))).ToArray();
        return new(
            [.. Enumerable.Range(0, bodies).Select(b => new HeldBody($"body {b}", R(2, 40), new(R(-250, 250), R(80, 300) + 300 * b, R(100, 600))))],
            [.. from b in Enumerable.Range(0, bodies)
                from s in Enumerable.Range(0, screws)
                select new HeldFixing($"screw {b}.{s}", new(R(-400, 400), 300 * b, R(0, 700)), new Vector3D(R(-0.3, 0.3), 1, R(-0.3, 0.3)), strengths[chance.Next(3)], b, b == 0 ? null : b - 1)],
            [.. from b in Enumerable.Range(0, bodies)
                from c in Enumerable.Range(0, 4)
                select new Contact($"corner {b}.{c}", new(c % 2 * 900 - 450, 300 * b, c / 2 * 720), OffWall, b, b == 0 ? null : b - 1)]);
    }

    /// <summary>Anything: places on a grid or anywhere, strengths of 0 and from grams to tonnes, bodies without mass, axes at will.</summary>
    public static Held Odd(int number)
    {
        var chance = new Random(number);
        double R(double a, double b) => a + (b - a) * chance.NextDouble();
        var (bodies, scale) = (1 + chance.Next(3), Math.Pow(10, R(-3, 3)));
        double Maybe(int outOf, double value) => chance.Next(outOf) == 0 ? 0 : value;
        Vector3D Way(double size) => chance.Next(2) == 0 ? size * new Vector3D(chance.Next(-2, 3), chance.Next(-2, 3), chance.Next(-2, 3)) : 2 * size * new Vector3D(R(-1, 1), R(-1, 1), R(-1, 1));
        Vector3D Axis() => Way(1) is { Length: > 0.1 } way ? way : Up;
        int? To(int body) => body == 0 || chance.Next(3) == 0 ? null : chance.Next(body);
        return new(
            [.. Enumerable.Range(0, bodies).Select(b => new HeldBody($"body {b}", Maybe(6, Math.Pow(10, R(-2, 2.5))), Way(100)))],
            [.. Enumerable.Range(0, chance.Next(9)).Select(i => (i, Body: chance.Next(bodies))).Select(f => new HeldFixing($"fixing {f.i}", Way(100), Axis(),
                new(Maybe(4, scale * R(1, 2000)), Maybe(4, scale * R(1, 2000)), (Sharing)chance.Next(3), Maybe(5, R(10, 5000)), Maybe(5, R(10, 5000))), f.Body, To(f.Body)))],
            [.. Enumerable.Range(0, chance.Next(9)).Select(i => (i, Body: chance.Next(bodies))).Select(c => new Contact($"contact {c.i}", Way(100), Axis(), c.Body, To(c.Body)))]);
    }
}
