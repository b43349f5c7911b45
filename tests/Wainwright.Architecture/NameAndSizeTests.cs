using System.Text.RegularExpressions;

namespace Wainwright.Architecture;

/// <summary>Files small, names of the trade.</summary>
public sealed partial class NameAndSizeTests
{
    const int LongestLines = 400;

    static readonly string[] Drawers = ["Helper", "Helpers", "Util", "Utils", "Manager", "Processor", "Service", "Base", "Data", "Info", "Common", "Impl"];

    /// <summary>Service is a word of the van here, and only here.</summary>
    static readonly string[] OfTheTrade = ["ServiceNeed", "ServiceAccess"];

    [Fact]
    public void No_file_is_longer_than_400_lines_without_a_reason()
    {
        var reasons = File.ReadLines(Path.Combine(House.Top, "tests", "Wainwright.Architecture", "long-files.txt"))
            .Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split(": ", 2)).ToDictionary(l => l[0], l => l[1]);
        var tooLong = House.Written(".cs", ".razor", ".ts", ".css", ".mjs").Where(p => File.ReadLines(Path.Combine(House.Top, p)).Count() > LongestLines).ToList();
        Assert.Empty(tooLong.Except(reasons.Keys));
        Assert.Empty(reasons.Keys.Except(tooLong));
        Assert.All(reasons.Values, r => Assert.True(r.Length > 20, "a reason is a sentence"));
    }

    [Theory, MemberData(nameof(RoomTests.Rooms), MemberType = typeof(RoomTests))]
    public void No_type_is_named_like_a_drawer(string room)
    {
        using var compiled = new Compiled(House.Assembly(room));
        Assert.DoesNotContain(compiled.Types.Except(OfTheTrade), t => Humps().Matches(t).Any(h => Drawers.Contains(h.Value)));
    }

    [GeneratedRegex("[A-Z][a-z0-9]*")]
    private static partial Regex Humps();
}
