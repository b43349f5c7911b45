using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Survey;
using Wainwright.Survey.Findings;

namespace Wainwright.Paper.Tests;

/// <summary>Three invented answers, one of each verdict, so that what a page shows does not change when a rule is reworded.</summary>
internal static class SmallAnswers
{
    private static readonly Basis Rule = new("Invented Code (2026), clause 7", ["the tape was straight"], "An invented rule proves nothing of a real van.");

    public static Answers Of(Job job)
    {
        Check[] checks =
        [
            Made("invented-gap", "The gap is at least 20 mm", "L1", "upper locker", Verdict.FallsShort, "14 mm at the rear end") with
            {
                Demand = Span.Exactly(20), Capacity = Span.Of(14, 2), Unit = "mm", Margin = new(-0.4, -0.3, -0.2), Remedy = "refit it 6 mm lower",
            },
            Made("invented-gap", "The gap is at least 20 mm", "K1", "kitchen box", Verdict.Holds, "1 450 mm to the wall") with
            {
                Demand = Span.Exactly(20), Capacity = Span.Exactly(1450), Unit = "mm", Margin = Span.Exactly(71.5),
            },
            Made("invented-heater", "The heater takes its air from outside", "H1", "fuel air heater", Verdict.CannotTell, "Nobody has seen where it takes its air") with
            {
                Missing = ["look at the burner's air pipe", "bore of the pipe where it is narrowest", "volts at its plug", "date on its hose"], IfShort = Urgency.U0, AppliesTo = [Use.Heater],
            },
        ];
        return new(new(2026, 3, 10), checks, RankedFindings.Of(job), StopUse.Of(job, checks));
    }

    private static Check Made(string id, string claim, string part, string name, Verdict verdict, string because) => new()
    {
        Id = id,
        Claim = claim,
        Subject = new(SubjectKind.Part, part, name),
        Verdict = verdict,
        Because = because,
        Governing = "clause 7",
        Basis = Rule,
        Assumptions = Rule.Assumes,
        IfShort = Urgency.U1,
    };
}
