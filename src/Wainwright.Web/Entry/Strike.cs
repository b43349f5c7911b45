using Wainwright.Fitout;

namespace Wainwright.Web.Entry;

/// <summary>Taking a part or a joint out of the record with everything that names it, as one change.</summary>
internal static class Strike
{
    /// <summary>Edits that take a joint out: lines that ended at it end at a joint nobody has seen.</summary>
    public static IEnumerable<Edit> Joint(Job job, JointId joint) => Without(job, [], [joint]);

    /// <summary>Edits that take a part out with its joints. What rests on it, ends at it or shows it stays, without naming it.</summary>
    public static IEnumerable<Edit> Part(Job job, PartId part) =>
        Without(job, [part], [.. job.Joints.Where(j => j.Part == part || j.To == part).Select(j => j.Id)]);

    /// <summary>Edits that take a line out: findings that named it stay, without it.</summary>
    public static IEnumerable<Edit> Line(Job job, LineId line)
    {
        foreach (var f in job.Findings.Where(f => f.Lines.Contains(line)))
            yield return Edit.Put(job, "findings", f.Id.Text, f with { Lines = [.. f.Lines.Where(l => l != line)] });
        yield return Edit.TakeOut(job, "lines", line.Text);
    }

    private static Device Without(Device device, HashSet<PartId> gone) => device switch
    {
        ResidualCurrentDevice r when r.Protects.Any(gone.Contains) => r with { Protects = [.. r.Protects.Where(p => !gone.Contains(p))] },
        Outlet { FedBy: { } fed } o when gone.Contains(fed) => o with { FedBy = null },
        _ => device,
    };

    private static IEnumerable<Edit> Without(Job job, HashSet<PartId> parts, HashSet<JointId> joints)
    {
        PartId? Kept(PartId? id) => id is { } p && parts.Contains(p) ? null : id;
        JointId? KeptJoint(JointId? id) => id is { } j && joints.Contains(j) ? null : id;
        LineEnd End(LineEnd end) => end with { Part = Kept(end.Part), Joint = KeptJoint(end.Joint) };

        foreach (var p in job.Parts.Where(p => !parts.Contains(p.Id) && (p.StandsOn.Any(parts.Contains) || p.TakeOutFirst.Any(t => parts.Contains(t.Part)) || (p.CarriedOutWith is { } w && parts.Contains(w)) || p.Devices.Any(d => Without(d, parts) != d))))
            yield return Edit.Put(job, "parts", p.Id.Text, p with
            {
                StandsOn = [.. p.StandsOn.Where(s => !parts.Contains(s))],
                TakeOutFirst = [.. p.TakeOutFirst.Where(t => !parts.Contains(t.Part))],
                CarriedOutWith = Kept(p.CarriedOutWith),
                Devices = [.. p.Devices.Select(d => Without(d, parts))],
            });
        foreach (var l in job.Lines)
        {
            var kept = l with { Part = Kept(l.Part), From = End(l.From), To = End(l.To), Through = [.. l.Through.Where(t => !parts.Contains(t))], ProtectedBy = Kept(l.ProtectedBy) };
            if (kept.Part != l.Part || kept.From != l.From || kept.To != l.To || kept.Through.Count != l.Through.Count || kept.ProtectedBy != l.ProtectedBy)
                yield return Edit.Put(job, "lines", l.Id.Text, kept);
        }
        foreach (var p in job.Points.Where(p => Kept(p.Part) != p.Part)) yield return Edit.Put(job, "points", p.Id.Text, p with { Part = null });
        foreach (var f in job.Findings.Where(f => f.Parts.Any(parts.Contains) || f.Joints.Any(joints.Contains)))
            yield return Edit.Put(job, "findings", f.Id.Text, f with { Parts = [.. f.Parts.Where(p => !parts.Contains(p))], Joints = [.. f.Joints.Where(j => !joints.Contains(j))] });
        foreach (var p in job.Photos.Where(p => p.Parts.Any(parts.Contains)))
            yield return Edit.Put(job, "photos", p.Hash.Text, p with { Parts = [.. p.Parts.Where(x => !parts.Contains(x))] });
        foreach (var s in job.Stages.Where(s => s.PartsOut.Any(parts.Contains)))
            yield return Edit.Put(job, "stages", s.Id.Text, s with { PartsOut = [.. s.PartsOut.Where(x => !parts.Contains(x))] });
        foreach (var b in job.Bags.Where(b => Kept(b.Part) != b.Part || KeptJoint(b.Joint) != b.Joint))
            yield return Edit.Put(job, "bags", b.Id, b with { Part = Kept(b.Part), Joint = KeptJoint(b.Joint) });
        foreach (var joint in joints) yield return Edit.TakeOut(job, "joints", joint.Text);
        foreach (var part in parts) yield return Edit.TakeOut(job, "parts", part.Text);
    }
}
