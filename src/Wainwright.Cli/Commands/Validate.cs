using System.CommandLine;
using Wainwright.Fitout;
using Wainwright.Records;
using Wainwright.Survey;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain validate</c>: everything wrong with a job in one pass.</summary>
internal static class Validate
{
    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("validate", "Say everything that is wrong or doubtful about a job: where, which rule, how to mend it.", """
            Examples:
              wain validate demo/touring-camper.wain.json
              wain validate van.wain.json --json
              wain validate from-the-other-shop.zip

            Errors make it exit 2. Doubts do not: the van may really be so, but somebody should look.
            """) { job, store, json };
        command.SetAction(line => Of(line.GetRequiredValue(job), line.GetValue(store), line.GetValue(json), at));
        return command;
    }

    private static int Of(string name, string? store, bool json, Terminal at)
    {
        var reading = Read(name, store, at);
        var issues = reading.Job is { } job ? [.. reading.Issues, .. Overlaps.Of(job).Select(o => Doubt(job, o))] : reading.Issues;
        var errors = issues.Count(i => i.Weight == Weight.Error);
        if (json) Shown.Json(at, new Answer(name, reading.Format, errors == 0, errors, issues.Count - errors, issues));
        else Words(name, issues, errors, at);
        return errors > 0 ? Exit.BadInput : Exit.Done;
    }

    private static JobReading Read(string name, string? store, Terminal at)
    {
        if (!GivenJob.IsFile(name))
        {
            using var given = GivenJob.Open(name, store, at);
            return new(given.Job, JobRules.Of(given.Job), given.Job.Format);
        }
        if (!GivenFile.IsContainer(name)) return GivenFile.ReadJob(name);
        using var file = GivenFile.Open(name);
        using var container = Container.Read(file);
        return new(container.Job, container.Issues, container.Job?.Format ?? 0);
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

    private sealed record Answer(string Job, int Format, bool Usable, int Errors, int Doubts, IReadOnlyList<Issue> Issues);
}
