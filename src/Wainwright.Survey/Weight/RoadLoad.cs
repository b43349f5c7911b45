using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Weight;

namespace Wainwright.Survey.Weight;

/// <summary>How the van goes on the road: as found with its driver, or every road seat taken and the fresh water full.</summary>
internal enum Loading
{
    WithDriver,
    Full,
}

/// <summary>Axle loads on the road: from a weighing where there is one, else from the mass sheet.</summary>
/// <param name="FrontKg">Front axle [kg].</param>
/// <param name="RearKg">Rear axle [kg].</param>
/// <param name="TotalKg">Both [kg].</param>
/// <param name="Missing">What is not known of it.</param>
/// <param name="Assumed">What was taken for granted.</param>
/// <param name="From">What it rests on, in words, with its field in the job file.</param>
/// <param name="HasBase">Whether the load before people and water is known at all.</param>
internal sealed record RoadLoad(
    Span FrontKg, Span RearKg, Span TotalKg, IReadOnlyList<string> Missing, IReadOnlyList<string> Assumed, IReadOnlyList<Given> From, bool HasBase)
{
    public const double PersonKg = 75;

    public static Weighing? LastWeighing(Job job) => job.Weighings.LastOrDefault(w => w.On == job.Weighings.Max(o => o.On)) ?? (job.Weighings.Count > 0 ? job.Weighings[^1] : null);

    public static RoadLoad? Of(Job job, Loading loading)
    {
        if (job.Vehicle.Axles is not [var front, var rear] || rear.XMm.Value <= front.XMm.Value) return null;
        List<string> missing = [], assumed = [$"a person counts {PersonKg} kg at the seat"];
        List<Given> from = [];
        Span? onFront = null, onRear = null;
        var people = 0;
        var hasBase = true;
        if (LastWeighing(job) is { } weighed)
        {
            (onFront, onRear) = (Weighed(front), Weighed(rear));
            people = weighed.PeopleAboard;
            assumed.Add("everything that was aboard at the weighing stays aboard");
            assumed.Add("where no tolerance was recorded: 1 % on a weighed load (common practice, no source)");

            Span? Weighed(Axle axle)
            {
                var load = weighed.Axles.FirstOrDefault(a => a.Axle == axle.Name)?.LoadKg;
                from.Add(new($"{axle.Name} axle, weighed ({weighed.State})", load is { } kg ? $"{kg} kg" : "not known", $"weighings[{weighed.Id}].axles", Known.Measured));
                hasBase &= load is not null;
                if (load is null) missing.Add($"weighed load of the {axle.Name} axle");
                return load is { } l ? Span.Of(l.Value, l.PlusMinus ?? 0.01 * l.Value) : null;
            }
        }
        else
        {
            var sheet = MassSheet.Of(job);
            missing.AddRange(sheet.MissingInShort());
            var (addedFront, addedRear) = sheet.OnAxles(front.XMm.Value, rear.XMm.Value);
            (onFront, onRear) = (Bare(front) + addedFront, Bare(rear) + addedRear);
            assumed.Add("no weighing: base vehicle and mass sheet added up; doubts of single masses are independent");
            assumed.Add("where no tolerance was recorded: 5 % on a mass, 10 % on a tank's fill (common practice, no source)");
            from.Add(new("fitted and carried, by the mass sheet", $"{sheet.TotalKg} kg", "parts[].massKg", Known.Inferred));

            Span Bare(Axle axle)
            {
                from.Add(new($"{axle.Name} axle, bare base vehicle", axle.BareKg is { } kg ? $"{kg} kg" : "not known", $"vehicle.axles[{axle.Name}].bareKg", Known.Told));
                hasBase &= axle.BareKg is not null;
                if (axle.BareKg is null) missing.Add($"load of the bare base vehicle on the {axle.Name} axle, or better a weighing");
                return axle.BareKg is { } bare ? Doubt.Mass(bare) : Span.Exactly(0);
            }
        }
        var (f, r) = (onFront ?? Span.Exactly(0), onRear ?? Span.Exactly(0));
        foreach (var (kg, xMm) in People(job, loading, people, missing).Concat(loading == Loading.Full ? Water(job, missing) : []))
        {
            var share = AxleMoments.FrontShare(rear.XMm.Value - front.XMm.Value, xMm - front.XMm.Value);
            f += kg.Times(share);
            r += kg.Times(1 - share);
        }
        return new(f, r, f + r, missing, assumed, from, hasBase);
    }

    private static IEnumerable<(Span Kg, double XMm)> People(Job job, Loading loading, int aboard, List<string> missing)
    {
        var seats = job.Vehicle.Seats;
        if (seats.Count == 0)
        {
            if (loading == Loading.Full || aboard == 0) missing.Add("places of the seats");
            yield break;
        }
        var driver = seats.FirstOrDefault(s => s.Name.Contains("driver", StringComparison.OrdinalIgnoreCase)) ?? seats[0];
        var others = seats.Where(s => s != driver).ToList();
        if (aboard == 0) yield return (Span.Exactly(PersonKg), driver.XMm);
        if (loading != Loading.Full) yield break;
        foreach (var seat in others.Skip(Math.Max(0, aboard - 1)).Where(s => s.UsedOnRoad != false))
            // a seat whose papers nobody has seen may or may not carry somebody
            yield return (new(seat.UsedOnRoad == true ? PersonKg : 0, PersonKg, PersonKg), seat.XMm);
    }

    private static IEnumerable<(Span Kg, double XMm)> Water(Job job, List<string> missing)
    {
        foreach (var (part, tank) in job.Having<Tank>().Where(t => t.Device.Holds == Medium.Water))
        {
            if (MassSheet.Middle(part) is not { } at)
            {
                missing.Add(string.Create(CultureInfo.InvariantCulture, $"place of {part.Name}"));
                continue;
            }
            var filled = tank.FilledL is { } l ? Span.Of(l.Value, l.PlusMinus ?? 0.1 * l.Value) : new Span(0, 0, tank.VolumeL.High);
            yield return (new Span(Math.Max(0, tank.VolumeL.Low - filled.High), Math.Max(0, tank.VolumeL.Value - filled.Likely), Math.Max(0, tank.VolumeL.High - filled.Low)).Times(MassSheet.WaterKgPerL), at.XMm);
        }
    }
}
