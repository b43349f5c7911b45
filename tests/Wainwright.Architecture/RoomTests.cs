namespace Wainwright.Architecture;

/// <summary>Who may import whom. The table is that of docs/architecture.md; a change here is a change there.</summary>
public sealed class RoomTests
{
    static readonly string[] Below = ["Fitout", "Geometry", "Methods", "Access", "Survey", "Records", "Paper"];

    static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Fitout"] = [],
        ["Geometry"] = [],
        ["Methods"] = [],
        ["Access"] = ["Fitout", "Geometry", "Methods"],
        ["Survey"] = ["Fitout", "Geometry", "Methods", "Access"],
        ["Records"] = ["Fitout"],
        ["Paper"] = ["Fitout", "Geometry", "Access", "Survey"],
        ["Web"] = Below,
        ["Cli"] = [.. Below, "Web"],
    };

    static readonly string[] Pure = ["Fitout", "Geometry", "Methods", "Access", "Survey"];

    public static TheoryData<string> Rooms => [.. House.Rooms];

    [Fact]
    public void Every_room_on_disk_has_a_row_in_the_table() => Assert.Empty(House.Rooms.Except(Allowed.Keys));

    [Theory, MemberData(nameof(Rooms))]
    public void A_project_file_names_only_the_rooms_its_row_allows(string room)
    {
        var named = House.Project(room).Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value).Split('.')[1]);
        Assert.Empty(named.Except(Allowed[room]));
    }

    [Theory, MemberData(nameof(Rooms))]
    public void A_compiled_room_refers_only_to_the_rooms_its_row_allows(string room)
    {
        using var compiled = new Compiled(House.Assembly(room));
        var used = compiled.References.Where(r => r.StartsWith("Wainwright.", StringComparison.Ordinal)).Select(r => r.Split('.')[1]);
        Assert.Empty(used.Except(Allowed[room]));
        Assert.DoesNotContain("wain", compiled.References);
    }

    [Theory, MemberData(nameof(Rooms))]
    public void The_pure_rooms_and_no_others_are_built_as_pure_core(string room) =>
        Assert.Equal(Pure.Contains(room), House.Project(room).Descendants("PureCore").Any(p => p.Value == "true"));

    [Fact]
    public void The_ban_on_clock_chance_and_files_still_stands_in_the_build()
    {
        Assert.Contains("BannedSymbols.txt", File.ReadAllText(Path.Combine(House.Top, "Directory.Build.targets")), StringComparison.Ordinal);
        var banned = File.ReadAllText(Path.Combine(House.Top, "BannedSymbols.txt"));
        foreach (var symbol in (string[])["System.DateTime.UtcNow", "System.Random.Shared", "System.IO.File;", "System.Guid.NewGuid", "System.Console"])
            Assert.Contains(symbol, banned, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Rooms))]
    public void Every_room_says_at_its_door_what_it_knows(string room)
    {
        var page = File.ReadAllLines(Path.Combine(House.Folder(room), "README.md"));
        Assert.InRange(page.Length, 8, 25);
    }

    /// <summary>A program that a test starts and kills is built with that test and holds none of its own.</summary>
    [Fact]
    public void Every_project_is_in_the_solution_or_built_for_one_that_is()
    {
        var solution = File.ReadAllText(Path.Combine(House.Top, "Wainwright.slnx"));
        var projects = House.Written(".csproj").ToLookup(p => solution.Contains($"\"{p}\"", StringComparison.Ordinal));
        var named = string.Concat(projects[true].Select(p => File.ReadAllText(Path.Combine(House.Top, p))));
        Assert.All(projects[false], p => Assert.Contains($"/{Path.GetFileName(p)}\"", named, StringComparison.Ordinal));
    }
}
