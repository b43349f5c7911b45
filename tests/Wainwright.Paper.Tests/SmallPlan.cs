using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

/// <summary>An invented plan for the small van's locker.</summary>
internal static class SmallPlan
{
    public static RemovalPlan Locker { get; } = new()
    {
        Targets = [new("L1")],
        ReachOnly = false,
        Proof = Proof.ProvedCheapest,
        LowerBoundMinutes = 25,
        OutMinutes = 11.5,
        BackMinutes = 12,
        DamageMinutes = 1.5,
        BlockedBy = [new(new("L1"), Direction.Down, new("K1"), 40, 12, Direction.Left)],
        HeldForGood = [],
        Assumes = ["parts leave by straight slides and quarter turns"],
        ToMeasure = ["size of the cable behind the lining"],
        Cautions = ["a plan is advice to a competent person", "solar leads are live in daylight"],
        Effort = new(3, 1, 1),
        Steps =
        [
            Step(1, StepKind.MakeSafe, "check that it still holds: battery negative lifted", 0, "the locker's lamp is on it") with { Medium = Medium.Dc, Cautions = ["solar leads are live in daylight"] },
            Step(2, StepKind.Undo, "unscrew the 4 wood screws of L1", 4.5, "holds L1") with { Joint = new("J1"), Part = new("L1") },
            Step(3, StepKind.TakeOut, "take out L1 upper locker", 7, "wanted") with { Part = new("L1"), Through = "sliding door", People = 2, Licence = "none needed" },
        ],
    };

    private static RemovalStep Step(int number, StepKind kind, string action, double minutes, string why) => new()
    {
        Number = number,
        Kind = kind,
        Action = action,
        OutMinutes = minutes,
        BackMinutes = minutes,
        DamageMinutes = 0,
        Origin = "invented",
        People = 1,
        Why = new(null, null, why, true),
        Path = [],
        With = [],
        Cautions = [],
    };
}
