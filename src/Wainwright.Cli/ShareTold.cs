using System.Globalization;

namespace Wainwright.Cli;

/// <summary>What share of a long sum is done, on one line of a screen that is written over; nothing where errors go to a file.</summary>
internal sealed class ShareTold(Terminal at, string what) : IProgress<double>
{
    private const int Wide = 78;

    private int last = -1;

    public void Report(double value)
    {
        var percent = (int)(100 * Math.Clamp(value, 0, 1));
        if (!at.ErrorIsScreen || percent == Interlocked.Exchange(ref last, percent)) return;
        at.Error.Write($"\r{string.Create(CultureInfo.InvariantCulture, $"{what} {percent} %").PadRight(Wide)}");
    }

    /// <summary>Leaves the line clean.</summary>
    public static void Done(Terminal at)
    {
        if (at.ErrorIsScreen) at.Error.Write($"\r{new string(' ', Wide)}\r");
    }
}
