using System.CommandLine;
using System.Globalization;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain damp</c>: where the water went, board by board, from a handful of readings, and where to put the meter next.</summary>
internal static class Damp
{
    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var on = new Option<string?>("--on") { HelpName = "DAY", Description = "Readings up to this day, as 2026-03-14. Without it, the latest of each point." };
        var next = new Option<int>("--next") { HelpName = "K", Description = "Also the best next K places for the meter, with what must come out to get there; fewer when no more pays. At most 20." };
        var threshold = new Option<double[]>("--threshold") { HelpName = "PERCENT", AllowMultipleArgumentsPerToken = true, Description = "Areas over this moisture instead of over 16, 20 and 28 %; 5 to 60. May stand several times." };
        var cut = new Option<bool>("--cut") { Description = "Also what to keep, dry and cut, with the cut line, the water and what is behind it." };
        var longWet = new Option<bool>("--long-wet") { Description = "For --cut: it has stood wet for months, so past saving from 20 % instead of 28." };
        var log = new Option<bool>("--log") { Description = "Also the drying log: all visits of each point against what was foretold, the day it is dry, whether it may be covered." };
        var promised = new Option<string?>("--promised") { HelpName = "DAY", Description = "With --log: the day on which all was promised dry, as 2026-03-20; a point that will miss it is late." };
        var target = new Option<double?>("--target") { HelpName = "PERCENT", Description = "With --log: dry is at or under this instead of 15 %; 5 to 30." };
        var already = Plan.Parts("--already-out", "This part is out already, for --next. Without it, what is out at the stage of the newest reading.", "--out");
        var forecast = new Option<double?>("--forecast") { HelpName = "DAYS", Description = "Also how the wet boards dry, looking so many days ahead: days until dry with their range, under each care." };
        var care = new Option<string[]>("--care") { HelpName = "CARE", AllowMultipleArgumentsPerToken = true, Description = $"With --forecast: only this care, one of {string.Join(", ", DampForecastAnswer.Cares.Select(c => c.Word))}. May stand several times." };
        var since = new Option<bool>("--since") { Description = "Also how it got wet: since when, litres let in and held, leak or condensation, from courses computed and weighed by the readings; minutes of work. With --forecast, the drying starts from the readings laid over them." };
        var members = new Option<int?>("--members") { HelpName = "N", Description = $"With --since: courses computed for each wet patch, 20 to 5000; {Histories.UsualMembers} without it." };
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("damp", "Where the water went: moisture of floor, walls and ceiling from the readings, and where to measure next.", """
            Examples:
              wain damp demo/touring-camper.wain.json
              wain damp demo/touring-camper.wain.json --on 2026-03-02 --next 3
              wain damp J-014 --threshold 15 --json
              wain damp demo/touring-camper.wain.json --on 2026-03-02 --cut
              wain damp demo/touring-camper.wain.json --log --promised 2026-03-20
              wain damp demo/touring-camper.wain.json --on 2026-03-02 --forecast 90
              wain damp demo/touring-camper.wain.json --on 2026-03-02 --since

            Every board dry: exit 0. A board is wet: 1. None is wet but one cannot be told: 3.
            """) { job, on, next, threshold, cut, longWet, log, promised, target, already, forecast, care, since, members, store, json };
        command.Validators.Add(line =>
        {
            if (line.GetValue(next) is < 0 or > 20) line.AddError("--next is 0 to 20.");
            if (line.GetValue(threshold)?.Any(t => !(t is >= 5 and <= 60)) == true) line.AddError("--threshold is 5 to 60 %.");
            if (line.GetValue(forecast) is { } far && !(far is > 0 and <= Forecasting.MostDays)) line.AddError($"--forecast is above 0, at most {Forecasting.MostDays:0} days.");
            if (line.GetValue(care)?.Any(c => DampForecastAnswer.Cares.All(known => known.Word != c)) == true) line.AddError($"--care is {string.Join(", ", DampForecastAnswer.Cares.Select(c => c.Word))}.");
            if (line.GetValue(members) is < 20 or > 5000) line.AddError("--members is 20 to 5000.");
            if (line.GetResult(promised) is not null && !line.GetValue(log)) line.AddError("--promised goes with --log.");
            if (line.GetValue(target) is { } own && !(own is >= 5 and <= 30)) line.AddError("--target is 5 to 30 %.");
            if (line.GetResult(target) is not null && !line.GetValue(log)) line.AddError("--target goes with --log.");
            if (line.GetValue(longWet) && !line.GetValue(cut)) line.AddError("--long-wet goes with --cut.");
            if (line.GetResult(care) is not null && line.GetValue(forecast) is null) line.AddError("--care goes with --forecast.");
        });
        command.SetAction((line, stop) =>
        {
            using var given = GivenJob.Open(line.GetRequiredValue(job), line.GetValue(store), at);
            DateOnly? Named(Option<string?> option) => line.GetValue(option) is { } written
                ? DateOnly.TryParseExact(written, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var read) ? read : throw new BadInputException($"{option.Name} {written}: write the day as 2026-03-14")
                : null;
            var day = Named(on);
            var map = DampMapping.Of(given.Job, day, line.GetValue(threshold)) ?? throw new BadInputException($"{given.Job.Id} has no measured part of wood: give floor and linings their solids and what they are made of");
            var places = NextReadings.Of(map, line.GetValue(next), NextReadings.Decides(map), line.GetResult(already) is null ? null : Plan.Known(given.Job, line.GetValue(already)));
            var plan = line.GetValue(cut) ? CutPlanning.Of(map, CutStakes.Usual with { LongWet = line.GetValue(longWet) }) : null;
            var history = line.GetValue(since) ? Histories.Of(map, line.GetValue(members) ?? Histories.UsualMembers, new ShareTold(at, "wetting worked out"), stop) : null;
            if (history is not null) ShareTold.Done(at);
            var drying = line.GetValue(forecast) is { } days
                ? DampForecastAnswer.Of(at, history?.Combined ?? map, days, [.. DampForecastAnswer.Cares.Where(c => line.GetValue(care) is not { Length: > 0 } named || named.Contains(c.Word)).Select(c => c.Care)], history, stop)
                : null;
            var visits = line.GetValue(log) ? DryingLogs.Of(given.Job, day, Named(promised), line.GetValue(target)) ?? throw new BadInputException($"{given.Job.Id} has no point that was read twice or wet: there is no drying log") : null;
            // of several cares the log is laid beside the opened one: that is how points are read
            if (visits is not null && drying is not null) visits = LogBesideForecast.Of(visits, history?.Combined ?? map, drying.Forecasts.FirstOrDefault(f => f.Care == DryingCare.OneSideOpened) ?? drying.Forecasts[0]);
            var answer = new DampAnswer(map, places, line.GetValue(next)) { Cut = plan is null ? null : new(plan), Log = visits is null ? null : new(visits), Since = history is null ? null : new(history), Drying = drying };
            if (line.GetValue(json)) Shown.Json(at, answer.ForPrograms());
            else answer.InWords(at);
            return Task.FromResult(answer.Exit);
        });
        return command;
    }
}
