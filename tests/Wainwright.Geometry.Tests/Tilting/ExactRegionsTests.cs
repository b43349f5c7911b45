using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Tilting;

public class ExactRegionsTests
{
    [Fact]
    public void What_is_reached_from_within_stays_where_it_is_when_it_is_asked_what_is_reached_from_outside()
    {
        var random = new Random(41);
        var shell = new Shell(new(0, 0, 0, 2000, 2000, 2000), 40, [new("door", Heading.PlusX, new(0, 100, 0, 0, 1900, 1900))], []);
        Box[] load = [new(0, 0, 0, 50, 100, 50), new(0, 0, 0, 100, 50, 50)];
        var obstacles = Enumerable.Range(0, 150).Select(i => (X: random.Next(150, 1900), Y: random.Next(1900), Z: random.Next(1900)))
            .Select((at, i) => new Obstacle(i, [new(at.X, at.Y, at.Z, at.X + 60, at.Y + 60, at.Z + 60)])).ToList();
        var (regions, gone) = (new ExactRegions(load, obstacles, shell, Fit.Exact), new ItemSet(obstacles.Count));
        var within = regions.FromWithin(gone);
        List<Cells> Places() => [.. within.Blocks.Select(b => within.Poses[b.Pose].Space.Where(b.Block))];
        var before = Places();

        var outside = regions.FromOutside(gone);

        Assert.NotEmpty(outside[0].Blocks);
        Assert.Equal(before, Places());
    }
}
