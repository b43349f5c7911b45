using System.Globalization;
using Wainwright.Access;

namespace Wainwright.Cli;

/// <summary>How far a long command has come, on one line of a screen that is written over; nothing where errors go to a file.</summary>
internal sealed class ToldSoFar(Terminal at, string what) : IProgress<AccessProgress>
{
    private const int Wide = 78;

    public void Report(AccessProgress value)
    {
        if (!at.ErrorIsScreen) return;
        var line = Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{what} {value.Done} of {value.Total}: {value.Now}"));
        at.Error.Write($"\r{(line.Length > Wide ? line[..(Wide - 1)] + "…" : line.PadRight(Wide))}");
    }

    /// <summary>Leaves the line clean.</summary>
    public void Done()
    {
        if (at.ErrorIsScreen) at.Error.Write($"\r{new string(' ', Wide)}\r");
    }
}
