namespace Wainwright.Bench;

/// <summary>Calls work off when the process has spent so much processor time since: others who use the machine cut nothing short.</summary>
sealed class Allowance : IDisposable
{
    private readonly CancellationTokenSource over = new();
    private readonly Timer timer;

    /// <param name="cpuS">How much may be spent [s of all processors together], above 0.</param>
    public Allowance(double cpuS)
    {
        var end = Now() + cpuS;
        timer = new(_ =>
        {
            if (Now() >= end) over.Cancel();
        }, null, 50, 50);
    }

    /// <summary>Set when it is spent.</summary>
    public CancellationToken Over => over.Token;

    private static double Now() => Environment.CpuUsage.TotalTime.TotalSeconds;

    public void Dispose()
    {
        using var stopped = new ManualResetEvent(false);
        // a tick that runs would cancel what is gone
        if (timer.Dispose(stopped)) stopped.WaitOne();
        over.Dispose();
    }
}
