namespace Wainwright.Cli;

/// <summary>Where a command reads its surroundings and writes its words; a test hands in its own.</summary>
/// <param name="Out">Answers.</param>
/// <param name="Error">What went wrong, and progress.</param>
/// <param name="Setting">An environment variable by name; <see langword="null"/> when unset.</param>
/// <param name="Colour">Whether <paramref name="Out"/> is a terminal that shows colour.</param>
/// <param name="Clock">The time.</param>
public sealed record Terminal(TextWriter Out, TextWriter Error, Func<string, string?> Setting, bool Colour, TimeProvider Clock)
{
    /// <summary>Whether <see cref="Error"/> is a screen that somebody watches: only then is progress told.</summary>
    public bool ErrorIsScreen { get; init; }

    /// <summary>The terminal the program was started in.</summary>
    public static Terminal Real() => new(
        Console.Out, Console.Error, Environment.GetEnvironmentVariable,
        // NO_COLOR: any value that is not empty switches colour off (no-color.org)
        !Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")) && Environment.GetEnvironmentVariable("TERM") != "dumb",
        TimeProvider.System)
    { ErrorIsScreen = !Console.IsErrorRedirected };
}
