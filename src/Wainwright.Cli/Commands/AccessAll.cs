using System.CommandLine;
using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain access</c>: what getting at all that asks for service costs in a year, and which single change saves most.</summary>
internal static class AccessAll
{
    private const int Usual = 3;

    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var changes = new Option<int>("--changes") { HelpName = "N", DefaultValueFactory = _ => Usual, Description = $"Rank so many single changes by what they save; 0 asks for none; {Usual} without it." };
        var change = new Option<int?>("--change") { HelpName = "N", Description = "With --out: the number of the change to make." };
        var to = new Option<string?>("--out") { HelpName = "FILE", Description = "Write the job with that change made to a new job file. JOB itself is left as it is." };
        var seconds = new Option<double?>("--seconds") { HelpName = "N", Description = "Stop after this long and say what was not asked. Without it the search counts its questions, so that every machine gives the same answer." };
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("access", "What it costs a year to get at everything that asks for service, part by part, and what would save most.", """
            Examples:
              wain access demo/bicycle-workshop.wain.json
              wain access J-014 --changes 0 --json
              wain access demo/bicycle-workshop.wain.json --change 1 --out with-hatch.json

            Every visit has a plan: exit 0. One is proved to have none: 1. None of that, but one cannot be told or was not asked: 3.
            """) { job, changes, change, to, seconds, store, json };
        command.Validators.Add(line =>
        {
            if (line.GetValue(changes) is < 0 or > 50) line.AddError("--changes is 0 to 50.");
            if (line.GetResult(change) is null != line.GetResult(to) is null) line.AddError("--change N and --out FILE go together.");
            if (line.GetValue(change) is < 1 or > 50) line.AddError("--change is the number of a change, from 1.");
            if (line.GetValue(seconds) is <= 0 or > 86_400 or double.NaN) line.AddError("--seconds is a number above 0, at most a day.");
        });
        command.SetAction((line, stop) =>
        {
            if (line.GetValue(to) is { } taken) NewFile.RefuseToOverwrite(taken);
            using var given = GivenJob.Open(line.GetRequiredValue(job), line.GetValue(store), at);
            using var budget = CancellationTokenSource.CreateLinkedTokenSource(stop);
            if (line.GetValue(seconds) is { } most) budget.CancelAfter(TimeSpan.FromSeconds(most));
            var options = new AccessOptions { Stop = budget.Token };
            var told = new ToldSoFar(at, "asked");
            var upkeep = UpkeepRound.Of(given.Job, options, told);
            var wanted = Math.Max(line.GetValue(changes), line.GetValue(change) ?? 0);
            var ranked = wanted == 0 ? new([], 0, 0, double.PositiveInfinity, true) : WhatIfRanking.Of(given.Job, upkeep, options, wanted, progress: new ToldSoFar(at, "planned changes"));
            told.Done();
            if (line.GetValue(change) is { } number) return Task.FromResult(Make(at, given.Job, ranked, number, line.GetValue(to)!));
            var answer = new AccessAnswer(line.GetRequiredValue(job), given.Job, upkeep, ranked);
            if (line.GetValue(json)) Shown.Json(at, answer.ForPrograms());
            else answer.InWords(at);
            return Task.FromResult(answer.Exit);
        });
        return command;
    }

    private static int Make(Terminal at, Job job, WhatIfs ranked, int number, string file)
    {
        if (ranked.Ranked.FirstOrDefault(c => c.Number == number) is not { } chosen)
            throw new BadInputException($"there is no change {number}; {(ranked.Ranked.Count == 0 ? "none was found" : $"the last is {ranked.Ranked.Count}")}");
        var made = chosen.Change.On(job).Job!;
        NewFile.Write(file, stream => stream.Write(JobFile.Write(made)));
        at.Out.WriteLine(Shown.Plain($"{file}: {job.Id} with this change made: {chosen.What}"));
        return Exit.Done;
    }
}
