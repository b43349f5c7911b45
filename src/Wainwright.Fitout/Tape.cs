using System.Globalization;
using System.Text.RegularExpressions;

namespace Wainwright.Fitout;

/// <summary>A tape measure as people read it: <c>812</c>, <c>81.2 cm</c>, <c>2' 8"</c>, <c>31 15/16 in</c>, <c>3 ft 4 5/8</c>.</summary>
public static partial class Tape
{
    private const double InchMm = 25.4;

    /// <summary>
    /// Millimetres of a reading; <see langword="null"/> when it cannot be read. A bare number is in <paramref name="bare"/>.
    /// </summary>
    /// <param name="text">What was typed; a comma serves as decimal point.</param>
    /// <param name="bare">The unit of a number without one.</param>
    public static double? Mm(string? text, TapeUnit bare = TapeUnit.Millimetre)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        var typed = text.Trim().ToLowerInvariant().Replace(',', '.').Replace('′', '\'').Replace('″', '"').Replace("''", "\"", StringComparison.Ordinal).Replace('’', '\'').Replace('”', '"').Replace('−', '-');
        if (Metric().Match(typed) is { Success: true } metric && (metric.Groups["unit"].Length > 0 || bare == TapeUnit.Millimetre))
            return Number(metric.Groups["number"].Value) * metric.Groups["unit"].Value switch { "m" => 1000, "cm" => 10, _ => 1 };
        if (Imperial().Match(typed) is not { Success: true } us || (us.Groups["feet"].Length == 0 && us.Groups["inches"].Length == 0 && us.Groups["over"].Length == 0)) return null;
        var inches = Number(us.Groups["feet"].Value) * 12 + Number(us.Groups["inches"].Value);
        if (us.Groups["over"].Length > 0)
        {
            var under = Number(us.Groups["under"].Value);
            if (under == 0) return null;
            inches += Number(us.Groups["over"].Value) / under;
        }
        return (us.Groups["sign"].Value == "-" ? -1 : 1) * inches * InchMm;
    }

    /// <summary>Millimetres as a tape in inches shows them, to the nearest sixteenth, the fraction in lowest terms.</summary>
    public static string Inches(double mm)
    {
        var sixteenths = (long)Math.Round(Math.Abs(mm) / InchMm * 16, MidpointRounding.AwayFromZero);
        var (whole, part) = (sixteenths / 16, sixteenths % 16);
        var under = 16;
        while (part > 0 && part % 2 == 0) (part, under) = (part / 2, under / 2);
        var sign = mm < 0 && sixteenths > 0 ? "-" : "";
        var fraction = part == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{part}/{under}");
        return string.Create(CultureInfo.InvariantCulture, $"{sign}{(whole > 0 || part == 0 ? whole.ToString(CultureInfo.InvariantCulture) : "")}{(whole > 0 && part > 0 ? " " : "")}{fraction} in");
    }

    private static double Number(string text) => text.Length == 0 ? 0 : double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<number>-?[0-9]{1,6}(?:\\.[0-9]{1,4})?)\\s*(?<unit>mm|cm|m)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Metric();

    [GeneratedRegex("^(?<sign>-)?(?:(?<feet>[0-9]{1,3}(?:\\.[0-9]{1,4})?)\\s*(?:'|ft)\\s*)?(?:(?<inches>[0-9]{1,5}(?:\\.[0-9]{1,4})?)(?!\\s*/)(?:\\s+|-|\\s*(?=\"|in|$)))?(?:(?<over>[0-9]{1,3})\\s*/\\s*(?<under>[0-9]{1,3})\\s*)?(?:\"|in)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Imperial();
}

/// <summary>What a bare number on a tape means.</summary>
public enum TapeUnit
{
    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Inches.</summary>
    Inch,
}
