using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Turns the outcome of a search into steps a fitter can follow.</summary>
internal sealed class PlanWriter(
    Scene scene, Planner planner, Prices prices, ItemSet given, IReadOnlyList<RemovalStep> doneBefore, IReadOnlyList<PartId> asked, IReadOnlyList<int> targets, ItemSet allowed, AccessKind kind)
{
    public RemovalPlan Write(Outcome outcome)
    {
        var solved = outcome as Solved;
        var doubt = new Doubt(scene);
        IReadOnlyList<string> contradictions = outcome is Unreachable stuck ? [.. doubt.Overlaps(stuck.Walls.Keys)] : [];
        var order = solved is null ? [] : new StepOrder(scene, planner, given, solved.Order).Of(targets);
        var steps = Steps(order, solved?.Proof.Cuts ?? []);
        var (outMinutes, backMinutes, damageMinutes) = (steps.Sum(s => s.OutMinutes), steps.Sum(s => s.BackMinutes), steps.Sum(s => s.DamageMinutes));
        // the search counts whole tenths of a second: their rounding must not set the bound beside the sum of the steps
        var total = outMinutes + backMinutes + damageMinutes;
        return new()
        {
            Targets = asked,
            Kind = kind,
            ReachOnly = kind is not AccessKind.Remove,
            Proof = solved is null ? (contradictions.Count > 0 ? Proof.CannotTell : Proof.ProvedUnreachable) : solved.IsProved ? Proof.ProvedCheapest : Proof.BestFound,
            LowerBoundMinutes = solved is null ? 0 : solved.IsProved ? total : scene.Options.Objective == Objective.LeastLabour ? Math.Min(solved.LowerBound / TenthsOfASecond.InAMinute, total) : 0,
            Sought = solved is null ? null : new(scene.Options.Objective, prices.Of(solved.Cost), prices.Of(solved.LowerBound)),
            OutMinutes = outMinutes,
            BackMinutes = backMinutes,
            DamageMinutes = damageMinutes,
            Steps = steps,
            BlockedBy = [.. asked.Where(scene.IsStanding).SelectMany(Blockings)],
            HeldForGood = outcome is Unreachable none ? [.. WhatHolds(none)] : [],
            Assumes = Doubt.Assumptions,
            ToMeasure = [.. doubt.ToMeasure(steps, outcome).Distinct()],
            Cautions = [.. Doubt.Cautions, .. steps.SelectMany(s => s.Cautions).Distinct()],
            Order = [.. order.Select(i => ItemKey.Of(scene.Items[i]))],
            Effort = new(outcome.Questions, outcome.MasterSolves, solved?.Proof.Cuts.Count ?? 0),
        };
    }

    private List<RemovalStep> Steps(IReadOnlyList<int> order, IReadOnlyList<Cut> cuts)
    {
        var reasons = new Reasons(scene, planner, given, cuts, order, targets, allowed);
        var steps = new List<RemovalStep>();
        var done = given.Copy();
        foreach (var item in order)
        {
            if (Step(item, done, reasons.Of(item), steps.Count + 1) is { } step) steps.Add(step);
            done.Add(item);
        }
        return new Holding(scene, doneBefore).In(WithDamage(steps, order));
    }

    /// <summary>What kind of work an item is; none where something only counts as done.</summary>
    internal static StepKind? KindOf(Item item) => item switch
    {
        MakeSafe => StepKind.MakeSafe,
        Undo => StepKind.Undo,
        Disconnect => StepKind.Disconnect,
        TakeOut => StepKind.TakeOut,
        TakePiece => StepKind.TakePiece,
        HandOn => StepKind.Reach,
        EyeOn => StepKind.See,
        _ => null, // that a part counts as out, or as spoiled, is no work
    };

    private RemovalStep? Step(int index, ItemSet done, Because why, int number)
    {
        var item = scene.Items[index];
        if (KindOf(item) is not { } kind) return null;
        var way = item is TakeOut or TakePiece ? scene.Room.WayOf(index, done) : null;
        return new()
        {
            Number = number,
            Kind = kind,
            Part = Wording.PartOf(scene, item)?.Id,
            Joint = (item as Undo)?.Joint.Id,
            Line = (item as Disconnect)?.Line.Id,
            Medium = (item as MakeSafe)?.Medium,
            Piece = (item as TakePiece)?.Name,
            Key = ItemKey.Of(item),
            Action = Wording.Action(scene, item),
            OutMinutes = item.Price.Out,
            BackMinutes = item.Price.Back,
            DamageMinutes = 0,
            Origin = item.Origin,
            People = (item as TakeOut)?.People ?? 1,
            Lift = item is TakeOut lifted ? Lift.Of([.. lifted.Load], scene.Options.Labour.OnePersonKg) : null,
            Why = why,
            Through = way?.Gap?.Name,
            Path = [.. way?.Path.Select(PointOf) ?? []],
            FoldedMm = item is TakeOut && scene.Room.FoldedFor(index, done) is { } folded ? new Place(folded.X1, folded.Y1, folded.Z1) : null,
            OnTrial = item is Undo undone && scene.Room.IsOnTrial(undone.Joint),
            With = [.. (item as TakeOut)?.With.Select(p => p.Id) ?? []],
            Licence = Wording.Licence(scene, item),
            Cautions = [.. Wording.Cautions(scene, item), .. Tilted(way), .. Tight(index, done)],
        };
    }

    private IEnumerable<string> Tight(int item, ItemSet done)
    {
        if (scene.Items[item] is TakeOut or TakePiece && scene.Room.IsTight(item, done))
            yield return $"{Wording.Subject(scene, scene.Items[item])} goes with less than {scene.Options.TightBelowMm} mm to spare: measure and try before relying on it.";
    }

    private static IEnumerable<string> Tilted(WayOut? way)
    {
        if (way?.Path.Any(p => p.Attitude is not null) == true)
            yield return "Goes tilted: the way was found by trying motions in the model. Walk it through slowly with one person at each end, and mind liquids and loose parts in it.";
    }

    /// <summary>Expected damage is shown at the first step that does it.</summary>
    private List<RemovalStep> WithDamage(List<RemovalStep> steps, IReadOnlyList<int> order)
    {
        foreach (var spoiled in order.Select(i => scene.Items[i]).OfType<Spoiled>())
        {
            var at = steps.FindIndex(s => s.Joint is { } id && scene.Job.Joints.First(j => j.Id == id) is { Release.Destructive: true } j && j.Part == spoiled.Part.Id);
            steps[at] = steps[at] with { DamageMinutes = spoiled.Price.Damage };
        }
        return steps;
    }

    private IEnumerable<Blocking> Blockings(PartId target) =>
        scene.Room.Hindrances(scene.PartOf(target)!).Select(h => new Blocking(
            target, PartBody.DirectionOf(h.Heading), scene.PartBehind(h.Item)?.Id, h.FreeMm, h.ShortMm, PartBody.DirectionOf(h.Dodge)));

    /// <summary>What holds what, from the targets on. A load that the van alone keeps in waits for nothing else, whatever else may stand round it.</summary>
    private IEnumerable<HeldFor> WhatHolds(Unreachable none)
    {
        var waiting = targets.Where(none.Walls.ContainsKey).ToList();
        for (var i = 0; i < waiting.Count; i++)
        {
            var wall = scene.Room.IsKeptInByTheVan(waiting[i]) ? new(scene.Items.Count) : none.Walls[waiting[i]];
            waiting.AddRange(wall.Where(w => none.Walls.ContainsKey(w) && !waiting.Contains(w)));
            if (scene.Items[waiting[i]] is not (IsOut or Spoiled)) yield return Held(waiting[i], wall);
        }
    }

    private HeldFor Held(int item, ItemSet wall)
    {
        var (opening, shortMm) = wall.IsEmpty ? scene.Room.NearestOpening(item) : (null, null);
        return new(
            Wording.Subject(scene, scene.Items[item]), Wording.PartOf(scene, scene.Items[item])?.Id,
            [.. wall.Select(i => Wording.Subject(scene, scene.Items[i]))],
            [.. wall.Select(i => Wording.PartOf(scene, scene.Items[i])?.Id).OfType<PartId>().Distinct()],
            opening, shortMm)
        {
            Tilt = wall.IsEmpty ? scene.Room.TiltTriedFor(item) : null,
            Landing = wall.IsEmpty ? scene.Room.LandingShortFor(item) : null,
        };
    }

    private static PathPoint PointOf(Waypoint w) => new(PartBody.PlaceOf(w.ShiftMm), [.. w.TurnedAbout.Select(a => (Axis)a)])
    {
        Turned = w.Attitude is { } a ? new(a.X, a.Y, a.Z, a.W) : null,
    };
}
