using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Why each item of a plan is in it: the item that could not be done without it.</summary>
internal sealed class Reasons(Scene scene, Planner planner, ItemSet given, IReadOnlyList<int> order, IReadOnlyList<int> targets, ItemSet allowed)
{
    public Because Of(int item)
    {
        var subject = item;
        // that a part counts as out is no reason; what waits for it is
        while (true)
        {
            if (targets.Contains(subject) || IsPieceOfTarget(subject)) return new(null, null, "wanted", true);
            var waiting = FirstWaiting(subject);
            if (scene.Items[waiting] is not (IsOut or Spoiled)) return Told(subject, waiting, InEveryPlan(item));
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
