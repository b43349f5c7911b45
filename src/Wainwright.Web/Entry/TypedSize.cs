using System.Text.RegularExpressions;
using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>A size in one go: <c>800 x 560 x 428</c>, <c>31 1/2 × 22 × 16 7/8</c>, <c>80x56x42.8 cm</c>. Length along the van first, then width, then height.</summary>
public static partial class TypedSize
{
    /// <summary>The size [mm], or why it cannot be read.</summary>
    public static (Place? Size, string? Fault) Of(string? text, Measures bare)
    {
        if (string.IsNullOrWhiteSpace(text)) return (null, null);
        var pieces = Times().Split(text.Trim());
        if (pieces.Length != 3) return (null, $"length x width x height, three measures; {pieces.Length} found");
        var unit = TrailingUnit().Match(pieces[2]).Value;
        var mm = new double[3];
        for (var i = 0; i < 3; i++)
        {
            // a unit at the end speaks for all three
            var piece = i < 2 && unit.Length > 0 && !TrailingUnit().IsMatch(pieces[i]) ? pieces[i] + unit : pieces[i];
            if (Figures.Mm(piece, bare) is not { } value) return (null, $"“{pieces[i].Trim()}” is not a measure");
            if (value <= 0) return (null, "each measure is above 0; a thin sheet has a thickness too");
            mm[i] = value;
        }
        return (new Place(mm[0], mm[1], mm[2]), null);
    }

    [GeneratedRegex("\\s*[x×*]\\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Times();

    [GeneratedRegex("\\s*(mm|cm|m|in|\")\\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex TrailingUnit();
}
