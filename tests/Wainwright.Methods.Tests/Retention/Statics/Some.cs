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
}
