using System.CommandLine;
using Wainwright.Fitout;
using Wainwright.Survey;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain validate</c>: everything wrong with a job file in one pass.</summary>
internal static class Validate
{
    public static Command Command(Terminal at)
    {
        var file = new Argument<string>("FILE") { Description = "A job file (.json)." };
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Command("validate", "Say everything that is wrong or doubtful about a job file: where, which rule, how to mend it.") { file, json }.By("""
            Examples:
              wain validate demo/touring-camper.wain.json
              wain validate van.wain.json --json

            Errors make it exit 2. Doubts do not: the van may really be so, but somebody should look.
            """);
        command.SetAction(line => Of(line.GetRequiredValue(file), line.GetValue(json), at));
        return command;
    }

    private static int Of(string path, bool json, Terminal at)
    {
        var reading = GivenFile.ReadJob(path);
        var issues = reading.Job is { } job ? [.. reading.Issues, .. Overlaps.Of(job).Select(o => Doubt(job, o))] : reading.Issues;
        var errors = issues.Count(i => i.Weight == Weight.Error);
        if (json) Shown.Json(at, new Answer(path, reading.Format, errors == 0, errors, issues.Count - errors, issues));
        else Words(path, issues, errors, at);
        return errors > 0 ? Exit.BadInput : Exit.Done;
    }

    /// <summary>Two parts in one place are no error of the file: a tape was misread, or a part is described too simply.</summary>
    private static Issue Doubt(Job job, Overlap overlap)
    {
        var at = job.Parts.Index().First(p => p.Item.Id == overlap.First).Index;
        return new($"job.parts[{at}] ({overlap.First})", $"stands at least {overlap.DepthMm} mm inside {overlap.Second}", "measure both again, or describe the hollow one by its panels", Weight.Doubt);
    }

    private static void Words(string path, IReadOnlyList<Issue> issues, int errors, Terminal at)
    {
        var ink = new Ink(at.Colour);
        foreach (var issue in issues)
        {
            var word = issue.Weight == Weight.Error ? ink.Bad("error") : ink.Doubt("doubt");
            (issue.Weight == Weight.Error ? at.Error : at.Out).WriteLine($"{word}  {ink.Strong(Shown.Plain(issue.Where))}: {Shown.Plain(issue.Rule)}\n       {Shown.Plain(issue.Mend)}");
        }
        var doubts = issues.Count - errors;
        var sum = $"{path}: {Counted(errors, "error")}, {Counted(doubts, "doubt")}";
        (errors > 0 ? at.Error : at.Out).WriteLine(errors > 0 ? ink.Bad(sum) : ink.Good(sum));
    }

    private static string Counted(int count, string what) => $"{(count == 0 ? "no" : count)} {what}{(count == 1 ? "" : "s")}";

    private sealed record Answer(string File, int Format, bool Usable, int Errors, int Doubts, IReadOnlyList<Issue> Issues);
}
