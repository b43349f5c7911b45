using Wainwright.Methods.Retention;

namespace Wainwright.Bench.Hold;

/// <summary>Cupboards on a wall, made up: the same for the same number.</summary>
static class MadeUpHeld
{
    public static Held Cupboard(int number, int fixings)
    {
        var chance = new Random(number);
        double R(double a, double b) => a + (b - a) * chance.NextDouble();
        FixingStrength[] kinds = [.. Enumerable.Range(0, 3).Select(k => new FixingStrength(R(100, 1500), R(200, 1500), (Sharing)k, R(200, 2000), R(500, 3000)))];
        return new(
            [new("cupboard", R(5, 40), new(R(-200, 200), R(80, 250), R(150, 500)))],
            [.. Enumerable.Range(0, fixings).Select(i => new HeldFixing($"screw {i}", new(R(-400, 400), 0, R(0, 700)), new Vector3D(R(-0.2, 0.2), 1, R(-0.2, 0.2)), kinds[chance.Next(3)], 0))],
            [.. Enumerable.Range(0, 4).Select(i => new Contact($"corner {i}", new(i % 2 * 900 - 450, 0, i / 2 * 720), new(0, 1, 0), 0))]);
    }

    /// <summary>Two to fourteen fixings, eight in the mean.</summary>
    public static Held OfVan(int number) => Cupboard(number, 2 + new Random(number).Next(13));

    public static IReadOnlyList<DoubtfulFixing> Doubtful(Held held) =>
    [
        .. held.Fixings.Select((f, i) => new DoubtfulFixing(
            new(0.4 * f.Strength.PullN, f.Strength.PullN, 1.6 * f.Strength.PullN), new(0.5 * f.Strength.ShearN, f.Strength.ShearN, 1.5 * f.Strength.ShearN), $"kind {i % 2}")),
    ];
}
