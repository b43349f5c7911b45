using System.CommandLine;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain import</c>: takes a job file or a container into the store, all of it or nothing.</summary>
internal static class Import
{
    public static Command Command(Terminal at)
    {
        var file = new Argument<string>("FILE") { Description = "A job file (.json) or a container (.zip)." };
        var store = StoreFolder.Option();
        var who = Who.Option();
        var asId = new Option<string?>("--as") { HelpName = "ID", Description = "Store a container's job under this id; its journal then begins anew." };
        var replace = new Option<bool>("--replace") { Description = "Take the place of the job with the same id; history stays, undo brings the old state back." };
        var photos = new Option<string?>("--photos") { HelpName = "FOLDER", Description = "Where a job file's photos lie; without it the folder “photos” beside the file." };
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("import", "Take a job into the store, with its photos; all of it or nothing.", """
            Examples:
              wain import demo/bicycle-workshop.wain.json
              wain import from-the-other-shop.zip --store /srv/van-records --who RT
              wain import van.wain.json --replace          the file is right, the store is behind
            """) { file, store, who, asId, replace, photos, json };
        command.SetAction(line =>
        {
            var path = line.GetRequiredValue(file);
            using var records = StoreFolder.OpenOrMake(line.GetValue(store), at);
            var (id, imported) = GivenFile.IsContainer(path)
                ? FromContainer(records, path, Who.Is(line.GetValue(who), at), line.GetValue(asId), line.GetValue(replace))
                : line.GetValue(asId) is not null ? throw new BadInputException("--as is for containers; in a job file change the id itself")
                : FromFile(records, path, Who.Is(line.GetValue(who), at), line.GetValue(replace), line.GetValue(photos));
            return Say(id, imported, line.GetValue(json), at);
        });
        return command;
    }

    /// <summary>Takes a job file in, with those photos beside it that it names.</summary>
    public static (string Id, Imported Imported) FromFile(Store records, string path, string who, bool replace, string? photos)
    {
        var reading = GivenFile.ReadJob(path);
        if (reading.Job is not { } job) throw new BadInputException($"{path} was not taken in; nothing was stored", [.. reading.Issues.Where(i => i.Weight == Weight.Error)]);
        var sources = PhotoFolder.Of(photos, path, job).Values.Select(f => new PhotoSource(Path.GetFileName(f), () => File.OpenRead(f)));
        return (job.Id, Stored(path, records.Import(job, who, replace, [.. sources])));
    }

    /// <summary>Takes a container in, with its journal and photos.</summary>
    public static (string Id, Imported Imported) FromContainer(Store records, string path, string who, string? asId, bool replace)
    {
        using var file = GivenFile.Open(path);
        using var reading = Container.Read(file);
        if (reading.Job is not { } job) throw new BadInputException($"{path} was not taken in; nothing was stored", [.. reading.Issues.Where(i => i.Weight == Weight.Error)]);
        return (asId ?? job.Id, Stored(path, records.Import(reading, who, asId, replace)));
    }

    private static Imported Stored(string path, Imported imported) =>
        imported.Job is not null ? imported : throw new BadInputException($"{path} was not taken in; nothing was stored", [.. imported.Issues.Where(i => i.Weight == Weight.Error)]);

    private static int Say(string id, Imported imported, bool json, Terminal at)
    {
        if (json) Shown.Json(at, new { id, title = imported.Job!.Title, sequence = imported.Sequence, doubts = imported.Issues });
        else
        {
            foreach (var doubt in imported.Issues) at.Out.WriteLine($"doubt  {Shown.Plain(doubt.ToString())}");
            at.Out.WriteLine($"{Shown.Plain(id)}: taken in, {imported.Job!.Parts.Count} parts, {imported.Job.Photos.Count} photos; entry {imported.Sequence} of its journal");
        }
        return Exit.Done;
    }
}
