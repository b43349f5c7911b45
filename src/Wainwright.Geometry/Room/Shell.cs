namespace Wainwright.Geometry;

/// <summary>A closed room with gaps in its walls, as blocks that nothing passes.</summary>
/// <remarks>A thing is out of it when no part of it is left within the outer bounds; flush with the outside is out.</remarks>
public sealed class Shell
{
    private const int GarageWallMm = 10;
    private const int GarageBeyondMm = 5000; // a wall behind the van goes on to either side; common practice, no source

    /// <param name="room">The space within the walls.</param>
    /// <param name="wallMm">How thick walls, floor and roof are taken; above 0.</param>
    /// <param name="gaps">Where one can pass.</param>
    /// <param name="builtIn">Other blocks that never move: wheel arches, leaning walls.</param>
    /// <exception cref="ArgumentOutOfRangeException">The walls have no thickness.</exception>
    public Shell(Box room, int wallMm, IReadOnlyList<Gap> gaps, IReadOnlyList<Box> builtIn)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(wallMm, 1);
        Room = room;
        Outside = room.Grown(wallMm);
        Gaps = gaps;
        Blocks = [.. Enum.GetValues<Heading>().SelectMany(Wall), .. builtIn, .. gaps.SelectMany(Garage)];
    }

    private Shell(Box room, Box outside, IReadOnlyList<Gap> gaps, IReadOnlyList<Box> blocks) => (Room, Outside, Gaps, Blocks) = (room, outside, gaps, blocks);

    /// <summary>The same shell in a finer measure.</summary>
    internal Shell Times(int by) => new(
        Room.Times(by), Outside.Times(by), [.. Gaps.Select(g => g with { Where = g.Where.Times(by), LandingMm = g.LandingMm * by })], [.. Blocks.Select(b => b.Times(by))]);

    /// <summary>The space within the walls.</summary>
    public Box Room { get; }

    /// <summary>The outer bounds.</summary>
    public Box Outside { get; }

    /// <summary>Where one can pass.</summary>
    public IReadOnlyList<Gap> Gaps { get; }

    /// <summary>All that never moves.</summary>
    public IReadOnlyList<Box> Blocks { get; }

    /// <summary>The whole of one wall.</summary>
    internal Box Slab(Heading heading) => Beyond(heading, 0, Outside.X1 - Room.X1);

    private IEnumerable<Box> Wall(Heading heading)
    {
        var slab = Slab(heading);
        IEnumerable<Box> left = [slab];
        foreach (var gap in Gaps.Where(g => g.Wall == heading))
            left = [.. left.SelectMany(block => block.Without(gap.In(slab)))];
        return left;
    }

    /// <summary>What stands where the clear ground ends.</summary>
    private IEnumerable<Box> Garage(Gap gap) =>
        gap.LandingMm is { } clear ? [Wider(Beyond(gap.Wall, clear + Outside.X1 - Room.X1, GarageWallMm), gap.Wall.Axis())] : [];

    private static Box Wider(Box wall, int square) =>
        Enumerable.Range(0, 3).Where(axis => axis != square).Aggregate(wall, (box, axis) => axis switch
        {
            0 => box with { X0 = box.X0 - GarageBeyondMm, X1 = box.X1 + GarageBeyondMm },
            1 => box with { Y0 = box.Y0 - GarageBeyondMm, Y1 = box.Y1 + GarageBeyondMm },
            _ => box with { Z0 = box.Z0 - GarageBeyondMm, Z1 = box.Z1 + GarageBeyondMm },
        });

    /// <summary>A slab over the whole wall, beginning so far from the room.</summary>
    private Box Beyond(Heading heading, int fromMm, int thickMm) => heading switch
    {
        Heading.MinusX => Outside with { X0 = Room.X0 - fromMm - thickMm, X1 = Room.X0 - fromMm },
        Heading.PlusX => Outside with { X0 = Room.X1 + fromMm, X1 = Room.X1 + fromMm + thickMm },
        Heading.MinusY => Outside with { Y0 = Room.Y0 - fromMm - thickMm, Y1 = Room.Y0 - fromMm },
        Heading.PlusY => Outside with { Y0 = Room.Y1 + fromMm, Y1 = Room.Y1 + fromMm + thickMm },
        Heading.MinusZ => Outside with { Z0 = Room.Z0 - fromMm - thickMm, Z1 = Room.Z0 - fromMm },
        _ => Outside with { Z0 = Room.Z1 + fromMm, Z1 = Room.Z1 + fromMm + thickMm },
    };
}
