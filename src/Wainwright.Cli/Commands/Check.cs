using System.CommandLine;
using Wainwright.Survey;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain check</c>: every check that applies to a job, in order of danger.</summary>
internal static class Check
{
    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var on = Day.Option();
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("check", "Judge a van: what holds, what falls short by how much, what cannot be told and which look would tell.", """
            Examples:
              wain check demo/touring-camper.wain.json
              wain check J-014 --json
              wain check J-014 --on 2026-03-14

            Everything holds: exit 0. One falls short: 1. None falls short but one cannot be told: 3.
            """) { job, on, store, json };
        command.SetAction(line =>
        {
            var day = Day.Is(line.GetValue(on), at);
            using var given = GivenJob.Open(line.GetRequiredValue(job), line.GetValue(store), at);
            var answer = new CheckAnswer(given.Job, Checks.All(given.Job, day), day);
            if (line.GetValue(json)) Shown.Json(at, answer.ForPrograms());
            else answer.InWords(at);
            return answer.Exit;
        });
        return command;
    }
}
