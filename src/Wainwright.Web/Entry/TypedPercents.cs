using System.Globalization;

namespace Wainwright.Web.Entry;

/// <summary>Thresholds of moisture as typed: <c>16, 20, 28</c>.</summary>
public static class TypedPercents
{
    // what the map takes [%]
    private const double Least = 5, Most = 60;

    /// <summary>The thresholds, lowest first, or why they cannot be read; nothing typed gives none.</summary>
    public static (IReadOnlyList<double> Percent, string? Fault) Of(string? text)
    {
        List<double> read = [];
        foreach (var word in (text ?? "").Split([',', ';', ' ', '%'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (!double.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent)) return ([], $"“{word}” is not a number: write the thresholds as 16, 20, 28. The usual ones are shown.");
            if (percent is not (>= Least and <= Most)) return ([], $"A threshold is {Least} to {Most} %, not {word}. The usual ones are shown.");
            read.Add(percent);
        }
        return ([.. read.Distinct().Order()], null);
    }
}
