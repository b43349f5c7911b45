using System.Text.Json;

namespace Wainwright.Cli.Tests;

/// <summary>One command line run through the real entry point, and what it said.</summary>
sealed record Ran(int Exit, string Out, string Error)
{
    /// <summary>The answer for programs.</summary>
    public JsonElement Json => JsonDocument.Parse(Out).RootElement;

    /// <summary>Everything said, wherever it was said.</summary>
    public string Said => Out + Error;

    public static Ran Wain(params string[] args) => Wain(new Dictionary<string, string>(), args);

    public static Ran Wain(IReadOnlyDictionary<string, string> settings, params string[] args)
    {
        using var answers = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var at = new Terminal(answers, errors, name => settings.GetValueOrDefault(name), Colour: false, TimeProvider.System);
        var exit = Cli.Wain.Run(args, at, TestContext.Current.CancellationToken).GetAwaiter().GetResult();
        return new(exit, answers.ToString(), errors.ToString());
    }
}
