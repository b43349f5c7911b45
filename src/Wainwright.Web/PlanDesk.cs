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
    public Task<T> Ask<T>(Func<RemovalPlanner, T> question, Action<SearchProgress>? hear = null, CancellationToken stop = default) => Turn(() =>
    {
        // a planner that was stopped once answers nothing further
        if (seat is null || seat.Ended.IsCancellationRequested) seat = Seated();
        heard = hear;
        using var stopping = stop.Register(seat.Ended.Cancel);
        try
        {
            // whatever was found otherwise before is gone through again by a planner that is new
            while (seat.Turns < replanned.Count)
            {
                var (before, now) = replanned[seat.Turns];
                seat = seat with { Now = seat.Now.Replan(before, now).Planner, Turns = seat.Turns + 1 };
            }
            return question(seat.Now);
        }
        finally
        {
            heard = null;
        }
    });

    /// <summary>Plans on from where somebody stands, the van being otherwise than recorded. Whoever asks from now on asks the planner of that.</summary>
    /// <param name="before">The plan that was followed.</param>
    /// <param name="now">How the van turned out to be.</param>
    /// <param name="hear">Told how far the search has come.</param>
    /// <param name="stop">Ends it early with the best found so far.</param>
    /// <exception cref="ArgumentException">What was found is not in the job.</exception>
    public Task<Replanned> Replan(RemovalPlan before, Reality now, Action<SearchProgress>? hear = null, CancellationToken stop = default) => Ask(
        planner =>
        {
            var next = planner.Replan(before, now);
            replanned.Add((before, now));
            seat = seat! with { Now = next.Planner, Turns = replanned.Count };
            return next;
        },
        hear,
        stop);

    /// <summary>Audits a plan of this desk; needs nothing of what the planner has learned.</summary>
    /// <param name="planner">The planner that made it.</param>
    /// <param name="plan">The plan.</param>
    public Task<AuditReport> Audit(RemovalPlanner planner, RemovalPlan plan)
    {
        ArgumentNullException.ThrowIfNull(planner);
        return Turn(() => planner.Audit(plan));
    }

    /// <summary>Forgets everything that was found otherwise; what was learned of the van as recorded is kept.</summary>
    public Task Forget() => Turn(() =>
    {
        replanned.Clear();
        return seat = seat is null ? null : seat with { Now = seat.First, Turns = 0 };
    });

    private Task<T> Turn<T>(Func<T> what) => Task.Run(
        () =>
        {
            lock (turn) return what();
        },
        CancellationToken.None);

    private Seat Seated()
    {
        var ended = new CancellationTokenSource();
        var first = new RemovalPlanner(job, told with { Stop = ended.Token, Progress = s => heard?.Invoke(s) });
        return new(first, first, 0, ended);
    }

    /// <param name="First">The planner of the van as recorded.</param>
    /// <param name="Now">The planner of the van as it turned out to be.</param>
    /// <param name="Turns">How often it turned out otherwise by then.</param>
    /// <param name="Ended">Ends the search that runs, and with it the use of both.</param>
    private sealed record Seat(RemovalPlanner First, RemovalPlanner Now, int Turns, CancellationTokenSource Ended);
}
