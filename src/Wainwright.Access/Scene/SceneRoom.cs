using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>One question of room: does it pass, is it reached, when these are gone? The second set is of what will stay, to be named first in walls.</summary>
internal delegate Answer RoomQuestion(ItemSet gone, ItemSet stays);

/// <summary>The room of a scene: whether a load passes, and whether hand and tool get to a fixing.</summary>
internal sealed class SceneRoom
{
    private const int MostLandingMm = 8192; // longer than any load
    private const int PeelMm = 50; // a soft sheet is free when it comes this far off as a whole; common practice, no source

    private readonly Scene scene;
    private readonly bool optimistic;
    private readonly Shell shell;
    private readonly Fit fit;
    private readonly List<(Part Part, Obstacle Obstacle)> standing = [];
    private readonly Dictionary<int, RoomQuestion[]> questions = [];
    private readonly HandReach reach;
    private readonly Sight sight;
    private readonly Crowd crowd;
    private readonly Tilts tilts;

    /// <param name="scene">The scene.</param>
    /// <param name="optimistic">Whether round and slanting shapes are taken as small as they can be.</param>
    /// <param name="like">The room of the same scene whose tilted ways are known here too; absent to look for them.</param>
    public SceneRoom(Scene scene, bool optimistic, SceneRoom? like = null)
    {
        (this.scene, this.optimistic) = (scene, optimistic);
        shell = VanShell.ForParts(scene.Job.Vehicle);
        fit = new(optimistic ? 0 : scene.Options.ClearanceMm, scene.Options.ShaveMm);
        foreach (var part in scene.Standing)
            foreach (var group in part.Solids.GroupBy(s => scene.OutItem(part, s)))
                standing.Add((part, new(group.Key, Boxes(PartBody.Of(group)))));
        crowd = new Crowd(VanShell.ForHands(scene.Job.Vehicle), standing, scene.Items.Count);
        reach = new(crowd, scene.Options.Person);
        sight = new(crowd, scene.Options.Person);
        tilts = like?.tilts ?? new(scene, this);
    }

    /// <summary>Whether an item can be done when these are done; needs are not asked here.</summary>
    public Reply Ask(int item, ItemSet done, ItemSet stays)
    {
        var way = new ItemSet(done.Size);
        foreach (var group in scene.Items[item].AnyOf)
        {
            var first = Array.Find(group, done.Has);
            if (!Array.Exists(group, done.Has)) return new Held(ItemSet.Of(done.Size, group));
            way.Add(first);
        }
        foreach (var question in QuestionsOf(item))
            switch (question(done, stays))
            {
                case WayOut out_:
                    way.AddAll(out_.Through);
                    break;
                case Stuck stuck:
                    return new Held(stuck.Wall);
            }
        // what an item needs in every plan is told to the planner apart
        return new Free(way);
    }

    /// <summary>The way a load goes when these are out; nothing where its room is not modelled.</summary>
    public WayOut? WayOf(int item, ItemSet done) =>
        MoverOf(scene.Items[item])?.ShortWay(done) ?? FoldedOf(scene.Items[item])?.ShortWay(done) ?? (TiltedFor(item, done) is { } tilted ? AsWay(tilted) : null);

    /// <summary>The tilted ways known of this scene's loads.</summary>
    public Tilts Tilts => tilts;

    /// <summary>What is known of getting a load out at any angle with everything else gone; nothing where that was no question.</summary>
    public TiltTried? TiltTriedFor(int item) => IsStiff(item) ? tilts.TriedFor(item) : null;

    /// <summary>The size of a load that does not go as it lies when these are out but folded, from the origin; then its way's shifts are places.</summary>
    public Box? FoldedFor(int item, ItemSet done) =>
        FoldedOf(scene.Items[item]) is { } folded && MoverOf(scene.Items[item])!.ShortWay(done) is null ? folded.Bounds : null;

    /// <summary>Whether a load that goes when these are out would not go with some room on every side.</summary>
    public bool IsTight(int item, ItemSet done)
    {
        if (scene.Items[item] is TakeOut { Part.FoldsTo: not null } || MoverOf(scene.Items[item]) is null) return false;
        var roomy = fit with { ClearanceMm = Math.Max(fit.ClearanceMm, scene.Options.TightBelowMm) };
        if (TiltedFor(item, done) is { } tilted && MoverOf(scene.Items[item])!.Ask(done, new(done.Size)) is Stuck) return tilted.ClearMm < roomy.ClearanceMm;
        return Moving(scene.Items[item], roomy)!.Ask(done, new(done.Size)) is Stuck;
    }

    /// <summary>What stops a load first in each direction when these are out.</summary>
    public IReadOnlyList<Hindrance> Hindrances(int item, ItemSet gone) => MoverOf(scene.Items[item])?.Hindrances(gone) ?? [];

    /// <summary>What stands round a part when these are out, contact allowed.</summary>
    public IReadOnlyList<Hindrance> Hindrances(Part part, ItemSet gone) => MoverOf([part], part.Solids, fit with { ClearanceMm = 0 })?.Hindrances(gone) ?? [];

    /// <summary>What stands round a part with nothing removed, contact allowed.</summary>
    public IReadOnlyList<Hindrance> Hindrances(Part part) =>
        MoverOf([part], part.Solids, fit with { ClearanceMm = 0 })?.Hindrances(new(scene.Items.Count)) ?? [];

    /// <summary>The opening that a load comes nearest to passing, in its best attitude, and how much it is too large.</summary>
    public (string? Opening, int? ShortMm) NearestOpening(int item)
    {
        if (MoverOf(scene.Items[item]) is not { } mover || shell.Gaps.Count == 0) return (null, null);
        var nearest = shell.Gaps.Select(g => (g.Name, ShortMm: g.ShortFor(mover.Bounds))).MinBy(g => g.ShortMm);
        return (nearest.Name, nearest.ShortMm);
    }

    /// <summary>Whether inner shapes could give another answer.</summary>
    public bool IsExact => fit.ClearanceMm == 0 && scene.Standing.All(p => p.Outside || PartBody.Of(p.Solids).IsExact);

    /// <summary>Whether a joint has a fixing that the modelled tools only get to past the parts it holds.</summary>
    public bool IsOnTrial(Joint joint) => reach.OnTrial.Contains(joint.Id);

    /// <summary>Whether a joint has a fixing that no arm of the person chosen gets to, though hand and tool would.</summary>
    public bool IsArmOnTrial(Joint joint) => reach.ArmOnTrial.Contains(joint.Id);

    /// <summary>Whether only a hand without an arm modelled behind it gets to a part.</summary>
    public bool IsHandAlone(Part part) => reach.IsHandAlone(part.Id);

    /// <summary>How the tools fit at a joint's fixings when these are gone.</summary>
    public IEnumerable<ToolFit> ToolFits(Joint joint, ItemSet gone) => new ToolRoom(scene, crowd).Of(joint, gone);

    /// <summary>Which share of people reach a part, or the fixings of a joint, when these are gone.</summary>
    public WhoReaches Who(Part part, ItemSet gone) => WhoReaches.Of(who => reach.Reaches(part, gone, new Arm(crowd, who)));

    /// <summary>Which share of people reach a part, or the fixings of a joint, when these are gone.</summary>
    public WhoReaches Who(Joint joint, ItemSet gone) => WhoReaches.Of(who => reach.Reaches(joint, scene.HeldBy(joint), gone, new Arm(crowd, who)));

    /// <summary>The lines of sight to a part.</summary>
    public Approach SightOf(Part part) => sight.Of(part);

    /// <summary>By how much the arm of the person chosen is too short for a part when these are gone, up to a limit [mm]; absent when that is not what is missing.</summary>
    public int? ArmShortMm(Part part, ItemSet gone, int upToMm)
    {
        bool With(int mm) => reach.Reaches(part, gone, new Arm(crowd, scene.Options.Person with { UpperArmLongMm = scene.Options.Person.UpperArmLongMm + mm }));
        if (With(0) || !With(upToMm)) return null;
        var (low, high) = (0, upToMm);
        while (high - low > 1)
            if (With((low + high) / 2)) high = (low + high) / 2;
            else low = (low + high) / 2;
        return high;
    }

    /// <summary>Items whose parts overlap this load in the model by more than a measuring error, and by how much.</summary>
    public IReadOnlyList<(int Item, int OverlapMm)> FoundWithin(int item) => MoverOf(scene.Items[item])?.FoundWithin(new(scene.Items.Count)) ?? [];

    /// <summary>All that is asked of the room before an item can be done: each must say yes.</summary>
    public RoomQuestion[] QuestionsOf(int item)
    {
        if (questions.TryGetValue(item, out var known)) return known;
        return questions[item] = [.. scene.Items[item] switch
        {
            TakeOut { Part.FoldsTo: not null, With.Count: 0 } load when MoverOf(load) is not null => [Soft(load)],
            TakeOut or TakePiece => MoverOf(scene.Items[item]) is { } mover ? [Stiff(item, mover)] : [],
            Undo undo => reach.Of(undo.Joint, scene.HeldBy(undo.Joint), [.. scene.HeldBy(undo.Joint).SelectMany(p => scene.RestsOn(p).Append(p)).Distinct()]),
            Disconnect end => reach.Of(end.Line, end.End, end.IsFrom, end.End.Part is { } at ? scene.PartOf(at) : null),
            HandOn hand => [reach.Touching(hand.Part)],
            EyeOn { Part.Outside: false } eye => [sight.Of(eye.Part).Ask],
            _ => Enumerable.Empty<RoomQuestion>(),
        }];
    }

    /// <summary>A soft part goes as it lies, or comes off its place as a whole and is folded there.</summary>
    private RoomQuestion Soft(TakeOut load)
    {
        var stiff = MoverOf(load)!;
        var peeled = Mover.ComingAway(Boxes(PartBody.Of(load.Part.Solids)), PeelMm, Others([load.Part]), shell, fit);
        var folded = FoldedOf(load)!;
        return (gone, stays) =>
        {
            var asItLies = stiff.Ask(gone, stays);
            if (asItLies is WayOut) return asItLies;
            var (off, away) = (peeled.Ask(gone, stays), folded.Ask(gone, stays));
            if (off is WayOut first && away is WayOut then)
            {
                var through = first.Through.Copy();
                through.AddAll(then.Through);
                return then with { Through = through };
            }
            var wall = ((Stuck)asItLies).Wall.Copy();
            wall.AddAll(((off as Stuck) ?? (Stuck)away).Wall);
            return new Stuck(wall);
        };
    }

    /// <summary>A stiff load goes by exact moves, or by a tilted way that was found.</summary>
    private RoomQuestion Stiff(int item, Mover mover) => (gone, stays) =>
    {
        var exact = mover.Ask(gone, stays);
        if (exact is not Stuck stuck)
            // taken small, a round thing may seem to pass where the ball in it shows that it does not
            return optimistic && tilts.TriedFor(item) is { IsImpossible: true } ? new Stuck(new(gone.Size)) : exact;
        var wall = stuck.Wall.Copy();
        foreach (var tilted in tilts.WaysOf(item))
        {
            var missing = tilted.Through.Without(gone);
            if (missing.IsEmpty) return AsWay(tilted);
            if (!wall.Meets(missing)) wall.Add(missing.FirstOrDefault(stays.Has, missing.First()));
        }
        return new Stuck(wall);
    };

    /// <summary>Whether it is a load whose room is modelled and that does not fold.</summary>
    public bool IsStiff(int item) => scene.Items[item] switch
    {
        TakeOut { Part.FoldsTo: not null, With.Count: 0 } => false,
        TakeOut or TakePiece => MoverOf(scene.Items[item]) is not null,
        _ => false,
    };

    /// <summary>Whether a load does not go by exact moves with these gone; no where its room is not modelled.</summary>
    public bool IsStuckWithAllGone(int item, ItemSet all) => scene.Items[item] is TakeOut { Part.FoldsTo: not null, With.Count: 0 }
        ? QuestionsOf(item).Any(q => q(all, new(all.Size)) is Stuck)
        : MoverOf(scene.Items[item])?.Ask(all, new(all.Size)) is Stuck;

    /// <summary>Whether a load stays in, by slides and quarter turns and the tilted ways found, with everything else gone.</summary>
    public bool IsKeptInByTheVan(int item) => IsStiff(item) && QuestionsOf(item).Any(q => q(ItemSet.All(scene.Items.Count), new(scene.Items.Count)) is Stuck);

    private TiltedWay? TiltedFor(int item, ItemSet done) => IsStiff(item) ? tilts.WaysOf(item).FirstOrDefault(w => w.Through.IsWithin(done)) : null;

    private static WayOut AsWay(TiltedWay tilted) => new([.. tilted.Path.Select(p => new Waypoint(p.ShiftMm, []) { Attitude = p.Attitude })], tilted.Through, tilted.Gap);

    /// <summary>Where a load does not go with everything else gone but would with more clear ground outside: the opening, and how much more.</summary>
    public LandingShort? LandingShortFor(int item)
    {
        if (!shell.Gaps.Any(g => g.LandingMm is not null) || scene.Items[item] is not (TakeOut or TakePiece)) return null;
        var all = ItemSet.All(scene.Items.Count);
        Gap? Leaves(int moreMm)
        {
            var (load, solids) = LoadOf(scene.Items[item]);
            return MoverOf(load, solids, fit, VanShell.ForParts(scene.Job.Vehicle, moreMm))?.ShortWay(all)?.Gap;
        }
        var (less, enough) = (0, MostLandingMm);
        if (Leaves(enough) is not { } gap || Leaves(less) is not null) return null;
        while (enough - less > 1)
        {
            var half = (less + enough) / 2;
            if (Leaves(half) is { } passed) (enough, gap) = (half, passed);
            else less = half;
        }
        return new(gap.Name, enough);
    }

    /// <summary>A search for tilted ways of a load, among everything else as it is.</summary>
    public Tilter TilterOf(int item, int clearanceMm)
    {
        var (load, solids) = LoadOf(scene.Items[item]);
        var own = new HashSet<Solid>(solids, ReferenceEqualityComparer.Instance);
        var beside = scene.Standing.Where(p => !load.Contains(p) || load.Count == 1).SelectMany(p => p.Solids.Where(s => !own.Contains(s)).Select(s => (scene.OutItem(p, s), PartBody.Exact(s))));
        return new(Boxes(PartBody.Of(solids)), [.. solids.Select(PartBody.Exact)], Beside(load, solids), [.. beside], shell, fit with { ClearanceMm = clearanceMm });
    }

    /// <summary>The proof that no motion takes a load out, whatever else is gone; nothing when the largest ball in it proves nothing.</summary>
    public TiltTried? BallOf(int item)
    {
        var (_, solids) = LoadOf(scene.Items[item]);
        var most = VanShell.AtMost(scene.Job.Vehicle);
        var loose = solids.Max(s => s.PlusMinusMm ?? scene.Options.ShaveMm) / 2;
        if (Ball.LargestIn([.. solids.Select(PartBody.Exact)], PartBody.Of(solids).Inner)?.Smaller(loose) is not { } ball) return null;
        if (ball.Leaves([], most, new(scene.Items.Count)) is not Stuck) return null;
        var nearest = most.Gaps.Select(g => (g.Name, ShortMm: ball.ShortFor(g))).OrderBy(g => g.ShortMm).FirstOrDefault();
        return new(true, 0, 2 * ball.RadiusMm, nearest.Name, nearest.Name is null ? null : nearest.ShortMm);
    }

    private readonly Dictionary<Item, Mover?> movers = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Item, Mover?> foldedMovers = new(ReferenceEqualityComparer.Instance);

    private Mover? MoverOf(Item item)
    {
        if (!movers.TryGetValue(item, out var known)) movers[item] = known = Moving(item, fit);
        return known;
    }

    private Mover? FoldedOf(Item item)
    {
        if (foldedMovers.TryGetValue(item, out var known)) return known;
        if (item is not TakeOut { Part.FoldsTo: { } size, With.Count: 0 } load || MoverOf(item) is null) return null;
        var (folded, within) = Folded.Best(Box.Around(Boxes(PartBody.Of(load.Part.Solids))), size, shell.Room);
        return foldedMovers[item] = Mover.Folded(folded, within, Others([load.Part]), shell);
    }

    private Mover? Moving(Item item, Fit with) => item is TakeOut or TakePiece && LoadOf(item) is var (load, solids) ? MoverOf(load, solids, with) : null;

    private static (IReadOnlyList<Part> Load, IReadOnlyList<Solid> Solids) LoadOf(Item item) => item switch
    {
        TakeOut load => ([.. load.Load], [.. load.Load.Where(p => !p.Outside).SelectMany(p => p.Solids)]),
        TakePiece piece => ([piece.Part], piece.Solids),
        _ => throw new ArgumentException("Only what is carried out is a load.", nameof(item)),
    };

    private Mover? MoverOf(IReadOnlyList<Part> load, IReadOnlyList<Solid> solids, Fit with, Shell? within = null)
    {
        if (load[0].Outside) return null; // it leaves outwards
        var boxes = Boxes(PartBody.Of(solids));
        if (boxes.Count == 0) return null;
        return new(boxes, Beside(load, solids), within ?? shell, load[0].LooseGoods ? with with { ClearanceMm = 0 } : with, Moves.SlidesAndQuarterTurns);
    }

    /// <summary>All but the load; for a piece of a part the other pieces too.</summary>
    private List<Obstacle> Beside(IReadOnlyList<Part> load, IReadOnlyList<Solid> solids)
    {
        var others = Others(load).ToList();
        if (load.Count == 1)
            foreach (var group in load[0].Solids.Except(solids).GroupBy(s => scene.OutItem(load[0], s)))
                others.Add(new(group.Key, Boxes(PartBody.Of(group))));
        return others;
    }

    private IReadOnlyList<Obstacle> Others(IReadOnlyList<Part> load) => [.. standing.Where(s => !load.Contains(s.Part)).Select(s => s.Obstacle)];

    private IReadOnlyList<Box> Boxes(Body body) => optimistic ? body.Inner : body.Outer;
}
