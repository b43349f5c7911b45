using Wainwright.Fitout;
using Wainwright.Methods.Moisture.Practice;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>How a point keeps to its forecast.</summary>
public enum DryingPace
{
    /// <summary>Within what was foretold, or faster.</summary>
    OnTime,

    /// <summary>Slower than the slow end of what was foretold, or the promised day will be missed.</summary>
    Late,

    /// <summary>Dry: at or under its target.</summary>
    Dry,

    /// <summary>Too few readings.</summary>
    CannotTell,
}

/// <summary>One visit to a point.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Day">Days after the first visit of the job's drying [d].</param>
/// <param name="Percent">Moisture, corrected [%].</param>
/// <param name="AtLeast">It is this or more.</param>
/// <param name="Foretold">What was foretold for that day from the earlier ones [%]; null on the first.</param>
public sealed record DryingVisit(Reading Reading, double Day, double Percent, bool AtLeast, Span? Foretold);

/// <summary>The drying of one point.</summary>
/// <param name="Point">The point.</param>
/// <param name="Sheet">The board it is on.</param>
/// <param name="Visits">Oldest first.</param>
/// <param name="TargetPercent">Target, its dry reference counted in [%].</param>
/// <param name="DryOnDay">Day on which it meets its target, from its own readings [d]; infinite ends where it may not.</param>
/// <param name="Pace">How it keeps to the forecast.</param>
/// <param name="Gate">Whether it may be covered.</param>
/// <param name="Because">Why, in words.</param>
public sealed record PointDrying(ReadingPoint Point, DampSheet? Sheet, IReadOnlyList<DryingVisit> Visits, double TargetPercent, Span DryOnDay, DryingPace Pace, CoverUpGate.Result Gate, string Because)
{
    /// <summary>What the gate says, in words.</summary>
    public string GateSays => DryingLogs.Says(Gate);

    /// <summary>Day on which it meets its target as worked out from the boards as built [d]: fast, likely and slow end; infinite ends where it may not within the days looked at. Null unless a forecast was laid beside it.</summary>
    public Span? ByPhysics { get; init; }

    /// <summary>What to measure or note before the gate can be told.</summary>
    public IReadOnlyList<string> GateMissing => Gate.Missing;
}

/// <summary>The drying log of a job: every point that was read more than once or is wet.</summary>
/// <param name="FirstDay">Day 0.</param>
/// <param name="Points">Point by point, the slowest first.</param>
/// <param name="ReadyOnDay">Day on which the last of them meets its target [d].</param>
/// <param name="MayCover">Every point may be covered; shut when one is shut, cannot tell when one is in doubt.</param>
public sealed record DryingLog(DateTimeOffset FirstDay, IReadOnlyList<PointDrying> Points, Span ReadyOnDay, CoverUpGate.Verdict MayCover)
{
    /// <summary>The gate over all points, in words.</summary>
    public string GateSays => MayCover switch { CoverUpGate.Verdict.Open => "may be covered", CoverUpGate.Verdict.Shut => "not to be covered", _ => "cannot tell whether it may be covered" };

    /// <summary>What the gate does not take away.</summary>
    public static string Caution => CoverUpGate.Basis.Caution;
}
