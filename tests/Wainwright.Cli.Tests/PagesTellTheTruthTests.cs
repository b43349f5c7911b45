using System.Text.RegularExpressions;

namespace Wainwright.Cli.Tests;

/// <summary>What README and CONTRIBUTING say can be done is what is there.</summary>
public sealed partial class PagesTellTheTruthTests
{
    public static TheoryData<string> Pages => ["README.md", "CONTRIBUTING.md", "SECURITY.md", "docs/architecture.md", "docs/command-line.md", "docs/job-file.md", "docs/decisions/0001-one-json-document.md"];

    [Fact]
    public void The_answer_shown_in_the_README_is_the_answer_given()
    {
        var shown = Asked().Match(Page("README.md"));
        Assert.True(shown.Success);
        var args = shown.Groups["args"].Value.Split(' ').Select(a => a.StartsWith("demo/", StringComparison.Ordinal) ? Path.Combine(Repository.Top, a) : a).ToArray();
        var said = new Queue<string>(Ran.Wain(args).Out.Split('\n'));
        foreach (var line in shown.Groups["answer"].Value.TrimEnd().Split('\n').Where(l => l != "…"))
        {
            while (said.Count > 0 && said.Peek() != line) said.Dequeue();
            Assert.True(said.Count > 0, $"the README shows “{line}”, which is not said there");
        }
    }

    [Theory, MemberData(nameof(Pages))]
    public void Every_file_that_a_page_links_to_or_names_is_there(string page)
    {
        var folder = Path.GetDirectoryName(Path.Combine(Repository.Top, page))!;
        var links = Link().Matches(Page(page)).Select(m => m.Groups[1].Value).Where(l => !l.Contains("://", StringComparison.Ordinal)).Select(l => Path.Combine(folder, l.Split('#')[0]));
        var named = Named().Matches(Page(page)).Select(m => Path.Combine(Repository.Top, m.Groups[1].Value));
        Assert.All(links.Concat(named), path => Assert.True(Path.Exists(path), $"{page} names {path}, which is not there"));
    }

    [Fact]
    public void The_page_of_the_command_line_names_every_command() =>
        Assert.All(CommandLineTests.Commands, c => Assert.Contains($"`wain {c.Data}", Page("docs/command-line.md"), StringComparison.Ordinal));

    static string Page(string path) => File.ReadAllText(Path.Combine(Repository.Top, path)).ReplaceLineEndings("\n");

    [GeneratedRegex("```\n\\$ \\./wain (?<args>[^\n]+)\n(?<answer>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Asked();

    [GeneratedRegex("\\]\\(([^)#][^)]*)\\)")]
    private static partial Regex Link();

    /// <summary>A path of the repository in backticks, without a placeholder in it.</summary>
    [GeneratedRegex("`((?:src|tests|demo|docs|bench)/[A-Za-z0-9._/-]+)`")]
    private static partial Regex Named();
}
