using System.Text.Json.Nodes;

namespace Wainwright.Fitout;

/// <summary>Brings a document of an older format up to the current one, a step per format.</summary>
public static class Migration
{
    /// <summary>Step i turns format i + 1 into format i + 2. A step, once published, is never changed.</summary>
    private static readonly Action<JsonObject>[] Steps = [];

    /// <summary>Changes <paramref name="document"/> in place from <paramref name="format"/> to <see cref="Job.CurrentFormat"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The format is not one of 1 to the current.</exception>
    public static void ToCurrent(JsonObject document, int format)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentOutOfRangeException.ThrowIfLessThan(format, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(format, Job.CurrentFormat);
        foreach (var step in Steps.Skip(format - 1)) step(document);
        document["format"] = Job.CurrentFormat;
    }
}
