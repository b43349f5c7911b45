using System.Text.Json;

namespace Wainwright.Fitout;

/// <summary>One list of a job, with the ids of its entries. Rules, edits and the store walk these instead of naming each list again.</summary>
public abstract record Section
{
    private Section(string name) => Name = name;

    /// <summary>Its name in the job file.</summary>
    public string Name { get; }

    /// <summary>All lists of a job, in the order of the file.</summary>
    public static IReadOnlyList<Section> Lists { get; } =
    [
        new Of<Part>("parts", j => j.Parts, (j, v) => j with { Parts = v }, p => p.Id.Text),
        new Of<Joint>("joints", j => j.Joints, (j, v) => j with { Joints = v }, x => x.Id.Text),
        new Of<Line>("lines", j => j.Lines, (j, v) => j with { Lines = v }, x => x.Id.Text),
        new Of<ReadingPoint>("points", j => j.Points, (j, v) => j with { Points = v }, x => x.Id.Text),
        new Of<Reading>("readings", j => j.Readings, (j, v) => j with { Readings = v }, x => x.Id.Text),
        new Of<Finding>("findings", j => j.Findings, (j, v) => j with { Findings = v }, x => x.Id.Text),
        new Of<Photo>("photos", j => j.Photos, (j, v) => j with { Photos = v }, x => x.Hash.Text),
        new Of<Stage>("stages", j => j.Stages, (j, v) => j with { Stages = v }, x => x.Id.Text),
        new Of<IsolationStep>("isolation", j => j.Isolation, (j, v) => j with { Isolation = v }, x => x.Id),
        new Of<Weighing>("weighings", j => j.Weighings, (j, v) => j with { Weighings = v }, x => x.Id),
        new Of<Approval>("approvals", j => j.Approvals, (j, v) => j with { Approvals = v }, x => x.Id),
        new Of<EstimateLine>("estimate", j => j.Estimate, (j, v) => j with { Estimate = v }, x => x.Id),
        new Of<Bag>("bags", j => j.Bags, (j, v) => j with { Bags = v }, x => x.Id),
        new Of<Custody>("custody", j => j.Custody, (j, v) => j with { Custody = v }, x => x.Id),
        new Of<TestSheet>("tests", j => j.Tests, (j, v) => j with { Tests = v }, x => x.Id),
        new Of<Certificate>("certificates", j => j.Certificates, (j, v) => j with { Certificates = v }, x => x.Id),
    ];

    /// <summary>The list of that name, or <see langword="null"/>.</summary>
    public static Section? Named(string name) => Lists.FirstOrDefault(s => s.Name == name);

    /// <summary>How many entries the list has.</summary>
    public abstract int Count(Job job);

    /// <summary>Ids of the entries in order.</summary>
    public abstract IEnumerable<string> Ids(Job job);

    /// <summary>The entry of that id as JSON; <see langword="null"/> when there is none.</summary>
    public abstract JsonElement? Get(Job job, string id);

    /// <summary>All entries as JSON, in order.</summary>
    public abstract IEnumerable<(string Id, JsonElement Entry)> All(Job job);

    /// <summary>The type of an entry.</summary>
    public abstract Type EntryType { get; }

    /// <summary>The job with the entry put in place of the one with that id, added at the end, or taken out.</summary>
    /// <exception cref="JsonException">The entry does not have the shape of the list's entries.</exception>
    public abstract Job With(Job job, string id, JsonElement? entry);

    private sealed record Of<T>(string Called, Func<Job, IReadOnlyList<T>> List, Func<Job, IReadOnlyList<T>, Job> Set, Func<T, string> Id) : Section(Called)
    {
        public override Type EntryType => typeof(T);

        public override int Count(Job job) => List(job).Count;

        public override IEnumerable<string> Ids(Job job) => List(job).Select(Id);

        public override JsonElement? Get(Job job, string id)
        {
            foreach (var entry in List(job)) if (Id(entry) == id) return JsonSerializer.SerializeToElement(entry, JobFormat.Compact);
            return null;
        }

        public override IEnumerable<(string Id, JsonElement Entry)> All(Job job) =>
            List(job).Select(e => (Id(e), JsonSerializer.SerializeToElement(e, JobFormat.Compact)));

        public override Job With(Job job, string id, JsonElement? entry)
        {
            var list = List(job).ToList();
            var at = list.FindIndex(e => Id(e) == id);
            if (entry is { } put)
            {
                var value = put.Deserialize<T>(JobFormat.Compact)!;
                if (at < 0) list.Add(value);
                else list[at] = value;
            }
            else if (at >= 0) list.RemoveAt(at);
            return Set(job, list);
        }
    }
}
