using System.CommandLine;
using System.Text.Json;
using Wainwright.Fitout;
using Wainwright.Survey.Retention;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain hold</c>: in how many g each fitted part lets go, what decides, and which look would tell.</summary>
internal static class Hold
{
    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var part = new Argument<string?>("PART") { Arity = ArgumentArity.ZeroOrOne, Description = "Id of one part: all 26 directions, fixing by fixing. Without it a table of all." };
        var cases = new Option<string[]>("--case") { HelpName = "CASE", AllowMultipleArgumentsPerToken = true, Description = $"Judge against {string.Join(", ", Words())} instead of what the job says. More than one may be named." };
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("hold", "In how many g each fitted part lets go, what decides, and which look would tell.", """
            Examples:
              wain hold demo/bicycle-workshop.wain.json
              wain hold demo/bicycle-workshop.wain.json B04
              wain hold J-014 --case tenAllRound --json

            Everything holds: exit 0. Something falls short: 1. None falls short but one cannot be told: 3.
            """) { job, part, cases, store, json };
        command.Validators.Add(line =>
        {
            foreach (var named in line.GetValue(cases) ?? []) if (Case(named) is null) line.AddError($"“{named}” is no load case; name one of {string.Join(", ", Words())}.");
        });
        command.SetAction(line =>
        {
            using var given = GivenJob.Open(line.GetRequiredValue(job), line.GetValue(store), at);
            var chosen = (line.GetValue(cases) ?? []).Select(c => Case(c)!.Value).Distinct().ToList();
            var holding = line.GetValue(part) is { } id ? One(given.Job, id, chosen) : Holding.Of(given.Job, chosen);
            var answer = new HoldAnswer(holding, line.GetValue(part) is not null);
            if (line.GetValue(json)) Shown.Json(at, answer.ForPrograms());
            else answer.InWords(at);
            return answer.Exit;
        });
        return command;
    }

    private static JobHolding One(Job job, string id, IReadOnlyList<LoadCase> cases)
    {
        if (job.Parts.All(p => p.Id.Text != id)) throw new BadInputException($"there is no part “{id}” in {job.Id}");
        return new(job, Holding.Chosen(job, cases), [Holding.Of(job, PartId.Of(id), cases)]);
    }

    private static IEnumerable<string> Words() => Enum.GetNames<LoadCase>().Select(JsonNamingPolicy.CamelCase.ConvertName);

    private static LoadCase? Case(string named) => Enum.TryParse<LoadCase>(named, ignoreCase: true, out var load) && !char.IsAsciiDigit(named[0]) ? load : null;
}
