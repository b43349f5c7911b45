using Wainwright.Fitout;

namespace Wainwright.Survey.Findings;

/// <summary>Why a use is stopped or not shown to be safe.</summary>
/// <param name="Why">The reason in one sentence.</param>
/// <param name="Finding">The finding it comes from; absent when it comes from a check.</param>
/// <param name="Check">The check it comes from; absent when it comes from a finding.</param>
public sealed record StopReason(string Why, FindingId? Finding, Check? Check);

/// <summary>What is to be said of one use of the van today.</summary>
/// <param name="Use">The use.</param>
/// <param name="Stopped">Reasons to stop it now; none when nothing found so far forbids it.</param>
/// <param name="NotShown">What could not be told and would stop it if it were so.</param>
public sealed record UseToday(Use Use, IReadOnlyList<StopReason> Stopped, IReadOnlyList<StopReason> NotShown)
{
    /// <summary>Whether something forbids it now.</summary>
    public bool MustStop => Stopped.Count > 0;
}

/// <summary>What must not be used now, use by use, with reasons. An empty list of reasons is no permission.</summary>
public static class StopUse
{
    /// <summary>Every use in the order of the scale.</summary>
    /// <param name="job">The job.</param>
    /// <param name="checks">Its checks; see <see cref="Checks.All"/>.</param>
    public static IReadOnlyList<UseToday> Of(Job job, IReadOnlyList<Check> checks)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(checks);
        return [.. Enum.GetValues<Use>().Select(use => new UseToday(use, Stopped(job, checks, use), NotShown(job, checks, use)))];
    }

    private static List<StopReason> Stopped(Job job, IReadOnlyList<Check> checks, Use use) =>
    [
        .. job.Findings
            .Where(f => f.Urgency == Urgency.U0 && f.Likelihood != Likelihood.Eliminated && Speaks(f.AppliesTo, use))
            .Select(f => new StopReason(f.What, f.Id, null)),
        .. checks
            .Where(c => c is { Verdict: Verdict.FallsShort, IfShort: Urgency.U0 } && Speaks(c.AppliesTo, use))
            .Select(c => new StopReason($"{c.Subject.Name}: {c.Because}", null, c)),
    ];

    private static List<StopReason> NotShown(Job job, IReadOnlyList<Check> checks, Use use) => !IsAboard(job, use) ? [] :
        [.. checks
            .Where(c => c is { Verdict: Verdict.CannotTell, IfShort: Urgency.U0 } && Speaks(c.AppliesTo, use))
            .Select(c => new StopReason($"{c.Subject.Name}: {c.Because}", null, c))];

    // what forbids driving forbids driving loaded; a stop that names no use speaks of all
    private static bool Speaks(IReadOnlyList<Use> about, Use use) =>
        about.Count == 0 || about.Contains(use) || (use == Use.DriveLoaded && about.Contains(Use.Drive));

    // an alarm that senses several things speaks of heater and gas in a van that has neither
    private static bool IsAboard(Job job, Use use) => use switch
    {
        Use.Heater => job.Parts.Any(p => p.System == PartSystem.Heating || p.Devices.Any(d => d is AirHeater)),
        Use.Gas => job.Parts.Any(p => p.System == PartSystem.Gas || p.Devices.Any(d => d is GasStore or GasAppliance)) || job.Lines.Any(l => l.Medium == Medium.Gas),
        _ => true,
    };
}
