using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Plans how to get at parts of one van in one state. What is learned for one question serves the next.</summary>
/// <remarks>Not for use by several threads at once.</remarks>
public sealed partial class RemovalPlanner
{
    private const double TenthsOfASecond = 600;

    private readonly AccessOptions options;
    private readonly Scene scene;
    private const int MostSparing = 4;

    private Planner planner;
    private Lazy<(Scene Scene, Planner Planner)> favourable;

    /// <param name="job">The job; what its parts say is usually taken out first is not read.</param>
    /// <param name="options">What the planner is told beside; absent for the usual.</param>
    public RemovalPlanner(Job job, AccessOptions? options = null)
    {
        this.options = options ?? new();
        scene = new(job, this.options, optimistic: false);
        planner = new(scene.Puzzle);
        favourable = new(Favourable);
    }

    private (Scene Scene, Planner Planner) Favourable()
    {
        var loose = new Scene(scene.Job, options, optimistic: true, like: scene);
        return (loose, new(loose.Puzzle));
    }

    /// <summary>How to take parts out, for one question.</summary>
    /// <param name="job">The job.</param>
    /// <param name="parts">The parts wanted out.</param>
    /// <param name="options">What the planner is told beside; absent for the usual.</param>
    public static RemovalPlan Remove(Job job, IReadOnlyList<PartId> parts, AccessOptions? options = null) => new RemovalPlanner(job, options).Remove(parts);

    /// <summary>How to get a hand to parts, for one question.</summary>
    /// <param name="job">The job.</param>
    /// <param name="parts">The parts to reach.</param>
    /// <param name="options">What the planner is told beside; absent for the usual.</param>
    public static RemovalPlan Reach(Job job, IReadOnlyList<PartId> parts, AccessOptions? options = null) => new RemovalPlanner(job, options).Reach(parts);

    /// <summary>How to take parts out.</summary>
    /// <param name="parts">The parts wanted out; those that are out already are passed over.</param>
    /// <exception cref="ArgumentException">A part is not in the job.</exception>
    public RemovalPlan Remove(IReadOnlyList<PartId> parts) => Plan(parts, AccessKind.Remove);

    /// <summary>How to get a hand to parts.</summary>
    /// <param name="parts">The parts to reach; those that are out already or have no measures are passed over, the latter with a word.</param>
    /// <exception cref="ArgumentException">A part is not in the job.</exception>
    public RemovalPlan Reach(IReadOnlyList<PartId> parts) => Plan(parts, AccessKind.Reach);

    /// <summary>
    /// Plans to take parts out and checks the plan and its proof on a model of the van made afresh, cut by cut, by code that
    /// the search does not use. All that is wrong; nothing when both hold.
    /// </summary>
    /// <param name="parts">The parts wanted out.</param>
    /// <exception cref="ArgumentException">A part is not in the job, or there is no plan to check.</exception>
    public IReadOnlyList<string> ProofFaults(IReadOnlyList<PartId> parts)
    {
        if (Search(scene, planner, Wanted(parts), AccessKind.Remove) is not Solved plan) throw new ArgumentException("There is no plan for these parts, so no proof of its price.", nameof(parts));
        // ways that were looked for to spare a part are taken over; that they are clear is the audit's to show
        var afresh = new Scene(scene.Job, options, optimistic: false, like: options.Tilting.ToSpare ? scene : null);
        return CertificateCheck.Faults(Remembered.Of(afresh.Puzzle), ItemSet.All(afresh.Items.Count).Without(Stay(afresh)), plan);
    }

    /// <summary>How hand and tool come to each fixing of a plan of this planner, at its turn: for showing, and for an audit to walk.</summary>
    /// <param name="plan">A plan of this planner.</param>
    public IReadOnlyList<HandWay> HandWays(RemovalPlan plan) => new HandEvidence(scene).Of(plan);

    /// <summary>Replays a plan of this planner on the job by code that the planner does not use, and says what is wrong with it.</summary>
    /// <param name="plan">A plan of this planner.</param>
    public AuditReport Audit(RemovalPlan plan) => PlanAudit.Of(scene.Job, options, plan, HandWays(plan));

    private List<PartId> Wanted(IReadOnlyList<PartId> parts)
    {
        if (parts.FirstOrDefault(p => scene.PartOf(p) is null) is { Text: not null } unknown) throw new ArgumentException($"No part {unknown} in this job.", nameof(parts));
        return [.. parts.Distinct().Where(scene.IsStanding)];
    }

    private RemovalPlan Plan(IReadOnlyList<PartId> parts, AccessKind kind)
    {
        var wanted = Wanted(parts);
        var outcome = Search(scene, planner, wanted, kind);
        for (var round = 0; round < MostSparing && outcome is Solved found && Spares(found, TargetsOf(scene, wanted, kind)); round++)
            outcome = Search(scene, planner, wanted, kind);
        var plan = new PlanWriter(scene, planner, parts, TargetsOf(scene, wanted, kind), ItemSet.All(scene.Items.Count).Without(Stay(scene)), kind).Write(outcome);
        return options.Bracket && !scene.Room.IsExact ? plan with { Bracket = BracketOf(plan, wanted, kind) } : plan;
    }

    /// <summary>Whether a way was found that tilts a load past a part that is taken out for it; then walls that were learned no longer hold.</summary>
    private bool Spares(Solved plan, IReadOnlyList<int> targets)
    {
        if (options.Tilting is not { Tries: > 0, ToSpare: true } || !TiltToSpare.Adds(scene, plan.Order, targets)) return false;
        planner = new(scene.Puzzle);
        favourable = new(Favourable);
        return true;
    }

    private Bracket? BracketOf(RemovalPlan plan, IReadOnlyList<PartId> wanted, AccessKind kind)
    {
        var (loose, its) = favourable.Value;
        if (Search(loose, its, wanted, kind) is not Solved easy) return plan.Steps.Count == 0 ? null : new(null, []);
        var low = easy.LowerBound / TenthsOfASecond;
        if (plan.Steps.Count > 0 && low >= plan.LowerBoundMinutes - 1e-9) return null;
        var stays = easy.Order.Select(i => loose.Items[i]).OfType<TakeOut>().SelectMany(t => t.Load).Select(p => p.Id).ToHashSet();
        return new(low, [.. plan.PartsOut.Where(p => !stays.Contains(p))]);
    }

    private Outcome Search(Scene where, Planner with, IReadOnlyList<PartId> wanted, AccessKind kind) =>
        with.Plan(TargetsOf(where, wanted, kind), Stay(where), options.Budget, options.Stop, options.Progress is { } hear
            ? s => hear(new(s.Best / TenthsOfASecond, s.LowerBound / TenthsOfASecond, s.Questions, s.Cuts, Bracketing: where != scene))
            : null);

    private ItemSet Stay(Scene where)
    {
        var stay = new ItemSet(where.Items.Count);
        foreach (var (item, index) in where.Items.Select((item, index) => (item, index)))
            if (item is TakeOut load && load.Load.Any(p => options.MustStay.Contains(p.Id)) || item is TakePiece piece && options.MustStay.Contains(piece.Part.Id))
                stay.Add(index);
        return stay;
    }

    private static List<int> TargetsOf(Scene where, IReadOnlyList<PartId> wanted, AccessKind kind) => kind switch
    {
        AccessKind.See => [.. wanted.Select(where.EyeItem).OfType<int>()],
        AccessKind.Reach => [.. wanted.Select(where.HandItem).OfType<int>()],
        _ => [.. wanted.Select(where.OutItem)],
    };
}
