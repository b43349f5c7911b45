using Wainwright.Fitout;
using Wainwright.Paper;
using Wainwright.Records;

namespace Wainwright.Web;

/// <summary>A job open on a screen: what is stored, what is picked, and the one way to change it.</summary>
public sealed class OpenJob : IDisposable
{
    private readonly Store store;
    private readonly Bench bench;
    private readonly TimeProvider clock;
    private Answers? answers;

    private OpenJob(Store store, Bench bench, TimeProvider clock, StoredJob stored)
    {
        (this.store, this.bench, this.clock, Stored) = (store, bench, clock, stored);
        store.Changed += OnStored;
    }

    /// <summary>The job of that id; <see langword="null"/> when there is none.</summary>
    public static OpenJob? Of(Store store, Bench bench, TimeProvider clock, string id) => store.Find(id) is { } stored ? new(store, bench, clock, stored) : null;

    /// <summary>As stored.</summary>
    public StoredJob Stored { get; private set; }

    /// <summary>The job itself.</summary>
    public Job Job => Stored.Job;

    /// <summary>The store it lies in.</summary>
    public Store Store => store;

    /// <summary>What the survey says of the job as stored now.</summary>
    public Answers Answers => answers ??= Answers.Of(Job, Today);

    /// <summary>Ways out asked for while the job is open.</summary>
    public Ways Ways { get; } = new();

    /// <summary>The day here.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>What the last attempt to store met: shown until the next one.</summary>
    public Trouble? Trouble { get; private set; }

    /// <summary>The job, the picked part or the trouble changed; may come from another thread.</summary>
    public event Action? Changed;

    /// <summary>A part by its id.</summary>
    public Part? Part(string? id) => id is null ? null : Job.Parts.FirstOrDefault(p => p.Id.Text == id);

    /// <summary>What a change would be refused for; nothing is stored.</summary>
    public IReadOnlyList<Issue> Try(IEnumerable<Edit> edits) => [.. new Change("look", [.. edits]).On(Job).Issues.Where(i => i.Weight == Weight.Error)];

    /// <summary>Stores a change under the name of whoever is at the bench. Empty when it is stored, else why not.</summary>
    public async Task<IReadOnlyList<Issue>> Put(string what, Func<Job, IEnumerable<Edit>> edits)
    {
        if (await bench.Sign() is not { } who) return [new("journal", "nobody has signed for this change", "say who you are and do it again")];
        return Attempt(() => store.Append(Job.Id, new Change(what, [.. edits(Job)]), who));
    }

    /// <summary>Takes back the change that stands on the button.</summary>
    public async Task Undo()
    {
        if (Stored.Undo is { } step && await bench.Sign() is { } who) Attempt(() => store.Undo(Job.Id, who, step.Seq));
    }

    /// <summary>Makes the change that stands on the button again.</summary>
    public async Task Redo()
    {
        if (Stored.Redo is { } step && await bench.Sign() is { } who) Attempt(() => store.Redo(Job.Id, who, step.Seq));
    }

    /// <inheritdoc/>
    public void Dispose() => store.Changed -= OnStored;

    private IReadOnlyList<Issue> Attempt(Func<Appended> act)
    {
        try
        {
            var done = act();
            IReadOnlyList<Issue> refused = done.Entry is null ? [.. done.Issues.Where(i => i.Weight == Weight.Error)] : [];
            Trouble = refused.Count > 0 ? new("That was not stored", [.. refused.Select(i => i.ToString())]) : null;
            Read();
            return refused;
        }
        catch (StoreException fault)
        {
            Trouble = new("That was not stored", [fault.Message, Words(fault.Mend)]);
            Changed?.Invoke();
            return [new("store", fault.Message, fault.Mend)];
        }
    }

    private static string Words(string mend) => Shown.Words.Capital(mend) + ".";

    private void OnStored(string id)
    {
        if (id == Job.Id) Read();
    }

    private void Read()
    {
        if (store.Find(Job.Id) is { } stored) (Stored, answers) = (stored, null);
        Changed?.Invoke();
    }
}

/// <summary>Something that did not work, and what to do.</summary>
/// <param name="What">What did not work.</param>
/// <param name="Lines">Why, and what to do.</param>
public sealed record Trouble(string What, IReadOnlyList<string> Lines);
