using Wainwright.Access;
using Wainwright.Geometry;

namespace Wainwright.Bench.Vans;

/// <summary>A made-up van as the planner's puzzle: its parts, then its joints, with the room asked of boxes alone.</summary>
/// <remarks>Each has its own room and its own count: who plans second finds nothing divided that the first has asked about.</remarks>
sealed class VanPuzzle
{
    // a tool of 80 mm and a closed hand behind it; the size of the hand as docs/access.md gives it
    private static readonly Box Tool = new(-8, -8, 0, 8, 8, 80), Hand = new(-50, -50, 80, 50, 50, 190);

    private readonly BoxVan van;
    private readonly Mover?[] movers;
    private readonly Dictionary<Heading, Probe> probes = [];
    private readonly IReadOnlyList<Obstacle> obstacles;
    private readonly Shell shell;

    public VanPuzzle(BoxVan van)
    {
        this.van = van;
        shell = van.Shell;
        movers = new Mover?[van.Parts.Count];
        obstacles = [.. van.Parts.Select((p, i) => new Obstacle(i, p.Boxes))];
        var count = van.Parts.Count + van.Joints.Count;
        var needs = Enumerable.Range(0, count).Select(_ => new ItemSet(count)).ToArray();
        for (var i = 0; i < van.Parts.Count; i++)
            foreach (var below in van.Parts[i].StandsOn) needs[below].Add(i);
        for (var i = 0; i < van.Joints.Count; i++)
        {
            needs[van.Joints[i].Part].Add(van.Parts.Count + i);
            if (van.Joints[i].To is { } to) needs[to].Add(van.Parts.Count + i);
        }
        Puzzle = new([.. van.Parts.Select(p => (long)p.Minutes), .. van.Joints.Select(j => (long)j.Minutes)], needs, Ask);
    }

    public Puzzle Puzzle { get; }

    /// <summary>How often the room was asked.</summary>
    public int Tests { get; private set; }

    private Reply Ask(int item, ItemSet done, ItemSet stays)
    {
        Tests++;
        if (item < movers.Length) return Of((movers[item] ??= MoverOf(item)).Ask(done, stays));
        var joint = van.Joints[item - movers.Length];
        var way = new ItemSet(done.Size);
        foreach (var point in joint.Points)
            switch (ProbeFrom(joint.From).Reach(done, stays, point))
            {
                case WayOut there:
                    way.AddAll(there.Through);
                    break;
                case var stuck:
                    return Of(stuck);
            }
        return new Free(way);
    }

    private static Reply Of(Answer answer) => answer switch
    {
        WayOut way => new Free(way.Through),
        Stuck stuck => new Held(stuck.Wall),
        _ => throw new InvalidOperationException("An answer is a way or a wall."),
    };

    private Mover MoverOf(int part) => new(van.Parts[part].Boxes, [.. obstacles.Where(o => o.Item != part)], shell, Fit.Exact, Moves.Slides);

    private Probe ProbeFrom(Heading from)
    {
        if (!probes.TryGetValue(from, out var probe)) probes[from] = probe = new([Turned(Tool, from), Turned(Hand, from)], obstacles, shell);
        return probe;
    }

    private static Box Turned(Box b, Heading from) => from switch
    {
        Heading.PlusX => new(b.Z0, b.X0, b.Y0, b.Z1, b.X1, b.Y1),
        Heading.MinusX => new(-b.Z1, b.X0, b.Y0, -b.Z0, b.X1, b.Y1),
        Heading.PlusY => new(b.X0, b.Z0, b.Y0, b.X1, b.Z1, b.Y1),
        Heading.MinusY => new(b.X0, -b.Z1, b.Y0, b.X1, -b.Z0, b.Y1),
        Heading.PlusZ => b,
        _ => new(b.X0, b.Y0, -b.Z1, b.X1, b.Y1, -b.Z0),
    };
}
