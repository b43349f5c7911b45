using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Survey;
using Wainwright.Survey.Findings;
using Wainwright.Survey.Retention;
using Wainwright.Survey.Retention.Fix;

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
        return new(new(2026, 3, 10), checks, RankedFindings.Of(job), StopUse.Of(job, checks)) { Held = new(() => Held(job)), Mends = new(() => Mends(job)) };
    }

    /// <summary>One that can be mended and one that cannot.</summary>
    private static Dictionary<PartId, Mend> Mends(Job job)
    {
        var held = Held(job);
        return new()
        {
            [new("L1")] = new() { Part = new("L1"), Before = held.Parts[0], Steps = [new("2 × M6 bolt into a rivet nut in rib 1", 2, [new(900, 0, 1600)], 24, 5)], Price = 29, IsCheapest = true, Mended = job, After = held.Parts[0] with { Verdict = Verdict.Holds } },
            [new("K1")] = new() { Part = new("K1"), Before = held.Parts[1], WhyNot = "no rib lies within reach of it: bring it to one" },
        };
    }

    /// <summary>One part of each kind that a page words differently: loose on the road, loose in a crash, not told, held.</summary>
    public static JobHolding Held(Job job)
    {
        PartHolding Part(string id, Verdict verdict, string because, params CaseAnswer[] cases) => new()
        {
            Part = job.Parts.First(p => p.Id.Text == id), HeldBy = HeldBy.Fixings, Verdict = verdict, Because = because, Cases = cases,
            Directions = cases is [{ FactorG: { } g }, ..] ? [new(new(-1, 0, 0), "forward", g, g.Low, cases[0].Governing, cases[0].Governing, null)] : [],
        };
        CaseAnswer Case(LoadCase load, Verdict verdict, double asked, Span g, string? joint = null) => new(load, verdict, "forward", asked, g, joint is null ? null : new(joint));

        return new(job, [LoadCase.DrivingLightVan, LoadCase.NineThreeCab],
        [
            Part("L1", Verdict.FallsShort, "it comes loose at 0.4 g (0.2 to 0.7); 0.9 g asked forward", Case(LoadCase.DrivingLightVan, Verdict.FallsShort, 0.9, new(0.2, 0.4, 0.7), "J1"), Case(LoadCase.NineThreeCab, Verdict.FallsShort, 9, new(0.2, 0.4, 0.7), "J1"))
                with { Weakest = new("J1"), GivesBy = "the thread pulls out" },
            Part("K1", Verdict.FallsShort, "it slides at 0.3 g; 9 g asked forward", Case(LoadCase.DrivingLightVan, Verdict.Holds, 0.9, Span.Exactly(1.2)), Case(LoadCase.NineThreeCab, Verdict.FallsShort, 9, Span.Exactly(1.2))) with { HeldBy = HeldBy.Nothing },
            Part("H1", Verdict.CannotTell, "no fixing is recorded") with { HeldBy = HeldBy.NotRecorded, NextLook = "how the heater is held: every fixing, its size, place and state" },
            Part("S1", Verdict.Holds, "it holds to 20 g", Case(LoadCase.DrivingLightVan, Verdict.Holds, 0.9, Span.Exactly(20)), Case(LoadCase.NineThreeCab, Verdict.Holds, 9, Span.Exactly(20))),
        ]);
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
