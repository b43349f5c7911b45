using Wainwright.Access;

namespace Wainwright.Web;

/// <summary>One question that takes long, worked at in the background.</summary>
/// <typeparam name="T">What it comes to.</typeparam>
public sealed class LongWork<T> : Errand, IProgress<double>
{
    // a share is shown in thousandths
    private const int Whole = 1000;

    internal LongWork(Func<IProgress<double>, CancellationToken, Task<T>> work, CancellationTokenSource stop) : base(stop) =>
        // whoever presses Stop is rid of it at once, also where the work itself only ends at its next pause
        Found = Task.Run(() => work(this, stop.Token), stop.Token).WaitAsync(stop.Token);

    /// <summary>What it comes to.</summary>
    public Task<T> Found { get; }

    /// <summary>How far it has come, 0 to 1.</summary>
    public void Report(double value) => Report(new AccessProgress((int)(Whole * Math.Clamp(value, 0, 1)), Whole, ""));
}
