using System.Globalization;
using System.Reflection;

namespace Wainwright.Cli;

/// <summary>Writes the details of a fault of our own where the person can find and send them.</summary>
internal static class OurFault
{
    /// <summary>One sentence that says where the details are.</summary>
    public static string WriteDown(IReadOnlyList<string> args, Exception fault, Terminal at)
    {
        var when = at.Clock.GetUtcNow();
        var file = Path.Combine(Path.GetTempPath(), string.Create(CultureInfo.InvariantCulture, $"wain-fault-{when:yyyyMMdd-HHmmss}-{Environment.ProcessId}.txt"));
        var details = string.Create(CultureInfo.InvariantCulture,
            $"{when:O}\nwain {Assembly.GetExecutingAssembly().GetName().Version}\narguments: {string.Join(' ', args)}\n\n{fault}\n");
        try
        {
            File.WriteAllText(file, details);
            return $"The details are in {file}";
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return $"The details could not be kept ({error.Message}); here they are:\n{details}";
        }
    }
}
