namespace Wainwright.Access;

/// <summary>Works laid out in time, each as early as what is laid out before it allows.</summary>
internal sealed class Timetable(CrewWorks works, CrewOptions crew)
{
    private readonly Dictionary<int, long> starts = [];

    public long Start(int work) => starts[work];

    public long End(int work) => starts[work] + works.All[work].Tenths;

    public long Length => starts.Count == 0 ? 0 : starts.Keys.Max(End);

    /// <summary>All works, in this order where they can be; a work that cannot begin yet waits for those after it.</summary>
    public static Timetable Of(CrewWorks works, CrewOptions crew, IEnumerable<int> order)
    {
        var (table, left) = (new Timetable(works, crew), order.ToList());
        while (left.Count > 0)
        {
            var at = left.FindIndex(w => works.Missing(w, table.starts.Keys) is null);
            if (at < 0) throw new InvalidOperationException("The steps of a plan wait for one another.");
            table.Place(left[at]);
            left.RemoveAt(at);
        }
        return table;
    }

    /// <summary>What is done at a moment, one work left aside.</summary>
    public HashSet<int> DoneBy(long moment, int? without = null) => [.. starts.Keys.Where(w => w != without && End(w) <= moment)];

    private void Place(int work)
    {
        var moments = starts.Keys.Select(End).Append(0).Distinct().Order().ToList();
        // once it can begin it always can: the first moment is found by halving
        var (early, late) = (0, moments.Count - 1);
        while (early < late)
        {
            var middle = (early + late) / 2;
            if (works.Missing(work, DoneBy(moments[middle])) is null) late = middle;
            else early = middle + 1;
        }
        starts[work] = moments.Skip(early).First(m => Fits(work, m));
    }

    private bool Fits(int work, long from)
    {
        var it = works.All[work];
        if (it.Tenths == 0) return true;
        var during = starts.Keys.Where(w => works.All[w].Tenths > 0 && starts[w] < from + it.Tenths && End(w) > from).ToList();
        if (during.Exists(w => works.All[w].SharesRoom(it))) return false;
        // what overlaps is at its most where something begins
        return during.Select(w => Math.Max(from, starts[w])).Append(from).All(m =>
        {
            var now = during.FindAll(w => starts[w] <= m && End(w) > m);
            return now.Sum(w => works.All[w].People) + it.People <= crew.People
                && (it.Tool is null || now.Count(w => works.All[w].Tool == it.Tool) < crew.ToolsOfAKind);
        });
    }
}
