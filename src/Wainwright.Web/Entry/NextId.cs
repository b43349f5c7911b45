using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Web.Entry;

/// <summary>The id that follows on in a list, in the manner of those before it: after <c>A64</c> comes <c>A65</c>.</summary>
public static class NextId
{
    /// <summary>The next free id.</summary>
    /// <param name="ids">Ids there are.</param>
    /// <param name="start">Letters to begin with in an empty list.</param>
    /// <param name="digits">Digits of a first id.</param>
    public static string After(IEnumerable<string> ids, string start, int digits = 2)
    {
        var all = ids.ToHashSet();
        var last = all.Select(Split).Where(s => s is not null).Select(s => s!.Value).GroupBy(s => s.Letters).MaxBy(g => g.Count())?.MaxBy(s => s.Number);
        var (letters, number, width) = last ?? (start, 0, digits);
        string next;
        do next = letters + (++number).ToString(CultureInfo.InvariantCulture).PadLeft(width, '0');
        while (all.Contains(next));
        return next;
    }

    private static (string Letters, int Number, int Width)? Split(string id)
    {
        var digits = id.Reverse().TakeWhile(char.IsAsciiDigit).Count();
        return digits is > 0 and < 8 ? (id[..^digits], int.Parse(id[^digits..], CultureInfo.InvariantCulture), digits) : null;
    }
}
