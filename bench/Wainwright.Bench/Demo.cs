using Wainwright.Fitout;

namespace Wainwright.Bench;

/// <summary>The jobs that are measured.</summary>
static class Demo
{
    /// <summary>A file of the repository's demo folder.</summary>
    public static string File(string name)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (System.IO.File.Exists(Path.Combine(folder.FullName, "Wainwright.slnx"))) return Path.Combine(folder.FullName, "demo", name);
        throw new InvalidOperationException($"no Wainwright.slnx above {AppContext.BaseDirectory}");
    }

    /// <summary>The bicycle workshop with crates added, rack upon rack, up to a number of parts; each stands on the one below and is strapped to it.</summary>
    public static Job WithParts(int count)
    {
        var job = JobFile.Read(System.IO.File.ReadAllBytes(File("bicycle-workshop.wain.json"))).Job!;
        var room = job.Vehicle.LoadSpace;
        const double Side = 100;
        var across = (int)(room.WidthMm.Value / Side) - 2;
        var high = (int)(room.HeightMm.Value / Side) - 2;
        var parts = job.Parts.ToList();
        var joints = job.Joints.ToList();
        for (var i = 0; parts.Count < count; i++)
        {
            var id = new PartId(FormattableString.Invariant($"crate {i}"));
            var (x, y, z) = (i / (across * high), i / high % across, i % high);
            parts.Add(new Part
            {
                Id = id, Name = id.Text, System = PartSystem.Loose, Known = Known.Measured, MassKg = 0.5,
                Solids = [new BoxSolid { At = new(x * Side, (y + 1) * Side, z * Side), Size = new(Side, Side, Side) }],
                StandsOn = z > 0 ? [parts[^1].Id] : [],
            });
            joints.Add(new Joint { Id = new(id.Text), Part = id, Type = FixingType.Strap, Count = 1, Known = Known.Seen, Release = new() { Way = ReleaseWay.ByHand } });
        }
        return job with { Id = FormattableString.Invariant($"bench-{count}"), Parts = parts, Joints = joints };
    }
}
