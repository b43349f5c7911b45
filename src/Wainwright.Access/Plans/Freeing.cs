using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Tries single changes on a van from which something does not come out, and keeps those that work, least millimetres first.</summary>
/// <remarks>
/// Each trial asks a model made of the changed job whether the targets can be done at all. Sizes are halved down to the
/// millimetre: a larger opening or a smaller part never closes a way. Where trials or time run out before, the size works and a
/// smaller one may.
/// </remarks>
internal sealed class Freeing(Job job, AccessOptions options, PlanQuestion question, IReadOnlyList<RemovalStep> doneBefore, RemovalPlan plan, int mostTrials = 160)
{
    private const int MostMm = 400;

    private readonly List<FreeingChange> found = [];
    private int trials;

    public IReadOnlyList<FreeingChange> Smallest()
    {
        LetOut();
        Openings();
        Ground();
        var held = plan.HeldForGood.Where(h => h.ByParts.Count == 0 || options.MustStay.Concat(question.Stays).Any(h.ByParts.Contains)).Select(h => h.Part)
            .Concat(question.Wanted.Select(w => (PartId?)w.Part)).OfType<PartId>().Distinct().ToList();
        foreach (var part in held.Select(id => job.Parts.First(p => p.Id == id)).Where(p => p.Solids.Count > 0)) Smaller(part);
        foreach (var part in held.Select(id => job.Parts.First(p => p.Id == id)).Where(p => p.Solids.Count > 1 && p.ComesApartInto.Count == 0)) ComesApart(part);
        Joints();
        return [.. found.OrderBy(c => c.Mm ?? int.MaxValue).ThenBy(c => c.Kind).ThenBy(c => c.Words, StringComparer.Ordinal)];
    }

    private bool IsSpent => trials >= mostTrials || options.Stop.IsCancellationRequested;

    private bool Works(Job changed, AccessOptions? told = null, PlanQuestion? asked = null)
    {
        if (IsSpent) return false;
        trials++;
        var scene = new Scene(changed, (told ?? options) with { Bracket = false }, optimistic: false);
        var stay = Staying.In(scene, [.. (told ?? options).MustStay, .. (asked ?? question).Stays]);
        var planner = new Planner(scene.Puzzle).With(scene.Puzzle.Costs, AlreadyDone.In(scene, doneBefore));
        return planner.CanReach(ItemSet.Of(scene.Items.Count, RemovalPlanner.TargetsOf(scene, question)), ItemSet.All(scene.Items.Count).Without(stay));
    }

    /// <summary>The least size found at which a change works, and whether one millimetre less was tried and does not; nothing when it does not at the greatest.</summary>
    private (int Mm, bool IsLeast)? Least(Func<int, Job> changed, int most = MostMm)
    {
        if (!Works(changed(most))) return null;
        var (no, yes) = (0, most);
        while (yes - no > 1 && !IsSpent)
        {
            var middle = (no + yes) / 2;
            if (Works(changed(middle))) yes = middle;
            else no = middle;
        }
        return (yes, yes - no == 1);
    }

    private void LetOut()
    {
        foreach (var part in options.MustStay.Concat(question.Stays).Distinct())
            if (Works(job, options with { MustStay = [.. options.MustStay.Where(p => p != part)] }, question with { Stays = [.. question.Stays.Where(p => p != part)] }))
                found.Add(new(ChangeKind.LetOut, $"Take {Wording.Name(Part(part))} out after all.", null, Part: part));
    }

    private void Openings()
    {
        foreach (var opening in job.Vehicle.Openings.Where(o => o.Passable))
        {
            var (along, across) = opening.Face switch
            {
                Face.Front or Face.Rear => (("to the left", "to the right"), ("downwards", "upwards")),
                Face.Left or Face.Right => (("forwards", "rearwards"), ("downwards", "upwards")),
                _ => (("forwards", "rearwards"), ("to the left", "to the right")),
            };
            Opening Low(Opening o, int mm) => o with { FromMm = More(o.FromMm, -mm), WidthMm = More(o.WidthMm, mm) };
            Opening High(Opening o, int mm) => o with { WidthMm = More(o.WidthMm, mm) };
            Opening Under(Opening o, int mm) => o with { SillMm = More(o.SillMm, -mm), HeightMm = More(o.HeightMm, mm) };
            Opening Over(Opening o, int mm) => o with { HeightMm = More(o.HeightMm, mm) };
            var before = found.Count;
            Open(opening, along.Item1, Low);
            Open(opening, along.Item2, High);
            Open(opening, across.Item1, Under);
            Open(opening, across.Item2, Over);
            if (found.Count > before) continue;
            // both ways together only where neither alone is enough
            Open(opening, $"{along.Item1} and {across.Item2}", (o, mm) => Over(Low(o, mm), mm));
            Open(opening, $"{along.Item2} and {across.Item2}", (o, mm) => Over(High(o, mm), mm));
        }
    }

    private static Measured More(Measured of, int mm) => of with { Value = of.Value + mm };

    private void Open(Opening opening, string side, Func<Opening, int, Opening> wider)
    {
        if (Least(mm => job with { Vehicle = job.Vehicle with { Openings = [.. job.Vehicle.Openings.Select(o => o == opening ? wider(o, mm) : o)] } }) is { } least)
            Add(least, new(ChangeKind.Opening, Say($"Open {opening.Name} by {least.Mm} mm {side}."), least.Mm, Opening: opening.Name));
    }

    private void Ground()
    {
        foreach (var opening in job.Vehicle.Openings.Where(o => o is { Passable: true, LandingMm: not null }))
            if (Least(mm => job with { Vehicle = job.Vehicle with { Openings = [.. job.Vehicle.Openings.Select(o => o == opening ? o with { LandingMm = o.LandingMm + mm } : o)] } }, 2000) is { } least)
                Add(least, new(ChangeKind.Ground, Say($"Move the van: {least.Mm} mm more clear ground outside {opening.Name}."), least.Mm, Opening: opening.Name));
    }

    private void Smaller(Part part)
    {
        var size = part.Bounds()!.Value.High - part.Bounds()!.Value.Low;
        foreach (var axis in Enum.GetValues<Axis>()) Smaller(part, Sized.Word(axis), (int)Sized.Along(size, axis) - 1, mm => Sized.Narrower(part, axis, mm));
        if (found.Exists(c => c.Part == part.Id)) return;
        Smaller(part, "every way", (int)Math.Min(size.XMm, Math.Min(size.YMm, size.ZMm)) - 1, mm => Enum.GetValues<Axis>().Aggregate(part, (p, axis) => Sized.Narrower(p, axis, mm)));
    }

    private void Smaller(Part part, string which, int most, Func<int, Part> smaller)
    {
        if (most >= 1 && Least(mm => With(smaller(mm)), Math.Min(MostMm, most)) is { } least)
            Add(least, new(ChangeKind.Smaller, Say($"{Wording.Name(part)} made {least.Mm} mm less {which}."), least.Mm, Part: part.Id));
    }

    private void Add((int Mm, bool IsLeast) size, FreeingChange change) =>
        found.Add(size.IsLeast ? change : change with { Words = $"{change.Words} Less may do: the search ended before that was tried.", IsLeast = false });

    private void ComesApart(Part part)
    {
        var named = part.Solids.Select((s, i) => s with { Name = s.Name ?? Say($"panel {i + 1}") }).ToList();
        var pieces = named.GroupBy(s => s.Name!).Select(g => new Piece { Name = g.Key, Solids = [g.Key], Minutes = 0 }).ToList();
        if (pieces.Count > 1 && Works(With(part with { Solids = named, ComesApartInto = pieces })))
            found.Add(new(ChangeKind.ComesApart, $"Build {Wording.Name(part)} so that it comes apart into its {pieces.Count} panels on the spot.", null, Part: part.Id));
    }

    private void Joints()
    {
        var held = plan.Proved?.Outcome is Unreachable none ? none.Walls.Keys.Select(i => plan.Proved.Keys[i]).ToHashSet() : [];
        foreach (var joint in job.Joints.Where(j => held.Contains($"undo {j.Id}") && j.Points.Count > 0))
        {
            var whose = $"{joint.Id} of {Wording.Name(Part(joint.Part))}";
            var side = Enum.GetValues<Direction>().Cast<Direction?>().FirstOrDefault(d => d != joint.Release.From && joint.Release.From is not null && Works(WithJoint(joint with { Release = joint.Release with { From = d } })));
            if (side is { } from) found.Add(new(ChangeKind.JointSide, $"Move the access of {whose} to its {Side(from)} side.", null, Part: joint.Part, Joint: joint.Id));
            else if (Works(WithJoint(joint with { Points = [] }))) found.Add(new(ChangeKind.JointFree, $"Put {whose} where a hand gets to it.", null, Part: joint.Part, Joint: joint.Id));
        }
    }

    private static string Side(Direction direction) => direction switch
    {
        Direction.Forward => "front",
        Direction.Rearward => "rear",
        Direction.Left => "left",
        Direction.Right => "right",
        Direction.Down => "under",
        _ => "upper",
    };

    private Part? Part(PartId id) => job.Parts.FirstOrDefault(p => p.Id == id);

    private Job With(Part part) => job with { Parts = [.. job.Parts.Select(p => p.Id == part.Id ? part : p)] };

    private Job WithJoint(Joint joint) => job with { Joints = [.. job.Joints.Select(j => j.Id == joint.Id ? joint : j)] };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
