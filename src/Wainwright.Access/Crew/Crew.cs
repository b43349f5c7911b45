using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Lays a plan out for several people, as short by the clock as can be.</summary>
/// <remarks>
/// A step waits for one complete way, not for all that stands round it; a load goes the way the plan shows. What waits for what is told to the solver only where
/// a schedule goes against it: each such sentence is proved, so what the solver cannot beat no schedule can.
/// </remarks>
public static class Crew
{
    private const double LeastEffort = 0.01; // so that rounds end however little each takes

    /// <summary>The schedule of a plan's steps until what is wanted is out or reached.</summary>
    /// <param name="job">The job the plan is of.</param>
    /// <param name="plan">The plan; its steps are kept, only their order and their people are chosen.</param>
    /// <param name="crew">Who works; absent for two people with one tool of a kind.</param>
    /// <param name="options">What the planner was told when it made the plan.</param>
    /// <exception cref="ArgumentException">The plan is not of this job and these options.</exception>
    public static CrewSchedule Of(Job job, RemovalPlan plan, CrewOptions? crew = null, AccessOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(plan);
        crew ??= new();
        options ??= new();
        if (crew.People is < 1 or > CrewOptions.MostPeople) throw new ArgumentOutOfRangeException(nameof(crew), crew.People, "1 to 4 people");
        if (crew.ToolsOfAKind < 1) throw new ArgumentOutOfRangeException(nameof(crew), crew.ToolsOfAKind, "at least one tool of a kind");

        var tooFew = plan.Steps.Where(s => s.People > crew.People).ToList();
        if (tooFew.Count > 0 || plan.Steps.Count == 0) return Nothing(plan, crew, tooFew);
        var works = new CrewWorks(job, plan, options, crew);
        var (best, bound) = Shortest(works, crew, options.Stop);
        return new CrewWriter(job, works, best, crew).Write(plan, bound);
    }

    private static CrewSchedule Nothing(RemovalPlan plan, CrewOptions crew, IReadOnlyList<RemovalStep> tooFew) => new()
    {
        People = crew.People,
        Minutes = 0,
        LowerBoundMinutes = 0,
        LabourMinutes = plan.OutMinutes,
        Tasks = [],
        Critical = [],
        TooFew = tooFew,
        Assumes = CrewWriter.Assumptions(crew),
    };

    private static (Timetable Best, long LowerBound) Shortest(CrewWorks works, CrewOptions crew, CancellationToken stop)
    {
        var all = works.All;
        var best = Timetable.Of(works, crew, Enumerable.Range(0, all.Count));
        var model = new CrewModel(all, crew);
        for (var work = 0; work < all.Count; work++)
            foreach (var oneOf in works.Before(work)) model.After(work, oneOf);

        var (bound, left) = (0L, crew.Effort);
        while (left > 0 && bound < best.Length && !stop.IsCancellationRequested)
        {
            if (model.Solve(best, left, stop) is not var (starts, lower, took)) break;
            left -= Math.Max(took, LeastEffort);
            bound = Math.Max(bound, lower);
            var table = Timetable.Of(works, crew, Enumerable.Range(0, all.Count).OrderBy(w => starts[w]).ThenBy(w => all[w].Tenths));
            if (table.Length < best.Length) best = table;
            var refuted = Refuted(works, starts);
            if (refuted.Count == 0) break;
            foreach (var (work, oneOf) in refuted) model.After(work, oneOf);
        }
        return (best, Math.Min(bound, best.Length));
    }

    /// <summary>Works that a schedule begins too early, each with those of which one would have to be done before.</summary>
    private static List<(int Work, IReadOnlyList<int> OneOf)> Refuted(CrewWorks works, IReadOnlyList<long> starts)
    {
        var sound = new HashSet<int>();
        bool Ends(int work, int before) => starts[work] + works.All[work].Tenths <= starts[before];
        IReadOnlyList<int>? Missing(int work) => works.Missing(work, [.. sound.Where(w => Ends(w, work))]);
        var left = Enumerable.Range(0, starts.Count).OrderBy(w => starts[w]).ToList();
        while (left.RemoveAll(w => Missing(w) is null && sound.Add(w)) > 0) { }
        // one that waits for another that is itself too early is not at fault yet
        return [.. left.Select(w => (w, Missing(w)!)).Where(x => !x.Item2.Any(other => Ends(other, x.w)))];
    }
}
