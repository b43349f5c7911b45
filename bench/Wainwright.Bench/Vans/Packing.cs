using System.Runtime.InteropServices;
using Wainwright.Access;
using Wainwright.Geometry;

namespace Wainwright.Bench.Vans;

/// <summary>A room cut up by planes again and again, of which some leaves are kept: everything touches and nothing overlaps.</summary>
static class Packing
{
    private const int LengthMm = 4000, LatticeMm = 50, LeastMm = 2 * LatticeMm;

    /// <summary>Two parts are wanted out; a part costs 5 to 60 minutes.</summary>
    public static BoxVan Of(Family family, int parts, Random random)
    {
        var kept = family switch { Family.Dense => 70, Family.Middle => 55, _ => 40 };
        var leaves = Leaves(random, Math.Max(parts + 1, parts * 100 / kept));
        random.Shuffle(CollectionsMarshal.AsSpan(leaves));
        var boxes = leaves.Take(parts).Select(leaf => new BoxPart(Sort.Box, [leaf], random.Next(5, 61), [])).ToList();
        var van = new BoxVan("", LengthMm, (2200, 3400), boxes, [], []);
        var enclosed = Enclosed(van);
        return van with { Targets = enclosed.Count < 2 ? Two(parts, random) : [.. Two(enclosed.Count, random).Select(i => enclosed[i])] };
    }

    /// <summary>Parts that are not free at once: who asks for one that is asks for nothing.</summary>
    private static List<int> Enclosed(BoxVan van)
    {
        var puzzle = new VanPuzzle(van).Puzzle;
        var nothing = new ItemSet(puzzle.Count);
        return [.. Enumerable.Range(0, puzzle.Count).Where(i => puzzle.Ask(i, nothing, nothing) is Held)];
    }

    public static IReadOnlyList<int> Two(int parts, Random random)
    {
        var first = random.Next(parts);
        return [first, (first + 1 + random.Next(parts - 1)) % parts];
    }

    private static List<Box> Leaves(Random random, int count)
    {
        var leaves = new List<Box> { new(0, 0, 0, LengthMm, BoxVan.AcrossMm, BoxVan.AcrossMm) };
        while (leaves.Count < count)
        {
            // large ones are cut sooner, not always first
            var leaf = Enumerable.Range(0, 3).Select(_ => leaves[random.Next(leaves.Count)]).MaxBy(b => b.VolumeMm3);
            var axis = Enumerable.Range(0, 3).MaxBy(a => leaf.Length(a) * (50 + random.Next(100)));
            var steps = leaf.Length(axis) / LatticeMm;
            if (leaf.Length(axis) < 2 * LeastMm) continue;
            var at = leaf.Low(axis) + LatticeMm * random.Next(Math.Max(2, steps / 4), Math.Min(steps - 2, steps - steps / 4) + 1);
            leaves.Remove(leaf);
            leaves.Add(axis switch { 0 => leaf with { X1 = at }, 1 => leaf with { Y1 = at }, _ => leaf with { Z1 = at } });
            leaves.Add(axis switch { 0 => leaf with { X0 = at }, 1 => leaf with { Y0 = at }, _ => leaf with { Z0 = at } });
        }
        return leaves;
    }
}
