using Wainwright.Web.Shown;

namespace Wainwright.Web;

/// <summary>Who stands at this browser and how they read measures. Kept in the browser, asked once.</summary>
public sealed class Bench
{
    private TaskCompletionSource<string?>? asking;

    /// <summary>Who: a role or initials; <see langword="null"/> until somebody said.</summary>
    public string? Who { get; private set; }

    /// <summary>Metric or US.</summary>
    public Measures Measures { get; private set; }

    /// <summary>Whether the question stands on the screen.</summary>
    public bool IsAsking => asking is not null;

    /// <summary>Something here changed.</summary>
    public event Action? Changed;

    /// <summary>Takes what the browser kept.</summary>
    public void Recall(string? who, string? measures)
    {
        Who = string.IsNullOrWhiteSpace(who) ? null : who;
        Measures = measures == "us" ? Measures.Us : Measures.Metric;
        Changed?.Invoke();
    }

    /// <summary>Shows measures in these units from now on.</summary>
    public void ShowIn(Measures measures)
    {
        Measures = measures;
        Changed?.Invoke();
    }

    /// <summary>The name for the journal, asked for when nobody has said it yet; <see langword="null"/> when they will not say.</summary>
    public Task<string?> Sign()
    {
        if (Who is not null) return Task.FromResult<string?>(Who);
        asking ??= new(TaskCreationOptions.RunContinuationsAsynchronously);
        Changed?.Invoke();
        return asking.Task;
    }

    /// <summary>Asks again, for another person at the same browser.</summary>
    public Task<string?> SignAnew()
    {
        asking ??= new(TaskCreationOptions.RunContinuationsAsynchronously);
        Changed?.Invoke();
        return asking.Task;
    }

    /// <summary>The answer; <see langword="null"/> leaves it as it was.</summary>
    public void Answer(string? who)
    {
        if (!string.IsNullOrWhiteSpace(who)) Who = who.Trim();
        var waiting = asking;
        asking = null;
        waiting?.SetResult(Who);
        Changed?.Invoke();
    }
}
