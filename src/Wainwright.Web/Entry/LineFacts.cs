using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>A pipe, hose, cable, duct or flue, fact by fact.</summary>
public static class LineFacts
{
    /// <summary>The facts in the order one follows a line in the van.</summary>
    public static IReadOnlyList<Fact<Line>> Of(Line line, Job job, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(job);
        var facts = new FactsOf<Line>(measures);
        facts.Text("Name", line.Name, t => line with { Name = t! }, needed: true);
        facts.Choice("What flows in it", line.Medium, v => line with { Medium = v });
        facts.Choice("Build", line.Build, v => line with { Build = v });
        End(facts, "Comes from", line.From, job, e => line with { From = e });
        End(facts, "Goes to", line.To, job, e => line with { To = e });
        facts.Parts("Passes through", line.Through, v => line with { Through = v });
        facts.Part("Protected by", line.ProtectedBy, v => line with { ProtectedBy = v }, "fuse or valve");
        facts.Part("Is itself part", line.Part, v => line with { Part = v }, "none");
        facts.Length("Length with slack", line.LengthMm, v => line with { LengthMm = v });
        facts.Length("Clear bore", line.BoreMm, v => line with { BoreMm = v });
        facts.Length("Outside diameter", line.OutsideMm, v => line with { OutsideMm = v });
        if (line.Build == LineBuild.Cable || line.ConductorMm2 is not null || line.Conductors is not null)
        {
            facts.Number("Section of one conductor, mm²", line.ConductorMm2, v => line with { ConductorMm2 = v });
            facts.Whole("Conductors", line.Conductors, v => line with { Conductors = v });
        }
        facts.Text("Made of", line.Material, v => line with { Material = v });
        facts.Day("Date of make printed on it", line.MadeOn, v => line with { MadeOn = v });
        facts.Choice("How it is known", line.Known, v => line with { Known = v });
        facts.Route("Route", line.Route, v => line with { Route = v });
        facts.Text("Note", line.Note, v => line with { Note = v }, isLong: true);
        return [.. facts];
    }

    /// <summary>An end as typed: a part's id, or words for what is no part.</summary>
    public static LineEnd End(string? text, Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var typed = (text ?? "").Trim();
        return typed.Length == 0 ? new() : job.Parts.FirstOrDefault(p => p.Id.Text.Equals(typed, StringComparison.OrdinalIgnoreCase)) is { } part ? new() { Part = part.Id } : new() { Where = typed };
    }

    private static void End(FactsOf<Line> facts, string label, LineEnd end, Job job, Func<LineEnd, Line> with)
    {
        facts.Text(label, end.Part?.Text ?? end.Where, t => with(End(t, job) is { } next && next.Part is { } same && same == end.Part ? end : End(t, job)), placeholder: "A20, or in words");
        if (end.Part is not { } part) return;
        var joints = job.Joints.Where(j => j.Part == part || j.To == part || j.Id == end.Joint);
        facts.Options($"{label}: joint", end.Joint?.Text ?? "", [("", "Nobody has seen it"), .. joints.Select(j => (j.Id.Text, $"{j.Id}, {j.Count} × {Words.Of(j.Type)}"))],
            t => with(end with { Joint = t.Length == 0 ? null : new JointId(t) }));
    }
}
