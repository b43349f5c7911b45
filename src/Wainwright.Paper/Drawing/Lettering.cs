namespace Wainwright.Paper;

/// <summary>How much room words take, near enough to place them: the page's fonts are the reader's.</summary>
internal static class Lettering
{
    public static double WidthMm(string text, double sizeMm) => text.Length * sizeMm * Ink.LetterWidth;

    /// <summary>Words in lines no wider than <paramref name="widthMm"/>; a longer word stands alone.</summary>
    public static IEnumerable<string> Wrap(string text, double sizeMm, double widthMm)
    {
        var line = "";
        foreach (var word in text.Split([' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && WidthMm(longer, sizeMm) > widthMm)
            {
                yield return line;
                longer = word;
            }
            line = longer;
        }
        if (line.Length > 0) yield return line;
    }
}
