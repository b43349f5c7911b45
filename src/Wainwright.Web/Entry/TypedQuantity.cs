using Wainwright.Fitout;

namespace Wainwright.Web.Entry;

/// <summary>A quantity as typed, with its doubt where one is given: <c>12.5 ± 0.2</c> or <c>12.5 +- 0.2</c>.</summary>
public static class TypedQuantity
{
    /// <summary>The quantity; <see langword="null"/> when it cannot be read.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="read">Reads a bare figure.</param>
    public static Measured? Of(string text, Func<string, double?> read)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(read);
        var pieces = text.Replace("+/-", "±", StringComparison.Ordinal).Replace("+-", "±", StringComparison.Ordinal).Split('±', StringSplitOptions.TrimEntries);
        return pieces switch
        {
            [var bare] when read(bare) is { } value => new Measured(value),
            [var bare, var doubt] when read(bare) is { } value && read(doubt) is { } d and >= 0 => new Measured(value, d),
            _ => null,
        };
    }
}
