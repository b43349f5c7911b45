using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Web;

/// <summary>A question for the planner.</summary>
/// <param name="Targets">Parts wanted, in the order typed.</param>
/// <param name="Reach">Whether a hand is enough.</param>
/// <param name="MustStay">Parts that must stay in.</param>
public sealed record WayQuestion(IReadOnlyList<PartId> Targets, bool Reach, IReadOnlyList<PartId> MustStay)
{
    internal string Key => $"{(Reach ? "reach" : "out")} {string.Join(' ', Targets.Order())} / {string.Join(' ', MustStay.Order())}";
}

/// <summary>An answer of the planner.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Sequence">Entry of the journal it was made after.</param>
/// <param name="Before">The answer to the same question at an earlier entry; absent when it was not asked then.</param>
public sealed record WayAnswer(RemovalPlan Plan, int Sequence, WayAnswer? Before);

/// <summary>Ways out asked for while a job is open. Remembers the last answers, so that one sees what a change of the record did.</summary>
public sealed class Ways
{
    private readonly Dictionary<string, WayAnswer> last = [];

    /// <summary>Asks the planner away from the screen's thread. Ended early, it gives the best found so far.</summary>
    public async Task<WayAnswer> Ask(StoredJob stored, WayQuestion question, CancellationToken stop, Action<SearchProgress>? hear = null)
    {
        if (last.TryGetValue(question.Key, out var known) && known.Sequence == stored.Sequence && known.Plan.Proof != Proof.BestFound) return known;
        var job = stored.Job;
        var options = new AccessOptions { AlreadyOut = job.Stages is [.., var stage] ? stage.PartsOut : [], MustStay = question.MustStay, Stop = stop, Progress = hear };
        var plan = await Task.Run(() => question.Reach ? RemovalPlanner.Reach(job, question.Targets, options) : RemovalPlanner.Remove(job, question.Targets, options), CancellationToken.None);
        var before = known?.Sequence == stored.Sequence ? known.Before : known is null ? null : known with { Before = null };
        return last[question.Key] = new(plan, stored.Sequence, before);
    }
}
