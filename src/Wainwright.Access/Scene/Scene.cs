using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A van as items that can be done one after another.</summary>
/// <remarks>
/// What the workshop usually takes out first is not read here: order comes from joints, lines, what stands on what, and room.
/// </remarks>
internal sealed partial class Scene
{
    private readonly Job job;
    private readonly AccessOptions options;
    private readonly List<Item> items = [];
    private readonly Dictionary<Medium, int> safe = [];
    private readonly Dictionary<JointId, int> undo = [];
    private readonly Dictionary<(LineId, bool IsFrom), int> ends = [];
    private readonly Dictionary<PartId, int> spoiled = [];
    private readonly Dictionary<PartId, int> isOut = [];
    private readonly Dictionary<PartId, int> handOn = [];
    private readonly Dictionary<PartId, int> eyeOn = [];
    private readonly Dictionary<(PartId, string), int> pieceOut = [];
    private readonly Dictionary<PartId, Part> parts;
    private readonly ILookup<PartId?, Part> carried;
    private readonly HashSet<PartId> already;

    /// <param name="job">The job.</param>
    /// <param name="options">What the planner is told beside.</param>
    /// <param name="optimistic">Whether round and slanting shapes are taken as small as they can be.</param>
    /// <param name="like">The same scene made before, whose tilted ways are known here too; absent to look for them.</param>
    public Scene(Job job, AccessOptions options, bool optimistic, Scene? like = null)
    {
        (this.job, this.options) = (job, options);
        parts = job.Parts.GroupBy(p => p.Id).ToDictionary(g => g.Key, g => g.First());
        carried = job.Parts.Where(p => p.CarriedOutWith is { } with && parts.ContainsKey(with)).ToLookup(p => p.CarriedOutWith);
        already = [.. options.AlreadyOut];

        Hanging = new(job, Standing);
        foreach (var part in Standing) AddOut(part);
        foreach (var joint in job.Joints) AddJoint(joint);
        foreach (var part in Standing) AddWays(part);
        foreach (var part in Standing) isOutToo(part);
        foreach (var item in items.Where(i => i.AnyOf is [[_]])) OnlyWayIsNeed(item);
        foreach (var item in items.Where(i => i.AnyOf.Count > 0)) item.Needs.UnionWith(item.AnyOf.SelectMany(NeededByAll).Where(n => items[n] != item));
        foreach (var part in Standing.Where(p => p.Solids.Count > 0)) handOn[part.Id] = Add(new HandOn(part) { Origin = "" });
        foreach (var part in Standing.Where(p => p.Solids.Count > 0)) eyeOn[part.Id] = Add(new EyeOn(part) { Origin = "" });
        Room = new(this, optimistic, like?.Room);
        Puzzle = new(
            [.. items.Select(i => i.Price.Tenths)],
            [.. items.Select(i => ItemSet.Of(items.Count, i.Needs))],
            Room.Ask);

        void OnlyWayIsNeed(Item item)
        {
            item.Needs.Add(item.AnyOf[0][0]);
            item.AnyOf.Clear();
        }

        void isOutToo(Part part)
        {
            // what a load carries along is out when the load is
            foreach (var (item, index) in items.Select((item, index) => (item, index)).ToList())
                if (item is TakeOut load && load.With.Contains(part)) Allow(part, index);
        }
    }

    /// <summary>What every one of some ways needs, in any case needed by what waits for one of them.</summary>
    private HashSet<int> NeededByAll(int[] ways)
    {
        var common = AllNeeds(ways[0]);
        foreach (var way in ways.Skip(1)) common.IntersectWith(AllNeeds(way));
        return common;
    }

    /// <summary>What must be done before an item in every plan, and before that.</summary>
    public HashSet<int> AllNeeds(int item)
    {
        var all = new HashSet<int>();
        var open = new Stack<int>([item]);
        while (open.TryPop(out var next))
            foreach (var need in items[next].Needs)
                if (all.Add(need)) open.Push(need);
        return all;
    }

    /// <summary>The van's parts that are not out yet.</summary>
    public IEnumerable<Part> Standing => parts.Values.Where(p => !already.Contains(p.Id));

    public IReadOnlyList<Item> Items => items;

    public Puzzle Puzzle { get; }

    public SceneRoom Room { get; }

    /// <summary>What drops or tips when its last fixing goes.</summary>
    public Hanging Hanging { get; }

    public Job Job => job;

    public AccessOptions Options => options;

    /// <summary>The item that says a part is out.</summary>
    public int OutItem(PartId part) => isOut[part];

    /// <summary>The item that says a hand is on a part; absent when it has no measures.</summary>
    public int? HandItem(PartId part) => handOn.TryGetValue(part, out var item) ? item : null;

    /// <summary>The item that says a part is seen; absent when it has no measures.</summary>
    public int? EyeItem(PartId part) => eyeOn.TryGetValue(part, out var item) ? item : null;

    /// <summary>The item that says the piece with this solid is out.</summary>
    public int OutItem(Part part, Solid solid) =>
        PieceOf(part, solid) is { } piece ? pieceOut[(part.Id, piece)] : isOut[part.Id];

    /// <summary>The parts that an item carries out, whole or a piece of it.</summary>
    public IEnumerable<Part> LoadOf(int item) => items[item] is TakeOut load ? load.Load : items[item] is TakePiece piece ? [piece.Part] : [];

    public bool IsStanding(PartId part) => parts.ContainsKey(part) && !already.Contains(part);

    /// <summary>The part that an obstacle's item number stands for; none for the van itself.</summary>
    public Part? PartBehind(int item) => item < 0 ? null : ((IsOut)items[item]).Part;

    public Part? PartOf(PartId id) => parts.GetValueOrDefault(id);

    /// <summary>The parts a joint holds together; for the end of a line that is a part itself, that part too.</summary>
    public IReadOnlyList<Part> HeldBy(Joint joint) =>
        [.. new[] { PartOf(joint.Part), joint.To is { } to ? PartOf(to) : null }
            .Concat(job.Lines.Where(l => l.Part is not null && (l.From.Joint == joint.Id || l.To.Joint == joint.Id)).Select(l => PartOf(l.Part!.Value)))
            .OfType<Part>().Distinct()];

    /// <summary>What a part is fixed to or stands on.</summary>
    public IEnumerable<Part> RestsOn(Part part) => job.Joints.Where(j => j.Part == part.Id && j.To is not null).Select(j => j.To!.Value)
        .Concat(part.StandsOn).Concat(part.CarriedOutWith is { } with ? [with] : []).Select(PartOf).OfType<Part>();

    private int Add(Item item)
    {
        items.Add(item);
        return items.Count - 1;
    }

    /// <summary>The part, and all that leaves with it or with what leaves with it.</summary>
    private List<Part> LoadOf(Part part)
    {
        var load = new List<Part> { part };
        for (var i = 0; i < load.Count; i++)
            foreach (var with in carried[load[i].Id])
                if (!load.Contains(with) && !already.Contains(with.Id)) load.Add(with);
        return load;
    }

    private const string Rest = "the rest";

    private static string? PieceOf(Part part, Solid solid) => part.ComesApartInto.Count == 0
        ? null
        : part.ComesApartInto.FirstOrDefault(p => solid.Name is { } name && p.Solids.Contains(name))?.Name ?? Rest;

    private static IEnumerable<(string Name, double Minutes, IReadOnlyList<Solid> Solids)> PiecesOf(Part part) => part.Solids
        .GroupBy(s => PieceOf(part, s)!)
        .Select(g => (g.Key, part.ComesApartInto.FirstOrDefault(p => p.Name == g.Key)?.Minutes ?? 0, (IReadOnlyList<Solid>)[.. g]));
}
