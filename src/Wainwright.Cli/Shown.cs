using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Wainwright.Survey;

namespace Wainwright.Cli;

/// <summary>How answers are written for programs: docs/command-line.md describes every shape.</summary>
internal static class Shown
{
    public static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    public static void Json<T>(Terminal at, T answer) => at.Out.WriteLine(JsonSerializer.Serialize(answer, Options));

    /// <summary>A quantity in doubt for a person: as many digits as a workshop reads.</summary>
    public static string Rounded(Span span)
    {
        static string Of(double v) => v.ToString(Math.Abs(v) < 10 ? "0.##" : Math.Abs(v) < 1_000 ? "0.#" : "0", CultureInfo.InvariantCulture);
        return span.Low == span.High ? Of(span.Likely) : $"{Of(span.Likely)} ({Of(span.Low)} to {Of(span.High)})";
    }

    /// <summary>
    /// Text from a file made fit for a terminal: control characters, which could move its cursor or repaint it, are shown as dots.
    /// </summary>
    public static string Plain(string text)
    {
        if (!text.Any(char.IsControl)) return text;
        var plain = new StringBuilder(text.Length);
        foreach (var c in text) plain.Append(char.IsControl(c) ? '·' : c);
        return plain.ToString();
    }
}
