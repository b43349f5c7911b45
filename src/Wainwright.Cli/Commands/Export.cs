using System.CommandLine;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain export</c>: a job as a container with its journal and photos, or as a bare job file.</summary>
internal static class Export
{
    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "Id of a job in the store; for a job file out of a container, the container." };
        var to = new Option<string>("--out") { HelpName = "FILE", Required = true, Description = "The file to make: .zip for a container with journal and photos, .json for the job alone." };
        var store = StoreFolder.Option();
        var command = new Taught("export", "Write a job into one file, to send or to keep.", """
            Examples:
              wain export J-014 --out J-014.zip            journal and photos with it
              wain export J-014 --out J-014.wain.json      the job as it stands now, to read or edit
            """) { job, to, store };
        command.SetAction(line => Of(line.GetRequiredValue(job), line.GetRequiredValue(to), line.GetValue(store), at));
        return command;
    }

    private static int Of(string name, string to, string? folder, Terminal at)
    {
        NewFile.RefuseToOverwrite(to);
        IReadOnlyList<Issue> doubts = [];
        if (to.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
        {
            using var given = GivenJob.Open(name, folder, at);
            NewFile.Write(to, file => file.Write(JobFile.Write(given.Job)));
        }
        else if (!to.EndsWith(Container.Extension, StringComparison.OrdinalIgnoreCase)) throw new BadInputException($"--out {to}: the name ends in {Container.Extension} for a container or in .json for the job alone");
        else if (GivenJob.IsFile(name)) throw new BadInputException($"a container is made from a job in the store: wain import {name}, then export its id");
        else
        {
            using var given = GivenJob.Open(name, folder, at); // says which jobs there are when this one is not
            using var records = StoreFolder.OpenThere(folder, at);
            NewFile.Write(to, file => doubts = Container.Write(records, given.Job.Id, file));
        }
        foreach (var doubt in doubts) at.Out.WriteLine($"doubt  {Shown.Plain(doubt.ToString())}");
        at.Out.WriteLine($"{to}: written");
        return Exit.Done;
    }
}
