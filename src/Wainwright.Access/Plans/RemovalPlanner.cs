using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Plans how to get at parts of one van in one state. What is learned for one question serves the next.</summary>
/// <remarks>Not for use by several threads at once.</remarks>
public sealed partial class RemovalPlanner
{
    private const int MostSparing = 4;

    private readonly AccessOptions options;
    private readonly Scene scene;
    private readonly ItemSet given;
    private readonly IReadOnlyList<RemovalStep> doneBefore;
    private readonly Prices prices;
    private Planner planner;
    private Lazy<(Scene Scene, Planner Planner)> favourable;

    /// <param name="job">The job; what its parts say is usually taken out first is not read.</param>
    /// <param name="options">What the planner is told beside; absent for the usual.</param>
    public RemovalPlanner(Job job, AccessOptions? options = null) : this(new(job, options ?? new(), optimistic: false), options ?? new(), [], null, null)
    {
    }

    private RemovalPlanner(
        Scene scene, AccessOptions options, IReadOnlyList<RemovalStep> doneBefore, Planner? learned, Func<(Scene Scene, Planner Planner)>? madeFavourable)
    {
        (this.scene, this.options, this.doneBefore) = (scene, options, doneBefore);
        given = AlreadyDone.In(scene, doneBefore);
        prices = new(scene, options.Objective);
        planner = (learned ?? new(scene.Puzzle)).With(prices.Costs, given);
        favourable = new(madeFavourable ?? Favourable);
    }

    /// <summary>The job it plans: as given, or as it turned out to be.</summary>
    public Job Job => scene.Job;

    private (Scene Scene, Planner Planner) Favourable()
    {
        var loose = new Scene(scene.Job, options, optimistic: true, like: scene);
        return (loose, new Planner(loose.Puzzle).With(loose.Puzzle.Costs, AlreadyDone.In(loose, doneBefore)));
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

    /// <summary>How to take some parts out, get a hand to others and see others still, in one plan.</summary>
    /// <param name="wanted">What is wanted; what is out already is passed over.</param>
    /// <exception cref="ArgumentException">A part is not in the job.</exception>
    public RemovalPlan Plan(IReadOnlyList<Wanted> wanted) => Plan(wanted, wanted.Select(w => w.Kind).DefaultIfEmpty(AccessKind.Remove).Max());

    private RemovalPlan Plan(IReadOnlyList<PartId> parts, AccessKind kind) => Plan([.. parts.Select(p => new Wanted(p, kind))], kind);

    /// <summary>
    /// Plans to take parts out and checks the plan and its proof on a model of the van made afresh, cut by cut, by code that
    /// the search does not use. All that is wrong; nothing when both hold.
    /// </summary>
    /// <param name="parts">The parts wanted out.</param>
    /// <exception cref="ArgumentException">A part is not in the job, or there is no plan to check.</exception>
    public IReadOnlyList<string> ProofFaults(IReadOnlyList<PartId> parts)
    {
        var plan = Remove(parts);
        if (plan.Proved?.Outcome is not Solved) throw new ArgumentException("There is no plan for these parts, so no proof of its price.", nameof(parts));
        return Check(PlanCertificate.Of(plan), plan);
    }

    /// <summary>Checks a certificate on a model made afresh of the job as this planner has it. All that is wrong with it.</summary>
    /// <param name="certificate">What is said to prove a plan.</param>
    /// <param name="answers">The plan of this planner that it is to prove: a certificate of fewer targets, or with more to stay, is refused.</param>
    public IReadOnlyList<string> Check(PlanCertificate certificate, RemovalPlan answers)
    {
        var names = ItemKey.Of(scene);
        // ways that were looked for to spare a part are taken over; that they are clear is the audit's to show
        return new CertificateReading(certificate, scene.Job, options, new(scene.Job, options, options.Tilting.ToSpare ? scene : null), [.. given.Select(i => names[i])], answers).Faults();
    }

    /// <summary>How hand and tool come to each fixing of a plan of this planner, at its turn: for showing, and for an audit to walk.</summary>
    /// <param name="plan">A plan of this planner.</param>
    public IReadOnlyList<HandWay> HandWays(RemovalPlan plan) => new HandEvidence(scene, given).Of(plan);

    /// <summary>Replays a plan of this planner on the job by code that the planner does not use, and says what is wrong with it.</summary>
    /// <param name="plan">A plan of this planner.</param>
    public AuditReport Audit(RemovalPlan plan) => PlanAudit.Of(scene.Job, options, plan, HandWays(plan), doneBefore);

    private PlanQuestion Question(IReadOnlyList<Wanted> wanted)
    {
        if (wanted.FirstOrDefault(w => scene.PartOf(w.Part) is null) is { Part.Text: not null } unknown) throw new ArgumentException($"No part {unknown.Part} in this job.", nameof(wanted));
        return new([.. wanted.Distinct().Where(w => scene.IsStanding(w.Part))], []);
    }

    /// <param name="asked">What is wanted.</param>
    /// <param name="kind">The most that is wanted of any part.</param>
    /// <param name="before">What came of the same question before something turned out otherwise, and the names of its items.</param>
    private RemovalPlan Plan(IReadOnlyList<Wanted> asked, AccessKind kind, (Solved Outcome, IReadOnlyList<string> Keys)? before = null)
    {
        var question = Question(asked);
        var outcome = Search(scene, planner, question, before is { } was ? Precedent.Of(was.Outcome, was.Keys, scene, given) : null);
        for (var round = 0; round < MostSparing && outcome is Solved found && Spares(found, TargetsOf(scene, question)); round++) outcome = Search(question);
        var plan = Written([.. asked.Select(w => w.Part).Distinct()], question, outcome, kind);
        var bracketed = options.Objective == Objective.LeastLabour || plan.Steps.Count == 0;
        return options.Bracket && bracketed && !scene.Room.IsExact ? plan with { Bracket = BracketOf(plan, question) } : plan;
    }

    /// <summary>Whether a way was found that tilts a load past a part that is taken out for it; then walls that were learned no longer hold.</summary>
    private bool Spares(Solved plan, IReadOnlyList<int> targets)
    {
        if (options.Tilting is not { Tries: > 0, ToSpare: true } || !TiltToSpare.Adds(scene, plan.Order, targets)) return false;
        planner = new Planner(scene.Puzzle).With(prices.Costs, given);
        favourable = new(Favourable);
        return true;
    }

    private RemovalPlan Written(IReadOnlyList<PartId> asked, PlanQuestion question, Outcome outcome, AccessKind kind) =>
        new PlanWriter(scene, planner, prices, given, doneBefore, asked, TargetsOf(scene, question), ItemSet.All(scene.Items.Count).Without(Stay(scene, question)), kind)
            .Write(outcome) with { Question = question, Proved = new(scene.Job, options, outcome, ItemKey.Of(scene), [.. given]) };

    private Bracket? BracketOf(RemovalPlan plan, PlanQuestion question)
    {
        var (loose, its) = favourable.Value;
        // what is cheapest with parts as they are is likely to be cheapest with some of them smaller, and for the same reasons
        var like = plan.Proved!.Outcome is Solved solved ? Precedent.Of(solved, plan.Proved.Keys, loose, AlreadyDone.In(loose, doneBefore)) : null;
        if (Search(loose, its, question, like) is not Solved easy) return plan.Steps.Count == 0 ? null : new(null, []);
        var low = easy.LowerBound / TenthsOfASecond.InAMinute;
        if (plan.Steps.Count > 0 && low >= plan.LowerBoundMinutes - 1e-9) return null;
        var stays = easy.Order.Select(i => loose.Items[i]).SelectMany(i => i switch { TakeOut load => load.Load, TakePiece piece => [piece.Part], _ => (IEnumerable<Part>)[] }).Select(p => p.Id).ToHashSet();
        return new(low, [.. plan.PartsOut.Where(p => !stays.Contains(p))]);
    }

    private Outcome Search(PlanQuestion question) => Search(scene, planner, question);

    private Outcome Search(Scene where, Planner with, PlanQuestion question, Precedent? like = null) =>
        with.Plan(TargetsOf(where, question), Stay(where, question), options.Budget, options.Progress is { } hear
            ? s => hear(new(s.Best / TenthsOfASecond.InAMinute, s.LowerBound / TenthsOfASecond.InAMinute, s.Questions, s.Cuts, Bracketing: where != scene))
            : null, like, options.Stop);

    private ItemSet Stay(Scene where, PlanQuestion question) => Staying.In(where, [.. options.MustStay, .. question.Stays]);

    internal static List<int> TargetsOf(Scene where, PlanQuestion question) =>
        [.. question.Wanted.Select(w => w.Kind switch
        {
            AccessKind.See => where.EyeItem(w.Part),
            AccessKind.Reach => where.HandItem(w.Part),
            _ => where.OutItem(w.Part),
        }).OfType<int>()];
}
