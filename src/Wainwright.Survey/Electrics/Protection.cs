using Wainwright.Fitout;

namespace Wainwright.Survey.Electrics;

/// <summary>Whether residual-current protection guards a mains part, as far as anybody has traced it.</summary>
internal static class Protection
{
    public enum State
    {
        NotTraced,
        None,
        Found,
    }

    /// <summary>The devices that guard a part, itself and everything that feeds it included.</summary>
    public static (State State, IReadOnlyList<(Part Part, ResidualCurrentDevice Device)> Devices) Of(Job job, Part part)
    {
        var all = job.Having<ResidualCurrentDevice>().ToList();
        var chain = Upstream(job, part.Id, out var toItsEnd);
        var guards = all.Where(d => chain.Contains(d.Part.Id) || d.Device.Protects.Any(chain.Contains)).ToList();
        if (guards.Count > 0) return (State.Found, guards);
        // a device whose circuits nobody has traced may be the one that guards it
        return (toItsEnd && all.TrueForAll(d => d.Device.Protects.Count > 0) ? State.None : State.NotTraced, []);
    }

    private static HashSet<PartId> Upstream(Job job, PartId from, out bool toItsEnd)
    {
        var chain = new HashSet<PartId> { from };
        var open = new Queue<PartId>([from]);
        toItsEnd = false;
        while (open.TryDequeue(out var id))
        {
            var part = job.Parts.FirstOrDefault(p => p.Id == id);
            var feeders = part?.Devices.OfType<Outlet>().Where(o => o.Medium == Medium.Mains && o.FedBy is not null).Select(o => o.FedBy!.Value).ToList() ?? [];
            foreach (var line in job.Lines.Where(l => l.Medium == Medium.Mains && l.To.Part == id))
            {
                if (line.From.Part is { } source) feeders.Add(source);
                if (line.ProtectedBy is { } guard) feeders.Add(guard);
            }
            if (id == from) toItsEnd = feeders.Count > 0;
            foreach (var feeder in feeders)
                if (chain.Add(feeder)) open.Enqueue(feeder);
        }
        return chain;
    }
}
