using Wainwright.Methods.Moisture.Drying;

namespace Wainwright.Methods.Tests.Moisture.Drying;

static class Passing
{
    /// <summary>Lets time pass, and can be called off with the test.</summary>
    public static void Pass(this DryingRun run, double days, IReadOnlyList<LeakSource>? leaks = null) => run.Advance(days, leaks, TestContext.Current.CancellationToken);
}
