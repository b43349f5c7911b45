using Wainwright.Access;
using Wainwright.Bench.Vans;
using Wainwright.Geometry;

namespace Wainwright.Bench;

/// <summary>What one question of room costs: every part of a van asked with the same sets of gone things, in four fresh rooms.</summary>
static class Asking
{
    private const int Sets = 20;

    public static int Run(Family family, int parts, int seed)
    {
        var van = BoxVan.Make(family, parts, seed);
        for (var n = 0; n < 4; n++)
        {
            var (puzzle, random) = (new VanPuzzle(van).Puzzle, new Random(7));
            var sets = Enumerable.Range(0, Sets).Select(share => ItemSet.Of(puzzle.Count, Enumerable.Range(0, puzzle.Count).Where(_ => random.Next(Sets * 3 / 2) < share))).ToList();
            var (ways, spent) = Spent.On(() => sets.Sum(gone => Enumerable.Range(0, puzzle.Count).Count(i => puzzle.Ask(i, gone.Without(i), new(puzzle.Count)) is Free)));
            Console.WriteLine(FormattableString.Invariant($"{van.Name,-16} {Sets * puzzle.Count} questions, {ways} ways, {spent.CpuS * 1e6 / (Sets * puzzle.Count):0} us of cpu each"));
        }
        return 0;
    }
}
