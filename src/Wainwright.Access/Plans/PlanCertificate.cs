using System.Security.Cryptography;
using System.Text.Json;
using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>What proves a plan, or that there is none, in names that any model of the same job gives to its items.</summary>
/// <remarks>
/// Written as JSON it can be checked by somebody who does not trust the planner: every sentence by doing all that it allows on a
/// model made afresh and looking whether something is still missing, the bound by one covering problem.
/// </remarks>
public sealed record PlanCertificate
{
    /// <summary>Of this format.</summary>
    public int Format { get; init; } = 1;

    /// <summary>The job.</summary>
    public required string Job { get; init; }

    /// <summary>Fingerprint of vehicle, parts, joints, lines and isolation (SHA-256): the certificate is of this model and no other.</summary>
    public required string Model { get; init; }

    /// <summary>What is sought.</summary>
    public required Objective Objective { get; init; }

    /// <summary>Room wanted between a part and what it passes [mm].</summary>
    public required int ClearanceMm { get; init; }

    /// <summary>Parts out before.</summary>
    public required IReadOnlyList<string> AlreadyOut { get; init; }

    /// <summary>Parts that must stay in.</summary>
    public required IReadOnlyList<string> Stays { get; init; }

    /// <summary>What was done before.</summary>
    public required IReadOnlyList<string> Given { get; init; }

    /// <summary>What is to be done.</summary>
    public required IReadOnlyList<string> Targets { get; init; }

    /// <summary>What is done, in order; empty when there is no plan.</summary>
    public required IReadOnlyList<string> Order { get; init; }

    /// <summary>Price of the plan: tenths of a second of labour, with what is sought before it.</summary>
    public required long Cost { get; init; }

    /// <summary>No plan is cheaper than this.</summary>
    public required long LowerBound { get; init; }

    /// <summary>What every cheaper plan must do, in the order in which that follows.</summary>
    public required IReadOnlyList<string> Necessary { get; init; }

    /// <summary>What no cheaper plan has.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    /// <summary>Whoever does an item must do one of those: in order, one that lists none is out of those after it.</summary>
    public required IReadOnlyList<CutOf> Cuts { get; init; }

    /// <summary>Where there is no plan: what stays undone for good, each held by others of the list, by what must stay or by the van.</summary>
    public required IReadOnlyList<CutOf> Walls { get; init; }

    /// <summary>Whoever does an item must do one of these.</summary>
    /// <param name="Item">The item.</param>
    /// <param name="OneOf">Those; none when it can never be done.</param>
    public sealed record CutOf(string Item, IReadOnlyList<string> OneOf);

    /// <summary>Fingerprint of what a plan depends on in a job.</summary>
    public static string ModelOf(Job job) =>
        Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(new { job.Vehicle, job.Parts, job.Joints, job.Lines, job.Isolation, job.RatePerHour })));

    /// <summary>All that is wrong with it for a job; nothing when it holds.</summary>
    /// <param name="job">The job.</param>
    /// <param name="options">What the planner was told beside; parts out, parts that stay, clearance and objective must be those of the certificate, and nothing done before.</param>
    public IReadOnlyList<string> Faults(Job job, AccessOptions options) => new CertificateReading(this, job, options).Faults();

    /// <summary>Names of what a plan of a planner is to do; what has no measures to see or touch is not among them.</summary>
    internal static IReadOnlyList<string> TargetsOf(RemovalPlan plan) =>
        [.. plan.Question!.Wanted.Select(w => w.Kind switch { AccessKind.See => $"eye on {w.Part}", AccessKind.Reach => $"hand on {w.Part}", _ => $"out {w.Part}" }).Where(plan.Proved!.Keys.Contains)];

    /// <summary>What proves a plan, or that there is none.</summary>
    /// <param name="plan">A plan made by a <see cref="RemovalPlanner"/>.</param>
    /// <exception cref="ArgumentException">It was not made by one.</exception>
    public static PlanCertificate Of(RemovalPlan plan)
    {
        var (job, options, outcome, keys, given) = plan.Proved ?? throw new ArgumentException("This plan was not made by a planner.", nameof(plan));
        IReadOnlyList<string> Named(IEnumerable<int> items) => [.. items.Select(i => keys[i])];
        IReadOnlyList<CutOf> Sentences(IEnumerable<Cut> cuts) => [.. cuts.Select(c => new CutOf(keys[c.Item], Named(c.OneOf)))];
        var (solved, none) = (outcome as Solved, outcome as Unreachable);
        return new()
        {
            Job = job.Id,
            Model = ModelOf(job),
            Objective = options.Objective,
            ClearanceMm = options.ClearanceMm,
            AlreadyOut = [.. options.AlreadyOut.Select(p => p.Text)],
            Stays = [.. options.MustStay.Concat(plan.Question!.Stays).Select(p => p.Text).Distinct()],
            Given = Named(given),
            Targets = TargetsOf(plan),
            Order = solved is null ? [] : Named(solved.Order),
            Cost = solved?.Cost ?? 0,
            LowerBound = solved?.LowerBound ?? 0,
            Necessary = solved is null ? [] : Named(solved.Proof.Necessary),
            LeftOut = solved is null ? [] : Named(ItemSet.All(keys.Count).Without(solved.Proof.Useful)),
            Cuts = solved is null ? [] : Sentences(solved.Proof.Cuts),
            Walls = none is null ? [] : Sentences(none.Walls.OrderBy(w => w.Key).Select(w => new Cut(w.Key, w.Value))),
        };
    }
}
