using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Wainwright.Cli;

/// <summary>Help that ends with examples to copy.</summary>
internal static class Taught
{
    private static readonly System.Runtime.CompilerServices.ConditionalWeakTable<Command, string> Pages = [];

    /// <summary>Gives a command its examples.</summary>
    public static T By<T>(this T command, string examples) where T : Command
    {
        Pages.AddOrUpdate(command, examples);
        return command;
    }

    /// <summary>The usual help, then the examples of the command asked about.</summary>
    public sealed class Page : SynchronousCommandLineAction
    {
        private readonly HelpAction usual = new() { MaxWidth = 100 };

        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            usual.Invoke(parseResult);
            if (Pages.TryGetValue(parseResult.CommandResult.Command, out var examples)) parseResult.InvocationConfiguration.Output.WriteLine(examples);
            return Exit.Done;
        }
    }
}
