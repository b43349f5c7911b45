using Microsoft.AspNetCore.Components;
using Wainwright.Fitout;
using Wainwright.Records;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Components.Sheets;

/// <summary>What every screen of an open job gets.</summary>
public abstract class JobScreen : ComponentBase
{
    /// <summary>The open job.</summary>
    [CascadingParameter]
    public required OpenJob Open { get; set; }

    /// <summary>What the screen was drawn from; another one makes every screen draw itself anew.</summary>
    [CascadingParameter]
    public required StoredJob DrawnFrom { get; set; }

    /// <summary>Metric or US.</summary>
    [CascadingParameter]
    public Measures Measures { get; set; }

    /// <summary>The job as stored this moment: after a change it is ahead of what is drawn.</summary>
    protected StoredJob Stored => Open.Stored;

    /// <summary>The job itself.</summary>
    protected Job Job => Stored.Job;

    /// <summary>Why a change would be refused, in one line; <see langword="null"/> when it would not.</summary>
    protected static string? Fault(IReadOnlyList<Issue> issues) => issues.Count == 0 ? null : string.Join(" ", issues.Select(i => $"{Words.Capital(i.Rule)}; {i.Mend}."));

    /// <summary>Stores an entry of a list and says in the journal what changed.</summary>
    protected async Task<string?> Put<T>(string list, string id, T entry, string what) => Fault(await Open.Put(what, job => [Edit.Put(job, list, id, entry)]));

    /// <summary>Looks whether an entry could be stored.</summary>
    protected string? Look<T>(string list, string id, T entry) => Fault(Open.Try([Edit.Put(Job, list, id, entry)]));
}
