using Google.OrTools.Sat;

namespace Wainwright.Access;

/// <summary>The shortest schedule that obeys what is known so far of what waits for what: a lower bound for every schedule.</summary>
internal sealed class CrewModel
{
    private readonly CpModel model = new();
    private readonly IReadOnlyList<CrewWork> works;
    private readonly IntVar[] starts;
    private readonly IntVar length;
    private readonly Dictionary<(int, int), BoolVar> befores = [];

    public CrewModel(IReadOnlyList<CrewWork> works, CrewOptions crew)
    {
        this.works = works;
        var all = works.Sum(w => w.Tenths);
        length = model.NewIntVar(0, all, "");
        starts = [.. works.Select(_ => model.NewIntVar(0, all, ""))];
        var spans = works.Select((w, i) => model.NewFixedSizeIntervalVar(starts[i], w.Tenths, "")).ToArray();
        for (var i = 0; i < works.Count; i++) model.Add(starts[i] + works[i].Tenths <= length);
        var busy = Enumerable.Range(0, works.Count).Where(i => works[i].Tenths > 0).ToList();
        AtMost(crew.People, busy, i => works[i].People);
        foreach (var tool in busy.Where(i => works[i].Tool is not null).GroupBy(i => works[i].Tool)) AtMost(crew.ToolsOfAKind, [.. tool], _ => 1);
        foreach (var zone in busy.SelectMany(i => works[i].Zones, (i, z) => (i, z)).GroupBy(x => x.z)) OneByOne([.. zone.Select(x => x.i)]);
        foreach (var door in busy.Where(i => works[i].Door is not null).GroupBy(i => works[i].Door)) OneByOne([.. door]);
        model.Minimize(length);

        void OneByOne(IReadOnlyList<int> of)
        {
            model.AddNoOverlap(of.Select(i => spans[i]));
            // said outright, the bound has it at once
            model.Add(length >= of.Sum(i => works[i].Tenths));
        }

        void AtMost(int capacity, IReadOnlyList<int> of, Func<int, int> demand)
        {
            var cumulative = model.AddCumulative(capacity);
            foreach (var i in of) cumulative.AddDemand(spans[i], demand(i));
            model.Add(length * capacity >= of.Sum(i => works[i].Tenths * demand(i)));
        }
    }

    /// <summary>A work begins only when one of those is done.</summary>
    public void After(int work, IReadOnlyList<int> oneOf)
    {
        if (oneOf is [var only]) model.Add(starts[work] >= starts[only] + works[only].Tenths);
        else model.AddBoolOr(oneOf.Select(other => Before(other, work)));
    }

    /// <summary>When each work begins in the best schedule found, a bound below which there is none [0.1 s], and what finding them took.</summary>
    public (IReadOnlyList<long> Starts, long LowerBound, double Effort)? Solve(Timetable hint, double effort, CancellationToken stop)
    {
        model.ClearHints();
        for (var i = 0; i < starts.Length; i++) model.AddHint(starts[i], hint.Start(i));
        // one worker and counted work: the same answer on every machine
        var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{effort}") };
        using var stopping = stop.Register(solver.StopSearch);
        var status = solver.Solve(model);
        var bound = (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);
        return status switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => ([.. starts.Select(s => solver.Value(s))], bound, solver.Response?.DeterministicTime ?? effort),
            CpSolverStatus.Unknown => null,
            _ => throw new InvalidOperationException($"The schedule was not solved ({status})."),
        };
    }

    private BoolVar Before(int first, int then)
    {
        if (befores.TryGetValue((first, then), out var known)) return known;
        var before = befores[(first, then)] = model.NewBoolVar("");
        model.Add(starts[then] >= starts[first] + works[first].Tenths).OnlyEnforceIf(before);
        return before;
    }
}
