using System.CommandLine;

namespace Wainwright.Cli;

/// <summary>Who does it: a role or initials for the journal.</summary>
internal static class Who
{
    public static Option<string?> Option() => new("--who") { HelpName = "NAME", Description = "Who does it, for the journal: a role or initials. Without it your user name." };

    public static string Is(string? given, Terminal at) =>
        given is { Length: > 0 } ? given : at.Setting("USER") is { Length: > 0 } user ? user : at.Setting("USERNAME") is { Length: > 0 } name ? name : "command line";
}
