using System.CommandLine;
using System.CommandLine.Parsing;
using Wainwright.Access;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain crew</c>: the plan laid out for several people, who does what when, as short by the clock as can be.</summary>
internal static class Crew
{
    public static Command Command(Terminal at)
    {
        var usual = new CrewOptions();
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var see = Plan.Parts("--see", "Get to see this part.");
        var reach = Plan.Parts("--reach", "Get a hand to this part.");
        var remove = Plan.Parts("--remove", "Take this part out.");
        var people = new Option<int>("--people") { HelpName = "N", DefaultValueFactory = _ => usual.People, Description = $"How many work, 1 to {CrewOptions.MostPeople}; {usual.People} without it." };
        var tools = new Option<int>("--tools") { HelpName = "N", DefaultValueFactory = _ => usual.ToolsOfAKind, Description = $"How many drivers, spanners, knives of each kind there are; {usual.ToolsOfAKind} without it." };
        var out_ = Plan.Parts("--already-out", "This part is out already.");
        var stay = Plan.Parts("--must-stay", "This part must stay in.");
        var stage = new Option<string?>("--stage") { HelpName = "ID", Description = "At this stage of the job: what is out then is out already. Without it the last stage, the van as it stands." };
        var seconds = new Option<double?>("--seconds") { HelpName = "N", Description = "Stop after this long with the best schedule so far and its lower bound. Without it the search counts its work, so that every machine gives the same answer." };
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("crew", "Who does what when: the cheapest plan laid out for several people, as short by the clock as can be.", """
            Examples:
              wain crew demo/touring-camper.wain.json --remove A54
              wain crew J-014 --remove A52 A40 --people 3 --tools 2
              wain crew J-014 --remove A04 --people 2 --json

            A schedule exits 0; proved that there is no way, or too few people for a step, 1; no plan within the budget, or too
            little measured to tell, 3.
            """) { job, see, reach, remove, people, tools, out_, stay, stage, seconds, store, json };
        people.Validators.Add(given => Within(given, CrewOptions.MostPeople));
        tools.Validators.Add(given => Within(given, 20));
        command.Validators.Add(line =>
        {
            if (line.GetResult(see) is null && line.GetResult(reach) is null && line.GetResult(remove) is null) line.AddError("Say what is wanted: --see PART, --reach PART or --remove PART.");
            if (line.GetValue(seconds) is <= 0 or > 86_400 or double.NaN) line.AddError("--seconds is a number above 0, at most a day.");
        });
        command.SetAction((line, stop) =>
        {
            using var given = GivenJob.Open(line.GetRequiredValue(job), line.GetValue(store), at);
            using var budget = CancellationTokenSource.CreateLinkedTokenSource(stop);
            if (line.GetValue(seconds) is { } most) budget.CancelAfter(TimeSpan.FromSeconds(most));
            var options = new AccessOptions
            {
                AlreadyOut = [.. Plan.Known(given.Job, line.GetValue(out_)), .. Plan.OutAt(given.Job, line.GetValue(stage))],
                MustStay = Plan.Known(given.Job, line.GetValue(stay)),
                Stop = budget.Token,
            };
            var plan = new RemovalPlanner(given.Job, options).Plan(
            [
                .. Plan.Known(given.Job, line.GetValue(remove)).Select(p => new Wanted(p, AccessKind.Remove)),
                .. Plan.Known(given.Job, line.GetValue(reach)).Select(p => new Wanted(p, AccessKind.Reach)),
                .. Plan.Known(given.Job, line.GetValue(see)).Select(p => new Wanted(p, AccessKind.See)),
            ]);
            var crew = new CrewOptions { People = line.GetValue(people), ToolsOfAKind = line.GetValue(tools) };
            var answer = new CrewAnswer(given.Job, plan, Wainwright.Access.Crew.Of(given.Job, plan, crew, options));
            if (line.GetValue(json)) Shown.Json(at, answer.ForPrograms());
            else answer.InWords(at);
            return Task.FromResult(answer.Exit);
        });
        return command;
    }

    private static void Within(OptionResult given, int most)
    {
        if (given.GetValueOrDefault<int>() is var n && (n < 1 || n > most)) given.AddError($"{given.Option.Name} is 1 to {most}.");
    }
}
