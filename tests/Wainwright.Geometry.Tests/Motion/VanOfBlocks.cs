using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Motion;

/// <summary>The invented van of the small instances: 4000 × 2000 × 2000 inside, rear door 1600 × 1800, side door 1200 × 1700.</summary>
internal static class VanOfBlocks
{
    public static readonly Shell Van = new(
        new(0, 0, 0, 4000, 2000, 2000),
        wallMm: 50,
        [
            new("rear door", Heading.PlusX, new(0, 200, 0, 0, 1800, 1800)),
            new("side door", Heading.PlusY, new(2200, 0, 0, 3400, 0, 1700)),
        ],
        []);

    public static readonly Box Bar = new(1000, 950, 0, 1300, 1050, 300);

    public static Mover Mover(Box moving, params Box[] others) =>
        new([moving], Obstacles(others), Van, Fit.Exact, Moves.Slides);

    public static IReadOnlyList<Obstacle> Obstacles(params Box[] others) => [.. others.Select((box, i) => new Obstacle(i, [box]))];
}
