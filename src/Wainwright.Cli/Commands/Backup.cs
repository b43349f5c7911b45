using System.CommandLine;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain backup</c> and <c>wain restore</c>: the whole store in one file and back.</summary>
internal static class Backup
{
    public static Command Command(Terminal at)
    {
        var to = new Option<string>("--out") { HelpName = "FILE", Required = true, Description = "The file to make; must not be there yet." };
        var store = StoreFolder.Option();
        var command = new Taught("backup", "Write the whole store into one file. Others may go on working meanwhile.", """
            Examples:
              wain backup --out /media/stick/workshop-2026-03-14.backup
            """) { to, store };
        command.SetAction(line =>
        {
            var file = line.GetRequiredValue(to);
            NewFile.RefuseToOverwrite(file);
            using var records = StoreFolder.OpenThere(line.GetValue(store), at);
            return Say(file, "written", records.Backup(file), at);
        });
        return command;
    }

    public static Command Restore(Terminal at)
    {
        var from = new Argument<string>("FILE") { Description = "A file made by wain backup." };
        var store = StoreFolder.Option();
        var command = new Taught("restore", "Unpack a backup into a folder that is empty or not there yet; checks all of it first.", """
            Examples:
              wain restore /media/stick/workshop-2026-03-14.backup --store /srv/van-records
            """) { from, store };
        command.SetAction(line =>
        {
            var file = line.GetRequiredValue(from);
            GivenFile.Open(file).Dispose();
            var folder = StoreFolder.Named(line.GetValue(store), at);
            if (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any())
                throw new BadInputException($"{folder} is not empty; restore into another folder with --store, look at it, then swap the two");
            return Say(folder, "restored", Store.Restore(file, folder, at.Clock), at);
        });
        return command;
    }

    private static int Say(string where, string what, BackupTally tally, Terminal at)
    {
        foreach (var issue in tally.Issues) at.Out.WriteLine($"{(issue.Weight == Weight.Error ? "error" : "doubt")}  {Shown.Plain(issue.ToString())}");
        at.Out.WriteLine($"{where}: {what}, {tally.Jobs} jobs, {tally.Photos} photos");
        return tally.Issues.Any(i => i.Weight == Weight.Error) ? Exit.FallsShort : Exit.Done;
    }
}
