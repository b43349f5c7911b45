using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What must be done before a load may leave, read from the job alone.</summary>
/// <param name="job">The job.</param>
/// <param name="alreadyOut">Parts that were out before the plan.</param>
internal sealed class WhatHolds(Job job, IReadOnlyList<PartId> alreadyOut)
{
    private readonly HashSet<PartId> gone = [.. alreadyOut];

    /// <summary>Joints undone so far.</summary>
    public HashSet<JointId> Undone { get; } = [];

    /// <summary>Ends of lines taken off so far, counted per line.</summary>
    public Dictionary<LineId, int> TakenOff { get; } = [];

    /// <summary>Media made safe so far.</summary>
    public HashSet<Medium> Safe { get; } = [];

    /// <summary>Parts out so far.</summary>
    public IReadOnlySet<PartId> Gone => gone;

    public void TookOut(IEnumerable<PartId> parts) => gone.UnionWith(parts);

    /// <summary>Whether a joint still holds: something of it stands, and neither end was out before.</summary>
    private bool Holds(Joint joint) => !Undone.Contains(joint.Id) && LabourTable.Counts(joint).Standing > 0
        && !alreadyOut.Contains(joint.Part) && !(joint.To is { } to && alreadyOut.Contains(to));

    public IEnumerable<string> Faults(IReadOnlyList<Part> load)
    {
        var ids = load.Select(p => p.Id).ToHashSet();
        foreach (var joint in job.Joints.Where(j => Holds(j) && ids.Contains(j.Part) != (j.To is { } to && ids.Contains(to))))
            yield return $"joint {joint.Id} still holds it";
        foreach (var above in job.Parts.Where(p => !ids.Contains(p.Id) && !gone.Contains(p.Id)))
        {
            if (above.StandsOn.Any(ids.Contains)) yield return $"{above.Id} {above.Name} still stands on it";
            if (above.CarriedOutWith is { } with && ids.Contains(with)) yield return $"{above.Id} {above.Name} would be carried with it and is not";
        }
        foreach (var line in job.Lines.Where(l => l.Part is not { } run || !gone.Contains(run)))
            if (Line(line, ids) is { } fault) yield return fault;
        foreach (var (part, device) in load.SelectMany(p => p.Devices.Select(d => (p, d))))
        {
            if (device is Battery && !Safe.Contains(Medium.Dc)) yield return "it is a battery and the low-voltage side is not made safe";
            if (device is AirHeater && !Safe.Contains(Medium.Exhaust)) yield return "it burns fuel and was not let cool";
            if (device is Tank { FilledL.Value: > 0 } tank && MustBeSafe(tank.Holds) && !LiftedOutFull(part, tank.Holds)) yield return $"it holds {Wording.Name(tank.Holds)} and is not drained";
        }
    }

    /// <summary>What must be safe before a joint is touched.</summary>
    public IEnumerable<string> Unsafe(JointId joint)
    {
        var on = job.Parts.FirstOrDefault(p => job.Joints.Any(j => j.Id == joint && j.Part == p.Id));
        return job.Lines.Where(l => (l.From.Joint == joint || l.To.Joint == joint) && !(on is not null && LiftedOutFull(on, l.Medium))).SelectMany(Unsafe);
    }

    // loose goods that hold water, fresh or grey, are cans: carried to be filled and emptied, never drained where they stand
    private static bool LiftedOutFull(Part part, Medium medium) =>
        part.LooseGoods && medium is (Medium.Water or Medium.Waste) && part.Devices.Any(d => d is Tank { Holds: Medium.Water or Medium.Waste });

    /// <summary>What must be safe before a line's end is taken off.</summary>
    public IEnumerable<string> Unsafe(Line line) => MustBeSafe(line.Medium) ? [$"{Wording.Name(line.Medium)} is not made safe before"] : [];

    private bool MustBeSafe(Medium medium) => LabourTable.Usual.MakingSafe.ContainsKey(medium) && !Safe.Contains(medium);

    private string? Line(Line line, HashSet<PartId> load)
    {
        bool Within(LineEnd end) => end.Part is { } part && load.Contains(part);
        var (from, to) = (Within(line.From), Within(line.To));
        if (line.Part is { } run && load.Contains(run))
            return (from || IsFree(line, line.From, line.To, 1)) && (to || IsFree(line, line.To, line.From, from ? 1 : 2)) ? null : $"{line.Name} is still connected";
        if (from != to) return IsFree(line, from ? line.From : line.To, from ? line.To : line.From, 1) ? null : $"{line.Name} is still connected to it";
        if (line.Through.Any(load.Contains) && !from) return IsFree(line, line.From, line.To, 1) || IsFree(line, line.To, line.From, 1) ? null : $"{line.Name} still runs through it";
        return null;
    }

    /// <summary>Whether an end is off: by its joint, by the far one for a fixed lead, or taken off as an end nobody had seen.</summary>
    private bool IsFree(Line line, LineEnd end, LineEnd far, int ends) =>
        (end.Joint is { } joint && Undone.Contains(joint)) || (end.Joint is null && far.Joint is { } other && Undone.Contains(other)) || TakenOff.GetValueOrDefault(line.Id) >= ends;
}
