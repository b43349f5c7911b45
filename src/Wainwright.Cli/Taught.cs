using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Wainwright.Cli;

/// <summary>A command whose help ends with examples to copy.</summary>
internal sealed class Taught(string name, string description, string examples) : Command(name, description)
{
    /// <summary>The usual help, then the examples of the command asked about.</summary>
    /// <param name="ofAll">Those of the program as a whole.</param>
    public sealed class Page(string ofAll) : SynchronousCommandLineAction
    {
        private readonly HelpAction usual = new() { MaxWidth = 100 };

        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            usual.Invoke(parseResult);
            parseResult.InvocationConfiguration.Output.WriteLine(parseResult.CommandResult.Command is Taught taught ? taught.Examples : ofAll);
            return Exit.Done;
        }
    }

    private string Examples => examples;
}
