using System.CommandLine;
using System.Globalization;

namespace Wainwright.Cli;

/// <summary>The day a job is judged on: what is in date depends on it.</summary>
internal static class Day
{
    public static Option<string?> Option() => new("--on") { HelpName = "DAY", Description = "The day it is judged on, as 2026-03-14: alarms, hoses and extinguishers run out. Without it, today." };

    public static DateOnly Is(string? given, Terminal at) =>
        given is null ? DateOnly.FromDateTime(at.Clock.GetLocalNow().Date)
        : DateOnly.TryParseExact(given, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day
        : throw new BadInputException($"--on {given}: write the day as 2026-03-14");
}
