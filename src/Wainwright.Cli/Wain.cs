using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Wainwright.Cli.Commands;
using Wainwright.Records;

namespace Wainwright.Cli;

/// <summary>The command line: finds the command, runs it, and turns what went wrong into one calm message and an exit code.</summary>
public static class Wain
{
    /// <summary>Runs one command line to its end.</summary>
    /// <returns>One of the codes of <see cref="Exit"/>.</returns>
    public static async Task<int> Run(IReadOnlyList<string> args, Terminal at, CancellationToken stop = default)
    {
        var line = Root(at).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (line.Action is ParseErrorAction)
        {
            // with a word it does not know there, "command missing" would only confuse
            var errors = line.UnmatchedTokens.Count > 0 ? line.Errors.Where(e => line.UnmatchedTokens.Any(t => e.Message.Contains(t, StringComparison.Ordinal))) : line.Errors;
            foreach (var error in errors) at.Error.WriteLine($"wain: {Shown.Plain(error.Message)}");
            at.Error.WriteLine($"Try: wain {(line.CommandResult.Command is RootCommand ? "" : line.CommandResult.Command.Name + " ")}--help");
            return Exit.BadInput;
        }
        try
        {
            return await line.InvokeAsync(new InvocationConfiguration { Output = at.Out, Error = at.Error, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null }, stop).ConfigureAwait(false);
        }
        catch (BadInputException bad)
        {
            at.Error.WriteLine($"wain: {Shown.Plain(bad.Message)}");
            foreach (var issue in bad.Issues) at.Error.WriteLine($"  {Shown.Plain(issue.ToString())}");
            return Exit.BadInput;
        }
        catch (StoreException store)
        {
            at.Error.WriteLine($"wain: {Shown.Plain(store.Message)}; {store.Mend}");
            return Exit.BadInput;
        }
        catch (IOException disk)
        {
            at.Error.WriteLine($"wain: {Shown.Plain(disk.Message)}");
            return Exit.BadInput;
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            at.Error.WriteLine("wain: stopped before the answer; nothing was changed");
            return Exit.CannotTell;
        }
#pragma warning disable CA1031 // the outermost boundary: whatever flies this far is our own fault and is written down
        catch (Exception ours)
#pragma warning restore CA1031
        {
            at.Error.WriteLine($"wain: this is a fault of the program, not yours. {OurFault.WriteDown(args, ours, at)}");
            return Exit.OurFault;
        }
    }

    private static RootCommand Root(Terminal at)
    {
        var root = new RootCommand("Works on panel vans that somebody else fitted out: judges them, finds the way in, proves the order, prints the pages.") { HelpName = "wain" };
        root.Options.OfType<HelpOption>().Single().Action = new Taught.Page("""
            Examples:
              wain validate demo/touring-camper.wain.json              is the file whole and sound?
              wain check demo/touring-camper.wain.json                 what falls short, what cannot be told?
              wain hold demo/bicycle-workshop.wain.json                in how many g does what come loose, and why?
              wain damp demo/touring-camper.wain.json --next 3         where did the water go, where to measure next?
              wain plan demo/touring-camper.wain.json --remove A52     what must come out to get the heater out?
              wain access demo/bicycle-workshop.wain.json              what does service cost a year, what would save most?
              wain report demo/touring-camper.wain.json --out van.pdf  the page for the owners
              wain import demo/touring-camper.wain.json && wain serve  into the store, and onto the screens

            JOB is a job file (.json), a container (.zip) or the id of a job in the store.
            A file given to a command is read, never changed.

            Exit codes: 0 done · 1 something falls short · 2 bad input · 3 cannot tell · 70 our fault
            """);
        root.Add(Serve.Command(at));
        root.Add(Validate.Command(at));
        root.Add(Check.Command(at));
        root.Add(Hold.Command(at));
        root.Add(Damp.Command(at));
        root.Add(Plan.Command(at));
        root.Add(Crew.Command(at));
        root.Add(AccessAll.Command(at));
        root.Add(Report.Command(at));
        root.Add(Jobs.Command(at));
        root.Add(Import.Command(at));
        root.Add(Export.Command(at));
        root.Add(Verify.Command(at));
        root.Add(Backup.Command(at));
        root.Add(Backup.Restore(at));
        root.Add(Schema.Command(at));
        return root;
    }
}
