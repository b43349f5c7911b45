using System.Text.Json.Nodes;

namespace Wainwright.Fitout;

/// <summary>Brings a document of an older format up to the current one, a step per format.</summary>
public static class Migration
{
    /// <summary>
    /// Step i turns format i + 1 into format i + 2; none yet, since format 1 is the first. A step, once published, is never changed.
    /// </summary>
    private static readonly Action<JsonObject>[] Steps = [];

    /// <summary>Changes <paramref name="document"/> in place from <paramref name="format"/> to <see cref="Job.CurrentFormat"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The format is not one of 1 to the current.</exception>
    public static void ToCurrent(JsonObject document, int format) => Run(document, format, Steps);

    internal static void Run(JsonObject document, int format, IReadOnlyList<Action<JsonObject>> steps)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentOutOfRangeException.ThrowIfLessThan(format, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(format, steps.Count + 1);
        foreach (var step in steps.Skip(format - 1)) step(document);
        document["format"] = steps.Count + 1;
    }

    /// <summary>How many formats the steps lead to; equal to <see cref="Job.CurrentFormat"/>.</summary>
    internal static int LeadsTo => Steps.Length + 1;
}
