using System.CommandLine;
using System.Text.Json;
using Wainwright.Fitout;
using Wainwright.Survey.Retention;
using Wainwright.Survey.Retention.Fix;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain hold</c>: in how many g each fitted part lets go, what decides, and which look would tell.</summary>
internal static class Hold
{
    // the same van gives the same chance every time
    private const int Seed = 1;

    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var part = new Argument<string?>("PART") { Arity = ArgumentArity.ZeroOrOne, Description = "Id of one part: all 26 directions, fixing by fixing. Without it a table of all." };
        var cases = new Option<string[]>("--case") { HelpName = "CASE", AllowMultipleArgumentsPerToken = true, Description = $"Judge against {string.Join(", ", Words())} instead of what the job says. More than one may be named." };
        var fix = new Option<bool>("--fix") { Description = "Find the cheapest fixings, latches and lips with which PART holds all that is asked, and judge it again." };
        var to = new Option<string?>("--out") { HelpName = "FILE", Description = "With --fix: write the job with all of that done to a new job file. JOB itself is left as it is." };
        var chance = new Option<int?>("--chance") { HelpName = "N", Description = "The chance that PART does not hold, from N seeded draws of all that is doubtful, 20 to 100000." };
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("hold", "In how many g each fitted part lets go, what decides, and which look would tell.", """
            Examples:
              wain hold demo/bicycle-workshop.wain.json
              wain hold demo/bicycle-workshop.wain.json B04
              wain hold J-014 --case tenAllRound --json
              wain hold demo/bicycle-workshop.wain.json B04 --fix --out mended.wain.json

            Everything holds: exit 0. Something falls short: 1. None falls short but one cannot be told: 3.
            """) { job, part, cases, fix, to, chance, store, json };
        command.Validators.Add(line =>
        {
            foreach (var named in line.GetValue(cases) ?? []) if (Case(named) is null) line.AddError($"“{named}” is no load case; name one of {string.Join(", ", Words())}.");
            if (line.GetValue(fix) && line.GetValue(part) is null) line.AddError("--fix mends one part: name it.");
            if (line.GetValue(chance) is < 20 or > 100_000) line.AddError("--chance is 20 to 100000 draws.");
            if (line.GetValue(chance) is not null && (line.GetValue(part) is null || line.GetValue(fix))) line.AddError("--chance goes with one PART, and not with --fix.");
            if (line.GetValue(to) is not null && !line.GetValue(fix)) line.AddError("--out goes with --fix.");
        });
        command.SetAction((line, stop) =>
        {
            if (line.GetValue(to) is { } taken) NewFile.RefuseToOverwrite(taken);
            using var given = GivenJob.Open(line.GetRequiredValue(job), line.GetValue(store), at);
            var chosen = (line.GetValue(cases) ?? []).Select(c => Case(c)!.Value).Distinct().ToList();
            if (line.GetValue(fix)) return Task.FromResult(Mended(at, given.Job, line.GetValue(part)!, chosen, line.GetValue(to), line.GetValue(json)));
            var holding = line.GetValue(part) is { } id ? One(given.Job, id, chosen) : Holding.Of(given.Job, chosen);
            var odds = line.GetValue(chance) is { } draws ? HoldingOdds.Of(given.Job, PartId.Of(line.GetValue(part)!), draws, Seed, chosen, stop) : null;
            var answer = new HoldAnswer(holding, line.GetValue(part) is not null, odds);
            if (line.GetValue(json)) Shown.Json(at, answer.ForPrograms());
            else answer.InWords(at);
            return Task.FromResult(answer.Exit);
        });
        return command;
    }

    private static int Mended(Terminal at, Job job, string id, IReadOnlyList<LoadCase> cases, string? to, bool json)
    {
        if (job.Parts.All(p => p.Id.Text != id)) throw new BadInputException($"there is no part “{id}” in {job.Id}");
        var answer = new MendAnswer(job, Mending.Of(job, PartId.Of(id), cases), to);
        if (to is not null && answer.Made is { } made) NewFile.Write(to, file => file.Write(JobFile.Write(made)));
        if (json) Shown.Json(at, answer.ForPrograms());
        else answer.InWords(at);
        return answer.Exit;
    }

    private static JobHolding One(Job job, string id, IReadOnlyList<LoadCase> cases)
    {
        if (job.Parts.All(p => p.Id.Text != id)) throw new BadInputException($"there is no part “{id}” in {job.Id}");
        return new(job, Holding.Chosen(job, cases), [Holding.Of(job, PartId.Of(id), cases)]);
    }

    private static IEnumerable<string> Words() => Enum.GetNames<LoadCase>().Select(JsonNamingPolicy.CamelCase.ConvertName);

    private static LoadCase? Case(string named) => Enum.TryParse<LoadCase>(named, ignoreCase: true, out var load) && !char.IsAsciiDigit(named[0]) ? load : null;
}
