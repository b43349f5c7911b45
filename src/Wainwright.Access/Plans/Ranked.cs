using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Plans one after another, cheapest first, each of which keeps in at least one part of every one before it.</summary>
/// <remarks>
/// A tree of hitting sets: a plan that differs from one found keeps in at least one of its parts, so for each of them the best
/// plan without it is sought, and the cheapest of all these comes next. What a plan must have in any case has no branch. After
/// E. L. Lawler, a procedure for the k best solutions (1972), and R. Reiter's tree of hitting sets (1987); both from memory.
/// </remarks>
/// <param name="search">The best plan of a question.</param>
/// <param name="leaving">The parts that leave in a plan.</param>
/// <param name="wanted">Parts that leave in every plan by what is asked.</param>
/// <param name="most">How many searches are made at most.</param>
internal sealed class Ranked(Func<PlanQuestion, Outcome> search, Func<Solved, IReadOnlyList<PartId>> leaving, IReadOnlySet<PartId> wanted, int most)
{
    private readonly PriorityQueue<Found, (long Cost, int Turn)> queue = new();
    private readonly HashSet<string> asked = [];
    private readonly List<IReadOnlyList<PartId>> before = [];
    private int turn;

    internal sealed record Found(PlanQuestion Question, Solved Plan);

    /// <summary>Whether every search was finished and none left out.</summary>
    public bool IsProved { get; private set; } = true;

    /// <summary>The plans after the first.</summary>
    public IEnumerable<Found> After(Found first)
    {
        IsProved = first.Plan.IsProved;
        before.Add(leaving(first.Plan));
        Branch(first.Question, before[0]);
        while (queue.TryDequeue(out var next, out _))
        {
            var parts = leaving(next.Plan);
            // more of the same is not another plan; what differs from the one it repeats lies below
            if (before.Find(b => b.All(parts.Contains)) is { } same)
            {
                Branch(next.Question, same);
                continue;
            }
            before.Add(parts);
            yield return next;
            Branch(next.Question, parts);
        }
    }

    private void Branch(PlanQuestion from, IReadOnlyList<PartId> parts)
    {
        foreach (var part in parts.Where(p => !wanted.Contains(p)))
        {
            var question = from.Keeping([part]);
            if (!asked.Add(string.Join(' ', question.Stays.Select(p => p.Text).Distinct().Order(StringComparer.Ordinal)))) continue;
            if (asked.Count > most)
            {
                IsProved = false;
                return;
            }
            if (search(question) is not Solved plan) continue;
            IsProved &= plan.IsProved;
            queue.Enqueue(new(question, plan), (plan.Cost, turn++));
        }
    }
}
