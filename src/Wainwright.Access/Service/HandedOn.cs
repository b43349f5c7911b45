using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Hands on what was learned of a van to the same van with one change, where the change does not touch it.</summary>
/// <remarks>
/// A way stays a way when parts get smaller. A wall stays a wall when it names none of what got smaller: with that gone
/// altogether it held just as well. A board with a lid cut out of it fills the same room as before as long as both are in, so
/// in every sentence the board becomes board and lid.
/// </remarks>
internal sealed class HandedOn
{
    private readonly Scene before, after;
    private readonly HashSet<PartId> changed;
    private readonly HashSet<JointId> joints;
    private readonly HashSet<LineId> lines;
    private readonly List<int> lids;
    private readonly Dictionary<string, int> now;
    private readonly ItemSet changedOut;

    private HandedOn(Scene before, Scene after)
    {
        (this.before, this.after) = (before, after);
        now = ItemKey.Index(after);
        // an edit makes a new entry of what it changes and leaves the others the very same
        changed = [.. Changed(before.Job.Parts, after.Job.Parts).Select(p => p.Id)];
        joints = [.. Changed(before.Job.Joints, after.Job.Joints).Select(j => j.Id)];
        lines = [.. Changed(before.Job.Lines, after.Job.Lines).Select(l => l.Id)];
        lids = [.. after.Job.Parts.Where(p => before.PartOf(p.Id) is null).Select(p => after.OutItem(p.Id))];
        changedOut = ItemSet.Of(before.Items.Count, Enumerable.Range(0, before.Items.Count).Where(i => before.Items[i] is IsOut { Part: var part } && changed.Contains(part.Id)));
    }

    /// <param name="before">The van before.</param>
    /// <param name="after">The van after a change by which no part grew.</param>
    public static void To(Inquiry before, Inquiry after)
    {
        var hand = new HandedOn(before.Scene, after.Scene);
        for (var item = 0; item < before.Scene.Items.Count; item++)
            if (hand.IsAskedTheSame(before.Scene.Items[item]) && hand.now.TryGetValue(ItemKey.Of(before.Scene.Items[item]), out var same))
                foreach (var reply in before.Planner.Known(item))
                    if (hand.Now(reply) is { } still) after.Planner.Know(same, still);
    }

    private static IEnumerable<T> Changed<T>(IEnumerable<T> before, IEnumerable<T> after) where T : class
    {
        var kept = after.ToHashSet(ReferenceEqualityComparer.Instance);
        return before.Where(x => !kept.Contains(x));
    }

    private bool IsAskedTheSame(Item item) => item switch
    {
        Undo { Joint: var joint } => !joints.Contains(joint.Id) && !before.HeldBy(joint).SelectMany(p => before.RestsOn(p).Append(p)).Any(p => changed.Contains(p.Id)),
        Disconnect end => !lines.Contains(end.Line.Id) && !(end.End.Part is { } at && changed.Contains(at)),
        TakeOut load => (lines.Count == 0 || item.AnyOf.Count == 0) && !load.Load.Any(p => changed.Contains(p.Id)),
        TakePiece piece => (lines.Count == 0 || item.AnyOf.Count == 0) && !changed.Contains(piece.Part.Id),
        HandOn hand => !changed.Contains(hand.Part.Id),
        EyeOn eye => !changed.Contains(eye.Part.Id),
        _ => false,
    };

    private Reply? Now(Reply reply) => reply switch
    {
        Free { Way: var way } => Translated(way) is { } still ? new Free(still) : null,
        Held { Wall: var wall } => Wall(wall) is { } still ? new Held(still) : null,
        _ => null,
    };

    private ItemSet? Wall(ItemSet wall) => lids.Count == 0 && wall.Meets(changedOut) ? null : Translated(wall);

    private ItemSet? Translated(ItemSet set)
    {
        var there = new ItemSet(after.Items.Count);
        foreach (var item in set)
        {
            if (!now.TryGetValue(ItemKey.Of(before.Items[item]), out var same)) return null;
            there.Add(same);
        }
        if (set.Meets(changedOut))
            foreach (var lid in lids) there.Add(lid);
        return there;
    }
}
