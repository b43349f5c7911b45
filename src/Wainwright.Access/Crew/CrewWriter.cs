using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Turns a timetable into who does what when, and says what sets its length.</summary>
internal sealed class CrewWriter(Job job, CrewWorks works, Timetable table, CrewOptions crew)
{
    private readonly Zones zones = new(job, crew.StandingMm);

    public static IReadOnlyList<string> Assumptions(CrewOptions crew) =>
    [
        FormattableString.Invariant($"One job of work at a time in each {crew.StandingMm:0} mm of the load space's length; a load takes up its whole way to the door, and a door lets one load through at a time."),
        crew.ToolsOfAKind == 1 ? "One driver, spanner or knife of each kind." : FormattableString.Invariant($"{crew.ToolsOfAKind} drivers, spanners or knives of each kind."),
        "Everything is made safe before anybody begins. A step once begun is finished by those who began it; walking and fetching are in the minutes of the steps.",
        "Where a step says hold, somebody holds from before the last fixing goes until the load is out; whoever works alone props it first. That hand is in the minutes of the carrying, not kept free beside the undoing.",
        "Each load goes out by the way the plan shows. The steps are those of the plan with the least labour; other steps might take more labour and less time by the clock.",
    ];

    public CrewSchedule Write(RemovalPlan plan, long lowerBound)
    {
        var order = Enumerable.Range(0, works.All.Count).OrderBy(table.Start).ThenBy(table.End).ThenBy(w => works.All[w].Step.Number).ToList();
        return new()
        {
            People = crew.People,
            Minutes = table.Length / TenthsOfASecond.InAMinute,
            LowerBoundMinutes = lowerBound / TenthsOfASecond.InAMinute,
            LabourMinutes = plan.OutMinutes,
            Tasks = Tasks(order),
            Critical = Chain(order),
            Assumes = Assumptions(crew),
        };
    }

    private List<CrewTask> Tasks(IReadOnlyList<int> order)
    {
        var (freeFrom, lastPart) = (new long[crew.People], new PartId?[crew.People]);
        return [.. order.Select(w =>
        {
            var it = works.All[w];
            // whoever worked on the same part goes on with it, else whoever has waited least
            var who = Enumerable.Range(0, crew.People).Where(p => freeFrom[p] <= table.Start(w))
                .OrderBy(p => it.Step.Part is { } part && lastPart[p] == part ? 0 : 1).ThenByDescending(p => freeFrom[p]).ThenBy(p => p).Take(it.People).Order().ToList();
            foreach (var person in who) (freeFrom[person], lastPart[person]) = (table.End(w), it.Step.Part);
            return new CrewTask(it.Step, table.Start(w) / TenthsOfASecond.InAMinute, table.End(w) / TenthsOfASecond.InAMinute, [.. who.Select(p => p + 1)], it.Tool, it.People == 0 ? "" : zones.Words(it.Zones));
        })];
    }

    /// <summary>From what ends last back to what begins first.</summary>
    private List<CrewLink> Chain(IReadOnlyList<int> order)
    {
        var chain = new List<CrewLink>();
        int? at = order.Where(w => works.All[w].Tenths > 0).OrderByDescending(table.End).Cast<int?>().FirstOrDefault();
        while (at is { } work)
        {
            var (before, why) = WaitedFor(work, order);
            chain.Insert(0, new(works.All[work].Step.Number, why, Words(work, before, why)));
            at = before;
        }
        return chain;
    }

    private (int? Before, WaitFor Why) WaitedFor(int work, IReadOnlyList<int> order)
    {
        var start = table.Start(work);
        if (start == 0) return (null, WaitFor.Nothing);
        var it = works.All[work];
        var ended = order.Where(w => table.End(w) == start && works.All[w].Tenths > 0).ToList();
        if (ended.Find(w => works.Missing(work, table.DoneBy(start, without: w)) is not null) is var step && ended.Contains(step) && works.Missing(work, table.DoneBy(start, without: step)) is not null) return (step, WaitFor.Step);
        foreach (var w in ended) if (it.Tool is not null && works.All[w].Tool == it.Tool) return (w, WaitFor.Tool);
        foreach (var w in ended) if (works.All[w].SharesRoom(it)) return (w, WaitFor.Room);
        return (ended[0], WaitFor.Person);
    }

    private string Words(int work, int? before, WaitFor why)
    {
        var after = before is { } b ? works.All[b].Step.Number : 0;
        return why switch
        {
            WaitFor.Nothing => "begins the work",
            WaitFor.Step => FormattableString.Invariant($"cannot begin before step {after} is done"),
            WaitFor.Tool => FormattableString.Invariant($"waits for the {works.All[work].Tool} of step {after}"),
            WaitFor.Room => FormattableString.Invariant($"waits for the room that step {after} takes up"),
            _ => FormattableString.Invariant($"waits for whoever does step {after}"),
        };
    }
}
