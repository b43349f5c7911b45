using System.Globalization;
using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Web;

/// <summary>A question for the planner.</summary>
/// <param name="Targets">Parts wanted, in the order typed.</param>
/// <param name="Kind">How close one has to come.</param>
/// <param name="LeaveAlone">Parts that must stay in.</param>
/// <param name="OutAlready">Parts that are out beside those of the last stage.</param>
/// <param name="Objective">What a plan is to have least of.</param>
/// <param name="TiltPast">Whether each load is also tried tilted past what comes out only to let it by.</param>
public sealed record WayQuestion(
    IReadOnlyList<PartId> Targets, AccessKind Kind, IReadOnlyList<PartId> LeaveAlone, IReadOnlyList<PartId> OutAlready, Objective Objective = Objective.LeastLabour, bool TiltPast = false)
{
    /// <summary>The same for the same question, however it was typed.</summary>
    public string Key => $"{Kind} {Sorted(Targets)} / {Sorted(LeaveAlone)} / {Sorted(OutAlready)}{(Objective == Objective.LeastLabour ? "" : $" / {Objective}")}{(TiltPast ? " / tilted" : "")}";

    /// <summary>What is wanted, for the planner.</summary>
    public IReadOnlyList<Wanted> Wanted => [.. Targets.Select(t => new Wanted(t, Kind))];

    /// <summary>Every part it names.</summary>
    public IEnumerable<PartId> Parts => Targets.Concat(LeaveAlone).Concat(OutAlready);

    /// <summary>What the planner is told of a job as it stands.</summary>
    public AccessOptions Told(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new() { AlreadyOut = [.. OutByStage(job).Concat(OutAlready).Distinct()], MustStay = LeaveAlone, Objective = Objective, Tilting = Tilting.Usual with { ToSpare = TiltPast } };
    }

    /// <summary>A plan starts from the van as it stands: parts that are out at its last stage.</summary>
    public static IReadOnlyList<PartId> OutByStage(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return job.Stages is [.., var stage] ? stage.PartsOut : [];
    }

    /// <summary>Where a plan of a job starts from, in words.</summary>
    public static string From(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return job.Stages is not [.., var stage] ? "the van with everything in: no stage is recorded"
            : string.Create(CultureInfo.InvariantCulture, $"the van at stage “{stage.Name}” of {stage.On:yyyy-MM-dd}: {(stage.PartsOut.Count == 0 ? "everything in" : $"{string.Join(", ", stage.PartsOut)} out")}");
    }

    private static string Sorted(IEnumerable<PartId> parts) => string.Join(' ', parts.Select(p => p.Text).Order(StringComparer.Ordinal));
}

/// <summary>An answer of the planner.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Sequence">Entry of the journal it was made after.</param>
/// <param name="Before">The plan for the same question at an earlier entry; absent when it was not asked then.</param>
/// <param name="Planner">The planner that made it; asked at its desk only.</param>
/// <param name="Desk">Where it is asked further.</param>
public sealed record WayAnswer(RemovalPlan Plan, int Sequence, (RemovalPlan Plan, int Sequence)? Before, RemovalPlanner Planner, PlanDesk Desk);

/// <summary>Ways out asked for while a job is open. Remembers the last answers, so that one sees what a change of the record did.</summary>
public sealed class Ways
{
    private readonly Dictionary<string, (RemovalPlan Plan, int Sequence, (RemovalPlan, int)? Before)> last = [];
    private (string Key, WayAnswer Answer)? open;

    /// <summary>Asks the planner away from the screen's thread. Ended early, it gives the best found so far.</summary>
    public async Task<WayAnswer> Ask(StoredJob stored, WayQuestion question, Action<SearchProgress>? hear = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(stored);
        ArgumentNullException.ThrowIfNull(question);
        if (open is { } same && same.Key == question.Key && same.Answer.Sequence == stored.Sequence && same.Answer.Plan.Proof != Proof.BestFound) return same.Answer;
        var desk = new PlanDesk(stored.Job, question.Told(stored.Job));
        var (plan, planner) = await desk.Ask(p => (p.Plan(question.Wanted), p), hear, stop);
        (RemovalPlan, int)? before = last.TryGetValue(question.Key, out var known) ? known.Sequence == stored.Sequence ? known.Before : (known.Plan, known.Sequence) : null;
        last[question.Key] = (plan, stored.Sequence, before);
        var answer = new WayAnswer(plan, stored.Sequence, before, planner, desk);
        // planners are large: only the one on the screen is kept
        open = (question.Key, answer);
        return answer;
    }
}
