using System.CommandLine;
using System.Globalization;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain jobs</c>: what is in the store.</summary>
internal static class Jobs
{
    public static Command Command(Terminal at)
    {
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("jobs", "List the jobs in the store, the one changed last first.", """
            Examples:
              wain jobs
              wain jobs --store /srv/van-records --json
            """) { store, json };
        command.SetAction(line =>
        {
            using var records = StoreFolder.OpenThere(line.GetValue(store), at);
            var jobs = records.Jobs();
            if (line.GetValue(json)) Shown.Json(at, new { jobs });
            else foreach (var job in jobs) at.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Shown.Plain(job.Id),-24} {job.ChangedAt:yyyy-MM-dd HH:mm}  {Shown.Plain(job.Title)}"));
            return Exit.Done;
        });
        return command;
    }
}
