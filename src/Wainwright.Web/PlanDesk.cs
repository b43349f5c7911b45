using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Web;

/// <summary>One planner, asked by one at a time and away from the screen's thread.</summary>
/// <param name="job">The job it plans for.</param>
/// <param name="told">What it is told beside.</param>
public sealed class PlanDesk(Job job, AccessOptions told)
{
    private readonly Lock turn = new();
    private readonly List<(RemovalPlan Before, Reality Now)> replanned = [];
    private Seat? seat;
    private Action<SearchProgress>? heard;

    /// <summary>What it is told beside the job.</summary>
    public AccessOptions Told => told;

    /// <summary>The job it plans for.</summary>
    public Job Job => job;

    /// <summary>Asks. Stopped early, the planner gives the best it has.</summary>
    public Task<T> Ask<T>(Func<RemovalPlanner, T> question, Action<SearchProgress>? hear = null, CancellationToken stop = default) => Task.Run(
        () =>
        {
            lock (turn)
            {
                // a planner that was stopped once answers nothing further
                if (seat is null || seat.Ended.IsCancellationRequested) seat = Seated();
                heard = hear;
                using var stopping = stop.Register(seat.Ended.Cancel);
                try
                {
                    return question(seat.Planner);
                }
                finally
                {
                    heard = null;
                }
            }
        },
        CancellationToken.None);

    /// <summary>Plans on from where somebody stands, the van being otherwise than recorded. Whoever asks from now on asks the planner of that.</summary>
    /// <param name="before">The plan that was followed.</param>
    /// <param name="now">How the van turned out to be.</param>
    public Task<Replanned> Replan(RemovalPlan before, Reality now) => Ask(planner =>
    {
        var next = planner.Replan(before, now);
        replanned.Add((before, now));
        seat = seat! with { Planner = next.Planner };
        return next;
    });

    /// <summary>Forgets everything that was found otherwise.</summary>
    public Task Forget() => Task.Run(() =>
    {
        lock (turn)
        {
            replanned.Clear();
            seat = null;
        }
    });

    private Seat Seated()
    {
        var ended = new CancellationTokenSource();
        var first = new RemovalPlanner(job, told with { Stop = ended.Token, Progress = s => heard?.Invoke(s) });
        return new(replanned.Aggregate(first, (planner, turn) => planner.Replan(turn.Before, turn.Now).Planner), ended);
    }

    private sealed record Seat(RemovalPlanner Planner, CancellationTokenSource Ended);
}
