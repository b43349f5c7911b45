namespace Wainwright.Geometry;

/// <summary>What a reached region lies against, as few things as a greedy choice finds.</summary>
internal static class Wall
{
    /// <remarks>
    /// Every blocked block on the rim needs one thing that blocks the whole of it and stays. What never moves costs nothing;
    /// a block with one removable blocker decides itself; the rest go to the thing that serves most of them, one that will
    /// stay if there is any.
    /// </remarks>
    public static ItemSet Of(IReadOnlyList<Pose> poses, IReadOnlyCollection<(int Pose, int Block)> rim, ItemSet gone, ItemSet stays)
    {
        var wall = new ItemSet(stays.Size);
        var open = new List<int[]>();
        var found = new List<int>();
        foreach (var (pose, block) in rim)
        {
            poses[pose].Space.Blockers(block, gone, found);
            if (found.Contains(Obstacle.Fixed)) continue;
            int[] blockers = [.. found];
            if (blockers.Length == 1) wall.Add(blockers[0]);
            else open.Add(Array.Exists(blockers, stays.Has) ? [.. blockers.Where(stays.Has)] : blockers);
        }
        open.RemoveAll(b => b.Any(wall.Has));
        while (open.Count > 0)
        {
            var best = open.SelectMany(b => b).GroupBy(i => i).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First().Key;
            wall.Add(best);
            open.RemoveAll(b => b.Contains(best));
        }
        return wall;
    }
}
