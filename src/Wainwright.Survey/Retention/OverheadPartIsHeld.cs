using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Retention;

/// <summary>Every fixing of a part that hangs overhead is there and tight.</summary>
public static class OverheadPartIsHeld
{
    private static readonly Basis Rule = new(
        Source: "Common practice, no source: no fixing of an overhead part may be missing, sheared or loose",
        Assumes: ["every fixing was touched, not only seen"],
        Caution: "Tight is not strong: what its fixings stand in a hard stop is another question.",
        How: Provenance.CommonPractice);

    // a part lighter than this bruises rather than maims: rule of this project
    private const double HeavyKg = 3;

    /// <summary>One check for each part that would drop when its last fixing goes.</summary>
    public static IEnumerable<Check> Of(Job job) => job.Parts.Where(p => p.Overhead).Select(p => Of(job, p));

    private static Check Of(Job job, Part part)
    {
        var draft = new Draft("overhead-fixings", "Every fixing of the overhead part is there and tight", part.Subject(), Rule, "all fixings sound", Heavy(part) ? Urgency.U0 : Urgency.U1, Use.DriveLoaded, Use.SleepIn)
        {
            Remedy = "empty it, prop it, nobody under it; refit to ribs or a rail across two ribs",
            Faults = ["attach-01", "ceiling-01"],
        };
        var joints = job.Joints.Where(j => j.Part == part.Id && Holds(j.Type)).ToList();
        if (joints.Count == 0) return draft.CannotTell("no fixing is recorded", $"how {part.Name} is held: every fixing, its size and state");
        int all = 0, bad = 0;
        foreach (var joint in joints)
        {
            var inState = joint.StateCount ?? joint.Count;
            draft.Use($"{joint.Count} × {joint.Type} {joint.Size}", joint.State == FixingState.Sound || joint.StateCount is null ? $"{joint.State}" : $"{inState} {joint.State}", $"joints[{joint.Id}].state", joint.Known);
            all += joint.Count;
            if (joint.State is FixingState.Missing or FixingState.Sheared or FixingState.Loose) bad += inState;
            if (joint.State == FixingState.NotSeen || joint.Known == Known.NotInspected) draft.Miss($"state of the fixings {joint.Id} of {part.Name}: touch each one");
        }
        Span demand = Span.Exactly(all), capacity = Span.Exactly(all - bad);
        var because = string.Create(CultureInfo.InvariantCulture, $"{all - bad} of {all} fixings not known to be bad");
        return bad > 0
            ? draft.FallsShort(string.Create(CultureInfo.InvariantCulture, $"{bad} of {all} fixings missing, sheared or loose")) with { Demand = demand, Capacity = capacity, Unit = "fixings", Margin = Check.MarginOf(demand, capacity) }
            : draft.Compare(demand, capacity, "fixings", draft.IsComplete ? $"all {all} fixings sound" : because, "each fixing by hand");
    }

    private static bool Heavy(Part part) => part.EmptyKg is not { } kg || kg.High + part.Contents.Sum(c => c.MassKg.High) >= HeavyKg;

    // a plug or a hose end connects; it does not hold a part up
    private static bool Holds(FixingType type) =>
        type is not (FixingType.HoseClip or FixingType.PushFit or FixingType.Union or FixingType.Plug or FixingType.Terminal or FixingType.CableTie);
}
