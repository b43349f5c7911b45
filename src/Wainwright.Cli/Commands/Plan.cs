using System.CommandLine;
using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Paper;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain plan</c>: what must come out, in which order, by which door, in how long; proved, or said that it is not.</summary>
internal static class Plan
{
    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var reach = Parts("--reach", "Get a hand to this part.");
        var remove = Parts("--remove", "Take this part out.");
        var out_ = Parts("--already-out", "This part is out already.");
        var stay = Parts("--must-stay", "This part must stay in.");
        var stage = new Option<string?>("--stage") { HelpName = "ID", Description = "Plan for this stage of the job: what is out then is out already. Without it nothing is." };
        var clearance = new Option<int?>("--clearance") { HelpName = "MM", Description = $"Room wanted between a part on its way and what it passes; {new AccessOptions().ClearanceMm} without it." };
        var seconds = new Option<double?>("--seconds") { HelpName = "N", Description = "Stop after this long with the best plan so far and its lower bound. Without it the search counts its questions, so that every machine gives the same answer." };
        var sheet = new Option<string?>("--sheet") { HelpName = "FILE", Description = "Also make the work sheet with steps to tick: .html, or .pdf where a Chromium is installed. An older one of that name is replaced." };
        var audit = new Option<bool>("--audit") { Description = "Replay the plan step by step by code the planner does not use: collisions, reach, needs, doors, people, sums. A fault exits 70." };
        var on = Day.Option();
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("plan", "The cheapest way to a part, in labour minutes, with its proof.", """
            Examples:
              wain plan demo/bicycle-workshop.wain.json --remove B11
              wain plan J-014 --reach A52 --json
              wain plan J-014 --remove A52 --must-stay A10 --already-out A03
              wain plan J-014 --remove A52 --sheet heater.pdf
              wain plan demo/touring-camper.wain.json --remove A40 --audit

            A plan found exits 0; proved that there is none, 1; neither within the budget, or too close or too little measured
            to tell, 3.
            """) { job, reach, remove, out_, stay, stage, clearance, seconds, audit, sheet, on, store, json };
        command.Validators.Add(line =>
        {
            if (line.GetResult(reach) is null == line.GetResult(remove) is null) line.AddError("Say either --reach PART or --remove PART.");
            if (line.GetValue(seconds) is <= 0 or > 86_400 or double.NaN) line.AddError("--seconds is a number above 0, at most a day.");
            if (line.GetValue(clearance) is < 0 or > 100) line.AddError("--clearance is 0 to 100 mm.");
        });
        command.SetAction(async (line, stop) =>
        {
            var page = line.GetValue(sheet) is { } file ? new PageFile(file, line.GetRequiredValue(job)) : null;
            var day = Day.Is(line.GetValue(on), at);
            using var given = GivenJob.Open(line.GetRequiredValue(job), line.GetValue(store), at);
            using var budget = CancellationTokenSource.CreateLinkedTokenSource(stop);
            if (line.GetValue(seconds) is { } most) budget.CancelAfter(TimeSpan.FromSeconds(most));
            var reachOnly = line.GetResult(reach) is not null;
            var wanted = Known(given.Job, line.GetValue(reachOnly ? reach : remove));
            var usual = new AccessOptions();
            var planner = new RemovalPlanner(given.Job, usual with
            {
                AlreadyOut = [.. Known(given.Job, line.GetValue(out_)), .. OutAt(given.Job, line.GetValue(stage))],
                MustStay = Known(given.Job, line.GetValue(stay)),
                ClearanceMm = line.GetValue(clearance) ?? usual.ClearanceMm,
                Stop = budget.Token,
            });
            var plan = reachOnly ? planner.Reach(wanted) : planner.Remove(wanted);
            var replay = line.GetValue(audit) ? planner.Audit(plan) : null;
            var answer = new PlanAnswer(given.Job, plan) { Audit = replay };
            if (line.GetValue(json)) Shown.Json(at, answer.ForPrograms());
            else answer.InWords(at);
            if (page is not null) await page.Write(await Sheets.Removal(given.Job, plan, day).ConfigureAwait(false), stop).ConfigureAwait(false);
            return answer.Exit;
        });
        return command;
    }

    private static Option<string[]> Parts(string name, string what) =>
        new(name) { HelpName = "PART", Description = $"{what} May stand several times.", AllowMultipleArgumentsPerToken = true };

    private static IReadOnlyList<PartId> OutAt(Job job, string? stage) =>
        stage is null ? [] : job.Stages.FirstOrDefault(s => s.Id.Text == stage)?.PartsOut
            ?? throw new BadInputException($"there is no stage “{stage}” in this job{(job.Stages.Count > 0 ? $"; there is {string.Join(", ", job.Stages.Select(s => s.Id))}" : "")}");

    private static List<PartId> Known(Job job, string[]? ids)
    {
        var parts = job.Parts.Select(p => p.Id.Text).ToHashSet();
        if (ids?.FirstOrDefault(id => !parts.Contains(id)) is { } unknown)
        {
            var near = parts.Where(p => p.StartsWith(unknown, StringComparison.OrdinalIgnoreCase) || string.Equals(p, unknown, StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal).Take(8).ToList();
            throw new BadInputException($"there is no part “{unknown}” in this job{(near.Count > 0 ? $"; there is {string.Join(", ", near)}" : "")}");
        }
        return [.. (ids ?? []).Select(id => new PartId(id))];
    }
}
