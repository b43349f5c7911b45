using Wainwright.Fitout;

namespace Wainwright.Access.Tests.Plans;

/// <summary>Small vans by seed: boxes beside and upon one another, screwed or glued down, behind one door.</summary>
internal static class SeededVan
{
    public static Job Of(int seed, int parts)
    {
        var random = new Random(seed);
        var (all, joints) = (new List<Part>(), new List<Joint>());
        for (var n = 0; n < parts; n++)
        {
            // in a grid of cells, now and then on top of an earlier one
            var (x, y) = (200 + 500 * (n % 3), 100 + 400 * (n / 3 % 2));
            var below = all.FindLast(p => p.Bounds() is { } b && (int)b.Low.XMm / 500 == x / 500 && (int)b.Low.YMm / 400 == y / 400);
            var z = below?.Bounds()!.Value.High.ZMm ?? 0;
            var id = new PartId($"P{n}");
            all.Add(new()
            {
                Id = id, Name = $"box {n}", System = PartSystem.Furniture, Known = Known.Measured, MassKg = random.Next(2, 18), StandsOn = below is null ? [] : [below.Id],
                Fate = random.Next(3) == 0 ? Fate.Scrap : Fate.Keep,
                Solids = [new BoxSolid { At = new(x, y, z), Size = new(random.Next(300, 480), random.Next(250, 380), random.Next(200, 420)) }],
            });
            var glued = random.Next(3) == 0;
            joints.Add(new()
            {
                Id = new($"J{n}"), Part = id, Type = glued ? FixingType.Adhesive : FixingType.WoodScrew, Count = random.Next(1, 12), Known = Known.Seen,
                Release = new() { Way = glued ? ReleaseWay.Pry : ReleaseWay.Unscrew, Destructive = glued },
            });
        }
        return new()
        {
            Format = 1, Id = $"S-{seed}", Title = "seeded", Parts = all, Joints = joints,
            Vehicle = new()
            {
                Name = "short van", LoadSpace = new() { LengthMm = 1900, WidthMm = 1000, HeightMm = 1300 },
                Openings = [new() { Name = "rear door", Face = Face.Rear, FromMm = random.Next(0, 3) * 150, WidthMm = 650, SillMm = 0, HeightMm = 1200, Passable = true, Known = Known.Measured }],
            },
        };
    }

    /// <summary>The best plans with each set of parts kept in, by trying them all.</summary>
    public static IReadOnlyList<RemovalPlan> OfEverySubset(Job job, PartId target)
    {
        var others = job.Parts.Select(p => p.Id).Where(p => p != target).ToList();
        return [.. Enumerable.Range(0, 1 << others.Count)
            .Select(bits => RemovalPlanner.Remove(job, [target], new() { MustStay = [.. others.Where((_, i) => (bits >> i & 1) != 0)] }))
            .Where(p => p.Steps.Count > 0)];
    }
}
