namespace Wainwright.Fitout;

/// <summary>How parts can hold one another.</summary>
internal static class HoldingRules
{
    public static IEnumerable<Issue> Of(Job job)
    {
        var at = job.Parts.Select((p, i) => (p.Id, Where: JobRules.At(i, p.Id))).GroupBy(p => p.Id).ToDictionary(g => g.Key, g => g.First().Where);
        var standing = job.Parts.GroupBy(p => p.Id).ToDictionary(g => g.Key, g => (IReadOnlyList<PartId>)[.. g.First().StandsOn]);
        foreach (var ring in Rings(standing))
            yield return new($"{at[ring[0]]}.standsOn", $"goes round in a ring: {string.Join(" on ", ring)}", "take out the one that does not rest on the next");
        var carried = job.Parts.GroupBy(p => p.Id).ToDictionary(g => g.Key, g => g.First().CarriedOutWith is { } with ? (IReadOnlyList<PartId>)[with] : []);
        foreach (var ring in Rings(carried).Where(r => r.Count > 2))
            yield return new($"{at[ring[0]]}.carriedOutWith", $"goes round in a ring: {string.Join(" with ", ring)}", "let one of them be the load that the others leave with");

        foreach (var (joint, i) in job.Joints.Select((j, i) => (j, i)))
        {
            var where = $"job.joints[{i}] ({joint.Id})";
            if (joint.To == joint.Part) yield return new($"{where}.to", $"holds {joint.Part} to itself", "name what it is held to, or leave it out for the vehicle");
            if (joint.StateCount > joint.Count) yield return new($"{where}.stateCount", $"says {joint.StateCount} of {joint.Count} fixings", "count again");
            if (joint.Points.Count > joint.Count) yield return new($"{where}.points", $"{joint.Points.Count} places for {joint.Count} fixings", "count again");
        }
        foreach (var issue in HeldByEachOther(job, at)) yield return issue;
    }

    /// <summary>A ring of joints is no error, but parts held by nothing except one another are worth a look.</summary>
    private static IEnumerable<Issue> HeldByEachOther(Job job, Dictionary<PartId, string> at)
    {
        var held = job.Joints.Where(j => j.To is null && j.State != FixingState.Missing).Select(j => j.Part).ToHashSet();
        foreach (var part in job.Parts.Where(p => p.StandsOn.Count > 0 || p.LooseGoods || p.Outside || p.CarriedOutWith is not null)) held.Add(part.Id);
        var links = job.Joints.Where(j => j is { To: not null, State: not FixingState.Missing }).ToList();
        for (var more = true; more;)
        {
            more = false;
            foreach (var link in links) if (held.Contains(link.To!.Value) ? held.Add(link.Part) : held.Contains(link.Part) && held.Add(link.To.Value)) more = true;
        }
        foreach (var ring in links.Where(l => !held.Contains(l.Part)).SelectMany(l => new[] { l.Part, l.To!.Value }).Distinct().Where(at.ContainsKey).Take(20))
            yield return new(at[ring], "its joints lead only to parts that are held by one another; none reaches the vehicle", "record how the group is held to the vehicle or what it stands on", Weight.Doubt);
    }

    /// <summary>Every ring reachable along the arrows, each once, as the ids in order with the first one again at the end.</summary>
    private static IEnumerable<List<PartId>> Rings(Dictionary<PartId, IReadOnlyList<PartId>> arrows)
    {
        var done = new HashSet<PartId>();
        foreach (var start in arrows.Keys)
        {
            var path = new List<PartId>();
            var on = new HashSet<PartId>();
            var work = new Stack<(PartId Id, int Next)>();
            if (done.Contains(start)) continue;
            work.Push((start, 0));
            path.Add(start);
            on.Add(start);
            while (work.Count > 0)
            {
                var (id, next) = work.Pop();
                if (arrows.TryGetValue(id, out var targets) && next < targets.Count)
                {
                    work.Push((id, next + 1));
                    var target = targets[next];
                    if (on.Contains(target)) yield return [.. path.Skip(path.IndexOf(target)), target];
                    else if (!done.Contains(target) && arrows.ContainsKey(target))
                    {
                        work.Push((target, 0));
                        path.Add(target);
                        on.Add(target);
                    }
                }
                else
                {
                    done.Add(id);
                    on.Remove(id);
                    path.RemoveAt(path.Count - 1);
                }
            }
        }
    }
}
