using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Web;

/// <summary>One planner, asked by one at a time and away from the screen's thread.</summary>
/// <param name="job">The job it plans for.</param>
/// <param name="told">What it is told beside.</param>
public sealed class PlanDesk(Job job, AccessOptions told)
{
    private readonly Lock turn = new();
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

    private Seat Seated()
    {
        var ended = new CancellationTokenSource();
        return new(new(job, told with { Stop = ended.Token, Progress = s => heard?.Invoke(s) }), ended);
    }

    private sealed record Seat(RemovalPlanner Planner, CancellationTokenSource Ended);
}

/// <summary>A question put to a planner.</summary>
internal static class Asked
{
    public static RemovalPlan Answer(this RemovalPlanner planner, WayQuestion question) => question.Kind switch
    {
        AccessKind.See => planner.See(question.Targets),
        AccessKind.Reach => planner.Reach(question.Targets),
        _ => planner.Remove(question.Targets),
    };
}
