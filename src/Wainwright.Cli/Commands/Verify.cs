using System.CommandLine;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain verify</c>: whether a job's records are those that were written.</summary>
internal static class Verify
{
    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "Id of a job in the store, or a container (.zip)." };
        var store = StoreFolder.Option();
        var json = new Option<bool>("--json") { Description = "Answer as JSON." };
        var command = new Taught("verify", "Recompute the journal's chain, replay it, and hash every photo.", """
            Examples:
              wain verify J-014
              wain verify J-014.zip

            Sound records exit 0. Records that were changed exit 1 and name the first entry that cannot stand; a container
            with a fault in it exits 2, as it does everywhere. The last hash, written down elsewhere, fixes all up to it.
            """) { job, store, json };
        command.SetAction(line => Of(line.GetRequiredValue(job), line.GetValue(store), line.GetValue(json), at));
        return command;
    }

    private static int Of(string name, string? folder, bool json, Terminal at)
    {
        if (!GivenJob.IsFile(name))
        {
            using var given = GivenJob.Open(name, folder, at); // says which jobs there are when this one is not
            using var records = StoreFolder.OpenThere(folder, at);
            return Say(name, records.Verify(given.Job.Id), json, at);
        }
        if (!GivenFile.IsContainer(name)) throw new BadInputException($"{name} has no journal to verify; wain validate judges a job file");
        using var passing = StoreFolder.ForNow(at);
        var (id, _) = Import.FromContainer(passing.Store, name, "command line", null, false);
        return Say(name, passing.Store.Verify(id), json, at);
    }

    private static int Say(string name, Verification found, bool json, Terminal at)
    {
        if (json) Shown.Json(at, new { job = name, sound = found.Sound, entries = found.Entries, firstBadEntry = found.FirstBadEntry, lastHash = found.LastHash, photos = found.Photos, issues = found.Issues });
        else
        {
            var ink = new Ink(at.Colour);
            foreach (var issue in found.Issues) at.Out.WriteLine($"{(issue.Weight == Weight.Error ? ink.Bad("error") : ink.Doubt("doubt"))}  {Shown.Plain(issue.ToString())}");
            at.Out.WriteLine($"{Shown.Plain(name)}: {(found.Sound ? ink.Good("sound") : ink.Bad("not sound"))}, {found.Entries} entries, {found.Photos} photos{(found.FirstBadEntry is { } bad ? $", first bad entry {bad}" : "")}");
            at.Out.WriteLine($"last hash {found.LastHash}");
        }
        return found.Sound ? Exit.Done : Exit.FallsShort;
    }
}
