using System.CommandLine;
using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Paper;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain report</c>: a page for the owners, the wall or the bench, as HTML or PDF.</summary>
internal static class Report
{
    /// <summary>The pages there are, by the name a person gives.</summary>
    private static readonly Dictionary<string, Func<GivenJob, DateOnly, Task<string>>> Pages = new()
    {
        ["owners"] = (given, on) => OwnersReport.Html(given.Job, Answers.Of(given.Job, on), Bytes(given), given.Seal),
        ["stop-use"] = (given, on) => Sheets.StopUse(given.Job, Answers.Of(given.Job, on)),
        ["isolation"] = (given, on) => Sheets.Isolation(given.Job, on),
        ["servicing"] = Servicing,
        ["drying"] = (given, on) => Sheets.Drying(given.Job, DryingLogs.Of(given.Job) ?? throw new BadInputException($"{given.Job.Id} has no point that was read twice or wet: there is no drying log"), on),
    };

    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var to = new Option<string>("--out") { HelpName = "FILE", Required = true, Description = "The page to make: .html, or .pdf where a Chromium is installed. An older page of that name is replaced." };
        var page = new Option<string>("--page") { HelpName = "PAGE", DefaultValueFactory = _ => "owners", Description = $"Which page: {string.Join(", ", Pages.Keys)}." };
        var on = Day.Option();
        var forecast = new Option<double?>("--forecast") { HelpName = "DAYS", Description = "On the owners' page also how many days the wet boards take to dry, left as they stand, opened, and heated; looking so far ahead. Takes a minute." };
        var store = StoreFolder.Option();
        var command = new Taught("report", "Make the owners' page, a stop-use notice, an isolation sheet, what servicing costs or the drying log.", """
            Examples:
              wain report demo/touring-camper.wain.json --out camper.html
              wain report J-014 --out J-014.pdf
              wain report J-014 --page stop-use --out stop.pdf
              wain report demo/touring-camper.wain.json --forecast 90 --out camper.html
              wain report demo/touring-camper.wain.json --page drying --out drying.pdf

            A page is one file that needs nothing from outside. Photos of a job file are looked for in the folder “photos” beside it.
            """) { job, to, page, on, forecast, store };
        page.Validators.Add(given =>
        {
            if (!Pages.ContainsKey(given.GetValueOrDefault<string>())) given.AddError($"--page is one of {string.Join(", ", Pages.Keys)}.");
        });
        command.Validators.Add(line =>
        {
            if (line.GetValue(forecast) is { } far && !(far is > 0 and <= Forecasting.MostDays)) line.AddError($"--forecast is above 0, at most {Forecasting.MostDays:0} days.");
            if (line.GetResult(forecast) is not null && line.GetValue(page) is not (null or "owners")) line.AddError("--forecast goes with the owners' page.");
        });
        command.SetAction(async (line, stop) =>
        {
            var name = line.GetRequiredValue(job);
            var file = new PageFile(line.GetRequiredValue(to), name);
            var day = Day.Is(line.GetValue(on), at);
            using var given = GivenJob.Open(name, line.GetValue(store), at);
            var made = line.GetValue(forecast) is { } days
                ? OwnersReport.Html(given.Job, Answers.Of(given.Job, day) with { Water = new(() => WaterFound.Of(given.Job, days, stop)) }, Bytes(given), given.Seal)
                : Pages[line.GetRequiredValue(page)](given, day);
            await file.Write(await made.ConfigureAwait(false), stop).ConfigureAwait(false);
            at.Out.WriteLine($"{file.Path}: written");
            return Exit.Done;
        });
        return command;
    }

    private static Task<string> Servicing(GivenJob given, DateOnly on)
    {
        var upkeep = UpkeepRound.Of(given.Job);
        return Sheets.Servicing(given.Job, upkeep, WhatIfRanking.Of(given.Job, upkeep, most: 3), on);
    }

    private static PhotoBytes Bytes(GivenJob given) => hash =>
    {
        using var photo = given.Photo(hash);
        if (photo is null) return null;
        using var bytes = new MemoryStream();
        photo.CopyTo(bytes);
        return bytes.ToArray();
    };
}
