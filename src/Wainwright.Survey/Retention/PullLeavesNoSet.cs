using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>A part that was pulled by hand gauge came back to where it was.</summary>
public static class PullLeavesNoSet
{
    /// <summary>One check for each pulled part.</summary>
    public static IEnumerable<Check> Of(Job job) => PulledPart.Of(job).Select(Of);

    private static Check Of(PulledPart pulled)
    {
        var draft = new Draft("pull-leaves-no-set", "Pulled by hand and let off, it comes back to where it was", pulled.Part.Subject(), PullTest.Basis, "permanent set under 1 mm", Urgency.U1, Use.Drive)
        {
            Remedy = "do not pull again; find what gave, refit to structure, then pull anew",
            Faults = ["furniture-06"],
        };
        draft.Assume("a set of 1 mm is what a rule shows (own rule)");
        foreach (var (step, reading) in pulled.Steps.Zip(pulled.Readings)) draft.Use($"movement at {step.ForceN:0} N", $"{step.MovementMm} mm", $"readings[{reading}]", Known.Measured);
        return pulled.Test.PermanentSetMm switch
        {
            null => draft.CannotTell(pulled.Words(), [.. pulled.Test.Missing.DefaultIfEmpty("the movement left after letting off").Select(m => $"{m} ({pulled.Part.Name})")]),
            >= PulledPart.SetShownMm => draft.FallsShort(pulled.Words()),
            _ => draft.Holds(pulled.Words()),
        };
    }
}
