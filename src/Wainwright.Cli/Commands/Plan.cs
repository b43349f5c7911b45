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
        var see = Parts("--see", "See this part.");
        var reach = Parts("--reach", "Get a hand to this part.");
        var remove = Parts("--remove", "Take this part out.");
        var out_ = Parts("--already-out", "This part is out already.", "--out");
        var stay = Parts("--must-stay", "This part must stay in.", "--stays");
        var least = new Option<Objective>("--least")
        {
            HelpName = "labour|parts|damage", Description = "What the plan is to have least of; as much of it, then least labour. Labour without it.",
            CustomParser = text => text.Tokens[0].Value switch { "labour" => Objective.LeastLabour, "parts" => Objective.FewestPartsOut, "damage" => Objective.LeastDestroyed, _ => Wrong(text, "--least is labour, parts or damage.") },
        };
        var others = new Option<int>("--others") { HelpName = "N", Description = "Also the next N best plans that keep in at least one part of every better one." };
        var keep = Parts("--price-of-keeping", "Also what it costs to keep this part in.");
        var tape = new Option<double?>("--tape") { HelpName = "MM", Description = "Also plan with every measure off by this much, and name those that decide: 5 to 10 for a tape. A solid's own tolerance counts where it has one." };
        var why = Parts("--why", "Also what blocks this part in each direction with nothing out, and by how much.");
        var certificate = new Option<string?>("--certificate") { HelpName = "FILE", Description = "Also write what proves the answer, as JSON for another to check. With --audit it is read back and checked." };
        var done = new Option<string?>("--done") { HelpName = "STEPS", Description = "These steps of the plan are done (1-4 or 1-3,5): plan what is left." };
        var now = new Option<string[]>("--now") { HelpName = "ID=STATE", Description = "Not as recorded: JOINT=sheared, JOINT=glued, JOINT=undone, PART=glued or PART=stays. Plan anew. May stand several times." };
        var found = new Option<string[]>("--found") { HelpName = "NAME=X,Y,Z,L,W,H", Description = "A part that the record does not have, as a box in the van's axes [mm]. Plan anew. May stand several times." };
        var stage = new Option<string?>("--stage") { HelpName = "ID", Description = "Plan for this stage of the job: what is out then is out already. Without it the last stage, the van as it stands." };
        var clearance = new Option<int?>("--clearance") { HelpName = "MM", Description = $"Room wanted between a part on its way and what it passes; {new AccessOptions().ClearanceMm} without it." };
        var tilt = new Option<bool>("--tilt-past") { Description = "Also try each load tilted past what comes out only to let it by. Without it a load is tilted only where nothing else gets it out." };
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
              wain plan demo/touring-camper.wain.json --remove A52 --reach A49 --stays A31
              wain plan demo/touring-camper.wain.json --remove A54 --least parts
              wain plan demo/touring-camper.wain.json --remove A40 --others 2 --price-of-keeping A38
              wain plan demo/bicycle-workshop.wain.json --remove B16 --tilt-past
              wain plan demo/touring-camper.wain.json --remove A40 --tape 5
              wain plan demo/touring-camper.wain.json --remove A40 --certificate a40.json --audit
              wain plan demo/touring-camper.wain.json --remove A40 --done 1-4 --now "A38-frame bolts=sheared"

            A plan found exits 0; proved that there is none, 1; neither within the budget, or too close or too little measured
            to tell, 3.
            """) { job, see, reach, remove, out_, stay, stage, least, others, keep, why, tape, done, now, found, clearance, tilt, seconds, audit, certificate, sheet, on, store, json };
        command.Validators.Add(line =>
        {
            if (line.GetResult(see) is null && line.GetResult(reach) is null && line.GetResult(remove) is null) line.AddError("Say what is wanted: --see PART, --reach PART or --remove PART.");
            if (line.GetValue(tape) is <= 0 or > 100 or double.NaN) line.AddError("--tape is above 0, at most 100 mm.");
            if (line.GetValue(others) is < 0 or > 20) line.AddError("--others is 0 to 20.");
            if (line.GetValue(seconds) is <= 0 or > 86_400 or double.NaN) line.AddError("--seconds is a number above 0, at most a day.");
            if (line.GetValue(clearance) is < 0 or > 100) line.AddError("--clearance is 0 to 100 mm.");
        });
        command.SetAction(async (line, stop) =>
        {
            if (line.GetValue(certificate) is { } named) NewFile.RefuseToOverwrite(named);
            var page = line.GetValue(sheet) is { } file ? new PageFile(file, line.GetRequiredValue(job)) : null;
            var day = Day.Is(line.GetValue(on), at);
            using var given = GivenJob.Open(line.GetRequiredValue(job), line.GetValue(store), at);
            using var budget = CancellationTokenSource.CreateLinkedTokenSource(stop);
            if (line.GetValue(seconds) is { } most) budget.CancelAfter(TimeSpan.FromSeconds(most));
            IReadOnlyList<Wanted> wanted =
            [
                .. Known(given.Job, line.GetValue(remove)).Select(p => new Wanted(p, AccessKind.Remove)),
                .. Known(given.Job, line.GetValue(reach)).Select(p => new Wanted(p, AccessKind.Reach)),
                .. Known(given.Job, line.GetValue(see)).Select(p => new Wanted(p, AccessKind.See)),
            ];
            var usual = new AccessOptions();
            var planner = new RemovalPlanner(given.Job, usual with
            {
                AlreadyOut = [.. Known(given.Job, line.GetValue(out_)), .. OutAt(given.Job, line.GetValue(stage))],
                MustStay = Known(given.Job, line.GetValue(stay)),
                Objective = line.GetValue(least),
                ClearanceMm = line.GetValue(clearance) ?? usual.ClearanceMm,
                Tilting = usual.Tilting with { ToSpare = line.GetValue(tilt) },
                Stop = budget.Token,
            });
            var plan = planner.Plan(wanted);
            Replanned? anew = null;
            if (line.GetResult(done) is not null || line.GetResult(now) is not null || line.GetResult(found) is not null)
            {
                var turned = TurnedOut.Read(given.Job, line.GetValue(done), line.GetValue(now) ?? [], line.GetValue(found) ?? []);
                if (turned.Done.FirstOrDefault(n => plan.Steps.All(s => s.Number != n)) is var none and not 0) throw new BadInputException($"the plan has no step {none}; it has {plan.Steps.Count}");
                anew = planner.Replan(plan, turned);
                (planner, plan) = (anew.Planner, anew.Plan);
            }
            var proof = line.GetValue(certificate) is { } to ? CertificateFile.Write(to, plan, planner, check: line.GetValue(audit)) : null;
            var answer = new PlanAnswer(planner.Job, plan)
            {
                Audit = line.GetValue(audit) ? planner.Audit(plan) : null,
                Certificate = proof,
                From = StageOf(given.Job, line.GetValue(stage)),
                Anew = anew,
                Tape = line.GetValue(tape) is { } off ? planner.WhenMeasuresAreOff(plan, off) : null,
                Changes = planner.WhatWouldFree(plan),
                WhatBlocks = line.GetResult(why) is null ? null : [.. Known(given.Job, line.GetValue(why)).SelectMany(p => planner.WhatBlocks(p))],
                Others = line.GetValue(others) is > 0 and var more ? planner.Others(wanted, more) : null,
                Keeping = line.GetResult(keep) is null ? null : planner.PricesOfKeeping(wanted, Known(given.Job, line.GetValue(keep))),
            };
            if (line.GetValue(json)) Shown.Json(at, answer.ForPrograms());
            else answer.InWords(at);
            if (page is not null) await page.Write(await Sheets.Removal(planner.Job, plan, day).ConfigureAwait(false), stop).ConfigureAwait(false);
            return answer.Exit;
        });
        return command;
    }

    private static Objective Wrong(System.CommandLine.Parsing.ArgumentResult text, string what)
    {
        text.AddError(what);
        return default;
    }

    internal static Option<string[]> Parts(string name, string what, params string[] aliases) =>
        new(name, aliases) { HelpName = "PART", Description = $"{what} May stand several times.", AllowMultipleArgumentsPerToken = true };

    internal static Stage? StageOf(Job job, string? stage) =>
        stage is null ? (job.Stages.Count > 0 ? job.Stages[^1] : null) : job.Stages.FirstOrDefault(s => s.Id.Text == stage)
            ?? throw new BadInputException($"there is no stage “{stage}” in this job{(job.Stages.Count > 0 ? $"; there is {string.Join(", ", job.Stages.Select(s => s.Id))}" : "")}");

    internal static IReadOnlyList<PartId> OutAt(Job job, string? stage) => StageOf(job, stage)?.PartsOut ?? [];

    internal static List<PartId> Known(Job job, string[]? ids)
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
