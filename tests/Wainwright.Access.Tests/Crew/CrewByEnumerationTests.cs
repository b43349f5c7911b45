using Wainwright.Fitout;
using static Wainwright.Access.Tests.Crew.CrewVan;

namespace Wainwright.Access.Tests.Crew;

/// <summary>Small made-up jobs, by seed, against a plain try of every order that shares no code with the schedule.</summary>
public class CrewByEnumerationTests
{
    /// <summary>Stretches of the 4 m van, four of them, each box standing within one; all leave by the rear door, high boxes shutting the side.</summary>
    private static readonly double[] Xs = [100, 1100, 2100, 3100];

    private sealed record Deed(double Minutes, int Zone, string? Tool, int? After, bool Carry, int People);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void The_shortest_of_all_orders_is_found_and_proved(int seed)
    {
        var chance = new Random(seed);
        var (parts, joints, deeds) = (new List<Part>(), new List<Joint>(), new List<Deed>());
        for (var i = 0; i < 3; i++)
        {
            var (zone, tool, minutes, heavy) = (chance.Next(4), chance.Next(3), chance.Next(2, 12), chance.Next(4) == 0);
            var drive = tool switch { 0 => Drive.Hand, 1 => Drive.CrossRecess, _ => Drive.HexHead };
            // side by side along y so that none is in another's way
            parts.Add(Box($"P{i}", Xs[zone], 100 + 600 * i, 0, 300, 300, 300, heavy ? 25 : 5));
            joints.Add(Held($"P{i}", minutes, drive));
            deeds.Add(new(minutes, zone, drive == Drive.Hand ? null : drive.ToString(), null, Carry: false, 1));
            deeds.Add(new(1.5, zone, null, deeds.Count - 1, Carry: true, heavy ? 2 : 1));
        }
        var job = With(parts, joints);
        job = job with { Vehicle = job.Vehicle with { Openings = [job.Vehicle.Openings[0]] } };
        var plan = RemovalPlanner.Remove(job, [.. parts.Select(p => p.Id)]);
        Assert.Equal(deeds.Sum(d => d.Minutes * d.People), plan.OutMinutes, 1e-9);

        var crew = Access.Crew.Of(job, plan);

        Assert.True(crew.IsProved);
        Assert.Equal(Orders(deeds.Count).Min(order => Length(deeds, order)), crew.Minutes, 0.01);
        Assert.InRange(crew.Minutes, plan.OutMinutes / 2 - 0.01, plan.OutMinutes + 0.01);
    }

    private static IEnumerable<int[]> Orders(int count)
    {
        IEnumerable<int[]> Rest(int[] begun) => begun.Length == count ? [begun] : Enumerable.Range(0, count).Except(begun).SelectMany(next => Rest([.. begun, next]));
        return Rest([]);
    }

    /// <summary>Each deed in this order as early as it goes, looked for minute by half minute.</summary>
    private static double Length(List<Deed> deeds, int[] order)
    {
        var at = new double?[deeds.Count];
        foreach (var i in order)
        {
            var d = deeds[i];
            if (d.After is { } before && at[before] is null) return double.MaxValue;
            for (var t = d.After is { } first ? at[first]!.Value + deeds[first].Minutes : 0; ; t += 0.5)
            {
                var with = Enumerable.Range(0, deeds.Count).Where(j => at[j] is { } s && s < t + d.Minutes - 1e-9 && s + deeds[j].Minutes > t + 1e-9).ToList();
                var clash = with.Exists(j => Zones(d).Intersect(Zones(deeds[j])).Any() || (d.Carry && deeds[j].Carry) || (d.Tool is { } tool && tool == deeds[j].Tool));
                var crowd = with.Select(j => Math.Max(t, at[j]!.Value)).Append(t).Any(m => d.People + with.Where(j => at[j] <= m + 1e-9 && at[j] + deeds[j].Minutes > m + 1e-9).Sum(j => deeds[j].People) > 2);
                if (clash || crowd) continue;
                at[i] = t;
                break;
            }
        }
        return at.Select((s, i) => s!.Value + deeds[i].Minutes).Max();
    }

    private static IEnumerable<int> Zones(Deed d) => d.Carry ? Enumerable.Range(d.Zone, 4 - d.Zone) : [d.Zone];
}
