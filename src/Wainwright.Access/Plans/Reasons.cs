using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Why each item of a plan is in it: the item that could not be done without it.</summary>
internal sealed class Reasons(Scene scene, Planner planner, ItemSet given, IReadOnlyList<Cut> cuts, IReadOnlyList<int> order, IReadOnlyList<int> targets, ItemSet allowed)
{
    public Because Of(int item)
    {
        var subject = item;
        // that a part counts as out is no reason; what waits for it is
        while (true)
        {
            if (targets.Contains(subject) || IsPieceOfTarget(subject)) return new(null, null, "wanted", true);
            var waiting = FirstWaiting(subject);
            if (scene.Items[waiting] is not (IsOut or Spoiled)) return Proved(Told(subject, waiting, InEveryPlan(item)), item, subject, waiting);
            subject = waiting;
        }
    }

    private bool IsPieceOfTarget(int item) => scene.Items[item] is IsOut { Piece: not null } piece && targets.Contains(scene.OutItem(piece.Part.Id));

    /// <summary>The first later item that stays undone without this one and waits for it directly.</summary>
    private int FirstWaiting(int item)
    {
        var all = given.Copy();
        foreach (var one in order) all.Add(one);
        var without = planner.Doable(all.Without(item));
        var before = given.Copy();
        foreach (var later in order)
        {
            if (later != item && !without.Has(later) && planner.WallOf(later, before) is not null) return later;
            if (later != item) before.Add(later);
        }
        throw new InvalidOperationException($"Item {item} is in the plan and nothing waits for it.");
    }

    private readonly ItemSet plan = ItemSet.Of(scene.Items.Count, order);

    /// <summary>The same with the sentence of the proof that asks for it and the wall it makes.</summary>
    private Because Proved(Because why, int item, int subject, int waiting)
    {
        // a load counts by what it takes out
        var own = ItemSet.Of(scene.Items.Count, item, subject);
        if (scene.Items[item] is TakeOut load) own.AddAll(ItemSet.Of(scene.Items.Count, load.Load.Select(p => scene.OutItem(p.Id))));
        var asks = cuts.Where(c => plan.Has(c.Item) && !own.Has(c.Item) && c.OneOf.Meets(own) && !c.OneOf.Without(own).Meets(plan))
            .OrderBy(c => c.Item == waiting ? 0 : targets.Contains(c.Item) ? 1 : 2).ThenBy(c => c.OneOf.Count).ThenBy(c => c.Item).FirstOrDefault();
        asks ??= Held(own, waiting);
        return why with
        {
            OneOf = asks is null ? [] : [.. asks.OneOf.OrderBy(i => own.Has(i) ? 0 : 1).Select(i => Wording.Subject(scene, scene.Items[i])).Distinct()],
            OneOfFor = asks is null ? null : Wording.Subject(scene, scene.Items[asks.Item]),
            Wall = why.Reason == OrderReason.Geometry ? [.. Met(own, waiting)] : [],
        };
    }

    /// <summary>What holds the waiting item when all of the plan is done that can be without these: as long as none of it is done, it waits.</summary>
    private Cut? Held(ItemSet own, int waiting)
    {
        var all = given.Copy();
        all.AddAll(plan);
        var wall = planner.WallOf(waiting, planner.Doable(all.Without(own)));
        return wall is not null && wall.Meets(own) && !wall.Without(own).Meets(plan) ? new(waiting, wall) : null;
    }

    /// <summary>How a load meets these when all before it is done but they stay.</summary>
    private IEnumerable<Blocking> Met(ItemSet own, int load)
    {
        if (Wording.PartOf(scene, scene.Items[load]) is not { } part) return [];
        var before = given.Copy();
        foreach (var earlier in order.TakeWhile(i => i != load)) before.Add(earlier);
        return scene.Room.Hindrances(load, before.Without(own)).Where(h => h.Item >= 0 && own.Has(h.Item))
            .Select(h => new Blocking(part.Id, PartBody.DirectionOf(h.Heading), scene.PartBehind(h.Item)?.Id, h.FreeMm, h.ShortMm, PartBody.DirectionOf(h.Dodge)));
    }

    private bool InEveryPlan(int item)
    {
        // a part may go in one of several ways; what counts is that it goes
        var deed = scene.Items[item] is TakeOut load ? scene.OutItem(load.Part.Id) : item;
        return !planner.CanReach(ItemSet.Of(scene.Items.Count, targets), allowed.Without(deed));
    }

    private Because Told(int item, int waiting, bool always)
    {
        var (it, for_) = (scene.Items[item], scene.Items[waiting]);
        var part = Wording.PartOf(scene, for_);
        var subject = Wording.Subject(scene, for_);
        var whole = for_ is TakePiece ? subject : Wording.Name(part);
        var own = Wording.PartOf(scene, it);
        Because Say(OrderReason reason, string words) => new(reason, part?.Id, words, always);
        return (it, for_) switch
        {
            (MakeSafe safe, _) => Say(OrderReason.Joint, $"{Wording.Name(safe.Medium)} must be safe before {subject} is touched"),
            (Undo undo, _) when part is not null && undo.Joint.Part != part.Id => Say(OrderReason.Joint, $"fixes {Wording.Name(own)} to {Wording.Name(part)}"),
            (Undo, _) => Say(OrderReason.Joint, $"holds {Wording.Name(part)}"),
            (Disconnect end, _) => Say(OrderReason.Joint, $"{end.Line.Name} is connected to {Wording.Name(part)} or runs through it"),
            (_, TakeOut load) when own is not null && own.StandsOn.Any(s => load.Load.Any(p => p.Id == s)) => Say(OrderReason.StandsOn, $"stands on {Wording.Name(part)}"),
            (_, TakeOut load) when own is not null && for_.Needs.Contains(item) => Say(OrderReason.StandsOn, $"would have to be carried with {Wording.Name(part)}"),
            (_, TakeOut or TakePiece) => Say(OrderReason.Geometry, $"{whole} cannot get past it"),
            (_, EyeOn) => Say(OrderReason.Reach, $"hides {subject}"),
            _ => Say(OrderReason.Reach, $"hand and tool do not get past it to {subject}"),
        };
    }
}
