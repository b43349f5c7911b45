using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Who holds whom in a van; asked part by part.</summary>
internal sealed class WhoHolds
{
    // eight storeys are a ring, not a van
    private const int MostStoreys = 8;

    private readonly record struct Ride(Part Rider, PartId On, double Share, Vector3D? At);

    private readonly Dictionary<PartId, Part> parts;
    private readonly ILookup<PartId, (Joint Joint, PartId? To)> joints;
    private readonly ILookup<PartId, Ride> riders;

    public WhoHolds(Job job)
    {
        Touching = new(job);
        parts = job.Parts.GroupBy(p => p.Id).ToDictionary(g => g.Key, g => g.First());
        var floors = job.Parts.Where(p => p.System == PartSystem.Floor && p.Solids.Count > 0).ToList();
        joints = job.Joints.Where(j => HeldChain.Carries(j.Type)).Select(j => (Joint: j, To: j.To ?? Floor(j, floors))).ToLookup(j => j.Joint.Part);
        riders = job.Parts.SelectMany(Rides).ToLookup(r => r.On);
    }

    public Touching Touching { get; }

    /// <summary>Joints that hold a part, connectors left out.</summary>
    public IEnumerable<Joint> Of(PartId part) => joints[part].Select(j => j.Joint);

    /// <summary>What rides on a part.</summary>
    public IEnumerable<Part> RidersOn(PartId part) => riders[part].Select(r => r.Rider);

    /// <summary>The chain of a part by some of what holds it.</summary>
    public HeldChain Chain(Part part, HeldBySome by = HeldBySome.All)
    {
        List<string> missing = [], assumed = [];
        List<Part> bodies = [part];
        List<(Joint, int, int?)> held = [];
        List<(int, int)> rests = [];
        int Index(Part other)
        {
            var at = bodies.IndexOf(other);
            if (at < 0) bodies.Add(other);
            return at < 0 ? bodies.Count - 1 : at;
        }
        for (var i = 0; i < bodies.Count; i++)
        {
            foreach (var (joint, id) in joints[bodies[i].Id])
            {
                if (id is { } named && (named == bodies[i].Id || !parts.ContainsKey(named) || !Counts(by, named))) continue;
                held.Add((joint, i, id is { } to ? Index(parts[to]) : null));
            }
            foreach (var under in bodies[i].StandsOn.Where(u => by == HeldBySome.All && !Touching.IsBacking(u) && u != bodies[i].Id && parts.ContainsKey(u)))
                rests.Add((i, Index(parts[under])));
        }
        var inside = bodies.Select(b => b.Id).ToHashSet();
        var links = bodies.Select(b => Link(b, inside, missing, assumed)).ToList();
        return new(links, held, rests, [.. missing.Distinct()], [.. assumed.Distinct()]);
    }

    private bool Counts(HeldBySome by, PartId to) => by == HeldBySome.All || (by == HeldBySome.ShellAndVan && Touching.IsBacking(to));

    private HeldChain.Link Link(Part part, HashSet<PartId> inside, List<string> missing, List<string> assumed)
    {
        var all = new List<(Span Kg, Vector3D At)>();
        void Add(Part p, double share, Vector3D? at, int storey)
        {
            if (Laden.Of(p) is { } laden)
            {
                all.Add((laden.Kg.Times(share), at ?? laden.CentreMm));
                assumed.AddRange(laden.Assumed);
            }
            else missing.Add(p.EmptyKg is null ? $"mass of {p.Id} {p.Name}: weigh it" : $"place and size of {p.Id} {p.Name}: measure them");
            if (storey < MostStoreys)
                foreach (var ride in riders[p.Id].Where(r => !inside.Contains(r.Rider.Id))) Add(ride.Rider, share * ride.Share, at ?? ride.At, storey + 1);
        }
        Add(part, 1, null, 0);
        if (all.Count > 1) assumed.Add($"what hangs on {part.Name} or stands on it rides with it; of what several things hold, each carries its share");
        var kg = all.Aggregate(Span.Exactly(0), (sum, a) => sum + a.Kg);
        var centre = kg.Likely > 0 ? 1 / kg.Likely * all.Aggregate(default(Vector3D), (sum, a) => sum + a.Kg.Likely * a.At) : Laden.Middle(part) ?? default;
        return new(part, kg, centre);
    }

    /// <summary>On what a part rides and which share each carries: at its own middle where one thing alone holds it, else where it is fixed to it.</summary>
    private IEnumerable<Ride> Rides(Part part)
    {
        if (part.Outside) yield break;
        var own = joints[part.Id].Where(j => !Gone(j.Joint)).ToList();
        var on = own.Select(j => j.To).Concat(part.StandsOn.Select(s => (PartId?)s)).Concat(part.CarriedOutWith is { } with ? [with] : []).Distinct().Where(id => id != part.Id).ToList();
        foreach (var id in on.OfType<PartId>().Where(parts.ContainsKey))
        {
            var points = own.Where(j => j.To == id).SelectMany(j => j.Joint.Points).ToList();
            Vector3D? at = on.Count == 1 || points.Count == 0 ? null : new(points.Average(p => p.XMm), points.Average(p => p.YMm), points.Average(p => p.ZMm));
            yield return new(part, id, 1.0 / on.Count, at);
        }
    }

    private static bool Gone(Joint joint) => joint.State is FixingState.Missing or FixingState.Sheared && (joint.StateCount ?? joint.Count) >= joint.Count;

    /// <summary>A bolt through the floor board alone holds to the board, whoever wrote “the vehicle”.</summary>
    private static PartId? Floor(Joint joint, IReadOnlyList<Part> floors)
    {
        if (joint.Points.Count == 0 || joint.Base is null || Substrate.Of(joint.Base) is not { Named: true, IsMetal: false }) return null;
        return floors.FirstOrDefault(f => f.Id != joint.Part && joint.Points.All(p => f.Solids.Select(s => s.Bounds()).Any(b =>
            p.XMm >= b.Low.XMm && p.XMm <= b.High.XMm && p.YMm >= b.Low.YMm && p.YMm <= b.High.YMm && Math.Abs(p.ZMm - b.High.ZMm) <= 40)))?.Id;
    }
}

/// <summary>Which of the things that hold a part are counted.</summary>
internal enum HeldBySome
{
    /// <summary>All of them, and what those are held by.</summary>
    All,

    /// <summary>Floor boards, linings and the van.</summary>
    ShellAndVan,

    /// <summary>The van itself alone.</summary>
    VanAlone,
}
