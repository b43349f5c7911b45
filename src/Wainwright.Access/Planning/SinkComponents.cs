using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Groups of stuck items that wait only for one another and for items outside the choice.</summary>
internal static class SinkComponents
{
    /// <summary>The groups on which the given items wait in the end.</summary>
    /// <param name="from">Stuck items to start from.</param>
    /// <param name="stuck">All stuck items of the choice.</param>
    /// <param name="wall">What holds a stuck item.</param>
    public static IReadOnlyList<IReadOnlyList<int>> Of(IEnumerable<int> from, ItemSet stuck, Func<int, ItemSet> wall)
    {
        var sinks = new List<IReadOnlyList<int>>();
        var (number, low) = (new Dictionary<int, int>(), new Dictionary<int, int>());
        var (path, onPath) = (new Stack<int>(), new HashSet<int>());

        // whether something in the group of u waits for a group that was finished before
        bool Visit(int u)
        {
            number[u] = low[u] = number.Count;
            path.Push(u);
            onPath.Add(u);
            var leads = false;
            foreach (var v in wall(u).Where(stuck.Has))
            {
                if (!number.TryGetValue(v, out var found))
                {
                    leads |= Visit(v);
                    found = low[v];
                }
                if (onPath.Contains(v)) low[u] = Math.Min(low[u], found);
                else leads = true;
            }
            if (low[u] != number[u]) return leads;
            var group = new List<int>();
            int w;
            do
            {
                onPath.Remove(w = path.Pop());
                group.Add(w);
            }
            while (w != u);
            if (!leads) sinks.Add(group);
            return true;
        }

        foreach (var item in from)
            if (!number.ContainsKey(item)) Visit(item);
        return sinks;
    }
}
