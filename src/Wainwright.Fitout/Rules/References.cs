namespace Wainwright.Fitout;

/// <summary>Whatever is named must be there.</summary>
internal static class References
{
    public static IEnumerable<Issue> Of(Job job)
    {
        var parts = job.Parts.Select(p => p.Id).ToHashSet();
        var joints = job.Joints.Select(j => j.Id).ToHashSet();
        var lines = job.Lines.Select(l => l.Id).ToHashSet();
        var points = job.Points.Select(p => p.Id).ToHashSet();
        var readings = job.Readings.Select(r => r.Id).ToHashSet();
        var findings = job.Findings.Select(f => f.Id).ToHashSet();
        var stages = job.Stages.Select(s => s.Id).ToHashSet();
        var photos = job.Photos.Select(p => p.Hash).ToHashSet();
        var issues = new List<Issue>();

        void Part(string where, PartId? id) => Need(where, id, parts, "part");
        void Need<T>(string where, T? id, HashSet<T> known, string what) where T : struct
        {
            if (id is { } named && !known.Contains(named)) issues.Add(new(where, $"names {what} “{named}”, which is not in the job", $"add that {what} or mend the id"));
        }
        void All<T>(string where, IEnumerable<T> ids, HashSet<T> known, string what) where T : struct
        {
            var i = 0;
            foreach (var id in ids) Need($"{where}[{i++}]", (T?)id, known, what);
        }

        foreach (var (p, i) in job.Parts.Select((p, i) => (p, i)))
        {
            var at = JobRules.At(i, p.Id);
            All($"{at}.standsOn", p.StandsOn, parts, "part");
            Part($"{at}.carriedOutWith", p.CarriedOutWith);
            All($"{at}.takeOutFirst", p.TakeOutFirst.Select(t => t.Part), parts, "part");
            foreach (var device in p.Devices)
            {
                if (device is ResidualCurrentDevice rcd) All($"{at}.devices.protects", rcd.Protects, parts, "part");
                if (device is Outlet outlet) Part($"{at}.devices.fedBy", outlet.FedBy);
            }
            var solids = p.Solids.Select(s => s.Name).ToHashSet();
            foreach (var piece in p.ComesApartInto)
                foreach (var name in piece.Solids.Where(n => !solids.Contains(n)))
                    issues.Add(new($"{at}.comesApartInto ({piece.Name})", $"names a solid “{name}” that the part does not have", "name the solid, or mend the piece"));
        }
        foreach (var (j, i) in job.Joints.Select((j, i) => (j, i)))
        {
            Part($"job.joints[{i}] ({j.Id}).part", j.Part);
            Part($"job.joints[{i}] ({j.Id}).to", j.To);
        }
        foreach (var (l, i) in job.Lines.Select((l, i) => (l, i)))
        {
            var at = $"job.lines[{i}] ({l.Id})";
            Part($"{at}.part", l.Part);
            Part($"{at}.from.part", l.From.Part);
            Part($"{at}.to.part", l.To.Part);
            Need($"{at}.from.joint", l.From.Joint, joints, "joint");
            Need($"{at}.to.joint", l.To.Joint, joints, "joint");
            All($"{at}.through", l.Through, parts, "part");
            Part($"{at}.protectedBy", l.ProtectedBy);
        }
        foreach (var (p, i) in job.Points.Select((p, i) => (p, i)))
        {
            Part($"job.points[{i}] ({p.Id}).part", p.Part);
            Need($"job.points[{i}] ({p.Id}).dryReference", p.DryReference, points, "point");
        }
        foreach (var (r, i) in job.Readings.Select((r, i) => (r, i)))
        {
            var at = $"job.readings[{i}] ({r.Id})";
            Need($"{at}.point", r.Point, points, "point");
            Part($"{at}.part", r.Part);
            Need($"{at}.joint", r.Joint, joints, "joint");
            Need($"{at}.line", r.Line, lines, "line");
            Need($"{at}.stage", r.Stage, stages, "stage");
            Need($"{at}.corrects", r.Corrects, readings, "reading");
            Need($"{at}.underForce", r.UnderForce, readings, "reading");
        }
        foreach (var (f, i) in job.Findings.Select((f, i) => (f, i)))
        {
            var at = $"job.findings[{i}] ({f.Id})";
            All($"{at}.parts", f.Parts, parts, "part");
            All($"{at}.joints", f.Joints, joints, "joint");
            All($"{at}.lines", f.Lines, lines, "line");
            All($"{at}.points", f.Points, points, "point");
            All($"{at}.readings", f.Readings, readings, "reading");
            All($"{at}.photos", f.Photos, photos, "photo");
            Need($"{at}.stage", f.Stage, stages, "stage");
        }
        foreach (var (p, i) in job.Photos.Select((p, i) => (p, i)))
        {
            if (!p.Hash.IsWellFormed) issues.Add(new($"job.photos[{i}].hash", "must be 64 lower-case hexadecimal digits (SHA-256)", "take the photo in again: its name is made from its bytes"));
            All($"job.photos[{i}].parts", p.Parts, parts, "part");
            Need($"job.photos[{i}].stage", p.Stage, stages, "stage");
        }
        foreach (var (s, i) in job.Stages.Select((s, i) => (s, i))) All($"job.stages[{i}] ({s.Id}).partsOut", s.PartsOut, parts, "part");
        foreach (var (e, i) in job.Estimate.Select((e, i) => (e, i))) All($"job.estimate[{i}] ({e.Id}).findings", e.Findings, findings, "finding");
        foreach (var (b, i) in job.Bags.Select((b, i) => (b, i)))
        {
            Part($"job.bags[{i}] ({b.Id}).part", b.Part);
            Need($"job.bags[{i}] ({b.Id}).joint", b.Joint, joints, "joint");
        }
        foreach (var (c, i) in job.Custody.Select((c, i) => (c, i))) Part($"job.custody[{i}] ({c.Id}).part", c.Part);
        foreach (var (t, i) in job.Tests.Select((t, i) => (t, i))) All($"job.tests[{i}] ({t.Id}).readings", t.Readings, readings, "reading");

        var axles = job.Vehicle.Axles.Select(a => a.Name).ToHashSet();
        foreach (var (w, i) in job.Weighings.Select((w, i) => (w, i)))
            foreach (var load in w.Axles.Where(a => !axles.Contains(a.Axle)))
                issues.Add(new($"job.weighings[{i}] ({w.Id}).axles", $"names axle “{load.Axle}”, which the vehicle does not have", "add the axle or mend the name"));
        return issues;
    }
}
