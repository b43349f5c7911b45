using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Goes round everything in a van that asks for service: how it is got at, how often, and what that costs in a year.</summary>
public static class UpkeepRound
{
    private static readonly ServiceAccess[] Ways = Enum.GetValues<ServiceAccess>();

    /// <summary>Asks for every part with a need how it is seen, reached and taken out as the van is built.</summary>
    /// <param name="job">The job.</param>
    /// <param name="options">What the planner is told beside; what is out already counts as in: service meets the van as built.</param>
    /// <param name="progress">Told after each answer.</param>
    /// <remarks>Stopped early by <see cref="AccessOptions.Stop"/>, it says what it did not come to.</remarks>
    public static Upkeep Of(Job job, AccessOptions? options = null, IProgress<AccessProgress>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        var asBuilt = (options ?? new()) with { AlreadyOut = [], MustStay = [] };
        var van = new Inquiry(job, asBuilt);
        var wanted = job.Parts.Where(p => p.Service.Count > 0).ToList();
        var (done, total) = (0, wanted.Count * Ways.Length);
        var found = wanted.ConvertAll(part =>
        {
            var ways = Ways.ToDictionary(how => how, how =>
            {
                if (asBuilt.Stop.IsCancellationRequested) return AccessMinutes.NotAsked(how);
                var answer = van.Access(part, how);
                if (asBuilt.Stop.IsCancellationRequested && answer.HighMinutes is null) return AccessMinutes.NotAsked(how);
                done++;
                progress?.Report(new(done, total, Wording.Name(part)));
                return answer;
            });
            return new PartAccess
            {
                Part = part.Id,
                Name = part.Name,
                See = ways[ServiceAccess.See],
                Reach = ways[ServiceAccess.Reach],
                Remove = ways[ServiceAccess.Remove],
                Depth = van.Depth(part, ways[ServiceAccess.Reach]),
                Visits = [.. part.Service.Select(need => new UpkeepVisit(part.Id, need, ways[need.Access]))],
            };
        });
        var plans = found.SelectMany(p => p.Visits).Select(v => v.Minutes.Plan).OfType<RemovalPlan>().Distinct().ToList();
        return new()
        {
            Parts = [.. found.OrderByDescending(p => p.Visits.Sum(v => v.HighMinutesPerYear ?? v.LowMinutesPerYear ?? 0)).ThenBy(p => p.Part.Text, StringComparer.Ordinal)],
            Van = van,
            Done = done,
            Total = total,
            Assumes = [.. Assumes, .. Doubt.Assumptions],
            ToMeasure = [.. plans.SelectMany(p => p.ToMeasure).Distinct()],
            Cautions = Doubt.Cautions,
        };
    }

    private static readonly string[] Assumes =
    [
        "Each visit is made on its own, at its own interval; visits made together share work and cost less.",
        "Minutes are for getting there and bringing everything back; the service work itself is not in them.",
    ];
}
