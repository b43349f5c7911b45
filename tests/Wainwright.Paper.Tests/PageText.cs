using System.Net;
using System.Text.RegularExpressions;

namespace Wainwright.Paper.Tests;

/// <summary>A page as somebody reads it: words only, one block to a line.</summary>
internal static partial class PageText
{
    public static string Of(string html)
    {
        var body = Unread().Replace(html, "");
        var lines = WebUtility.HtmlDecode(Tag().Replace(Inline().Replace(body, " "), "\n")).Split('\n').Select(l => Spaces().Replace(l, " ").Trim());
        return string.Join('\n', lines.Where(l => l.Length > 0)) + "\n";
    }

    /// <summary>Compares with the approved text; on a difference leaves what was received beside the tests' program.</summary>
    public static void IsApproved(string name, string text)
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "Approved");
        var approved = Path.Combine(folder, $"{name}.txt");
        var expected = File.Exists(approved) ? File.ReadAllText(approved).ReplaceLineEndings("\n") : "";
        if (expected == text) return;
        var received = Path.Combine(folder, $"{name}.received.txt");
        Directory.CreateDirectory(folder);
        File.WriteAllText(received, text);
        Assert.Fail($"The text differs from Approved/{name}.txt. Read {received}; if it is right, put it in the approved one's place.\nFirst difference: {FirstDifference(expected, text)}");
    }

    private static string FirstDifference(string expected, string text)
    {
        var (a, b) = (expected.Split('\n'), text.Split('\n'));
        var at = Enumerable.Range(0, Math.Max(a.Length, b.Length)).First(i => a.ElementAtOrDefault(i) != b.ElementAtOrDefault(i));
        return $"line {at + 1}: “{a.ElementAtOrDefault(at)}” became “{b.ElementAtOrDefault(at)}”";
    }

    [GeneratedRegex("<style>.*?</style>|<svg.*?</svg>|<title>.*?</title>|<!doctype[^>]*>", RegexOptions.Singleline)]
    private static partial Regex Unread();

    [GeneratedRegex("</?(b|i|span|small|td|th|dt)\\b[^>]*>")]
    private static partial Regex Inline();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();
}
