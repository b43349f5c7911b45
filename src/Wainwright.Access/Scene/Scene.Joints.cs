using Wainwright.Fitout;

namespace Wainwright.Access;

internal sealed partial class Scene
{
    private void AddJoint(Joint joint)
    {
        if (LabourTable.Counts(joint).Standing == 0) return; // nothing left to undo
        if (already.Contains(joint.Part) || (joint.To is { } to && already.Contains(to))) return;
        var (out_, back, origin) = options.Labour.Of(joint);
        undo[joint.Id] = Add(new Undo(joint) { Price = new(out_, back, 0), Origin = origin });
        if (joint.Release.Destructive && parts.TryGetValue(joint.Part, out var part)) items[undo[joint.Id]].Needs.Add(Spoil(part));
        var owner = parts.GetValueOrDefault(joint.Part);
        foreach (var line in job.Lines.Where(l => l.From.Joint == joint.Id || l.To.Joint == joint.Id))
            if (owner is null || !Can.FreesHose(owner, line)) NeedSafe(undo[joint.Id], line.Medium);
    }

    /// <summary>
    /// The item that frees a part of a line that ends at it: the joint there; for a fixed lead the joint at its far end, the
    /// lead leaving with the part; where neither is recorded, an end nobody has seen.
    /// </summary>
    private int End(Line line, LineEnd end, bool isFrom)
    {
        if (end.Joint is { } joint && undo.TryGetValue(joint, out var known)) return known;
        var far = isFrom ? line.To : line.From;
        if (end.Joint is null && far.Joint is { } farJoint && undo.TryGetValue(farJoint, out known)) return known;
        if (ends.TryGetValue((line.Id, isFrom), out var same)) return same;
        var item = Add(new Disconnect(line, end, isFrom)
        {
            Price = new(options.Labour.UnseenLineEnd, options.Labour.UnseenLineEnd, 0),
            Origin = $"nobody has seen how it is connected; {Estimate}",
        });
        NeedSafe(item, line.Medium);
        return ends[(line.Id, isFrom)] = item;
    }

    private void NeedSafe(int item, Medium medium)
    {
        if (options.Labour.MakingSafe.ContainsKey(medium)) items[item].Needs.Add(Safe(medium));
    }

    private int Safe(Medium medium)
    {
        if (safe.TryGetValue(medium, out var known)) return known;
        var done = job.Isolation.FirstOrDefault(s => s.Medium == medium && s.DoneAt is not null);
        var (out_, back) = options.Labour.MakingSafe[medium];
        return safe[medium] = Add(new MakeSafe(medium, done)
        {
            // done at intake for the whole job, and brought back with it
            Price = done is null ? new(out_, back, 0) : default,
            Origin = done is null ? Estimate : "recorded as done",
        });
    }

    private int Spoil(Part part)
    {
        if (spoiled.TryGetValue(part.Id, out var known)) return known;
        var kept = part.Fate switch { Fate.Keep => 1, Fate.Scrap => 0, _ => options.Labour.UndecidedIsKept };
        var makeGood = part.RenewalCost is { } price && job.RatePerHour is > 0 and { } rate
            ? (double)(price / rate * 60)
            : options.Labour.MakeGoodUnpriced;
        return spoiled[part.Id] = Add(new Spoiled(part)
        {
            Price = new(0, 0, kept * makeGood),
            Origin = part.RenewalCost is null ? Estimate : "price of a new one at the workshop's rate",
        });
    }
}
