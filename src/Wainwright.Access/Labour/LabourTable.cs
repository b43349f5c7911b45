using Wainwright.Fitout;
using Wainwright.Methods.Labour;
using static Wainwright.Fitout.FixingType;
using static Wainwright.Methods.Labour.ToolUse;

namespace Wainwright.Access;

/// <summary>All minutes that plans are priced with, each with its origin. A workshop replaces rows by its own times.</summary>
public sealed record LabourTable
{
    private const string Card = "Basic MOST tool-use card × van factor";
    private const string Guess = "estimate, no source";

    /// <summary>
    /// Van work against bench work on clean fixings: kneeling, dirt, old sealant, looking for the next one. Estimate; hand and
    /// power tools differ by a third only when whole dismantlings are timed (learning-factory data set, TU Munich 2025), so
    /// most of the time is finding and placing.
    /// </summary>
    public const double VanFactor = 3;

    /// <summary>The table as delivered.</summary>
    public static LabourTable Usual { get; } = new();

    /// <summary>Fixings.</summary>
    public IReadOnlyDictionary<FixingType, FixingTime> Fixings { get; init; } = Rows().ToDictionary(r => r.Type);

    /// <summary>Drilling out one that is sheared, stripped or spins [min]; estimate, no source.</summary>
    public double DrillOutEach { get; init; } = 3;

    /// <summary>Setting a new thread or nut where one was drilled out [min]; estimate, no source.</summary>
    public double RenewThreadEach { get; init; } = 2;

    /// <summary>Finding a covered joint [min]; estimate, no source.</summary>
    public double FindHidden { get; init; } = 1;

    /// <summary>Undoing a line's end of which nobody has seen how it is connected [min]; estimate, no source.</summary>
    public double UnseenLineEnd { get; init; } = 3;

    /// <summary>Putting right a part that a destructive release spoils, when no price of a new one is known [min]; estimate, no source.</summary>
    public double MakeGoodUnpriced { get; init; } = 45;

    /// <summary>Chance that a part not yet decided on would have been kept [0–1]; estimate, no source.</summary>
    public double UndecidedIsKept { get; init; } = 0.5;

    /// <summary>What one person lifts in a van [kg]; common practice, no source: a lift bent over is not that of a standard.</summary>
    public double OnePersonKg { get; init; } = 20;

    /// <summary>Minutes to undo a joint and to do it up again.</summary>
    /// <param name="joint">The joint.</param>
    public (double Out, double Back, string Origin) Of(Joint joint)
    {
        var row = Fixings[joint.Type];
        var (standing, bad) = Counts(joint);
        var back = row.BackSetUp + joint.Count * row.BackEach + bad * RenewThreadEach;
        if (joint.Release.Minutes is { } timed) return (timed, back, "timed in this workshop");
        var drilled = joint.Release.Way == ReleaseWay.Drill ? standing : bad;
        var found = joint.Hidden ? FindHidden : 0;
        return (found + row.OutSetUp + (standing - drilled) * row.OutEach + drilled * DrillOutEach, back, drilled > 0 ? $"{row.Origin}; drilling out: {Guess}" : row.Origin);
    }

    /// <summary>How many fixings still have to be undone, and how many of them do not turn.</summary>
    internal static (int Standing, int Bad) Counts(Joint joint)
    {
        var inState = joint.StateCount ?? joint.Count;
        return joint.State switch
        {
            FixingState.Missing => (joint.Count - inState, 0),
            FixingState.Sheared => (joint.Count, inState),
            FixingState.Loose when joint.Type == RivetNut => (joint.Count, inState), // a loose rivet nut spins with its screw
            _ => (joint.Count, 0),
        };
    }

    /// <summary>Minutes to carry a load out and to bring it back to its place, all people together.</summary>
    /// <param name="massKg">Mass; absent when not known, then taken for one person's lift and said so.</param>
    /// <param name="longestMm">Longest side.</param>
    /// <param name="isLoose">Loose goods, simply lifted out.</param>
    public (double Out, double Back, int People) Carry(double? massKg, double longestMm, bool isLoose)
    {
        if (isLoose && massKg is null or <= 10) return (LooseOut, LooseBack, 1);
        var people = massKg is { } kg ? TeamLift.PeopleFor(kg, OnePersonKg) ?? 4 : 1;
        var unwieldy = longestMm > 1200 ? UnwieldyMore : 0;
        return (people * (CarryOut + unwieldy), people * (CarryBack + 2 * unwieldy), people);
    }

    /// <summary>Carrying loose goods out [min]; estimate, no source.</summary>
    public double LooseOut { get; init; } = 0.5;

    /// <summary>Bringing loose goods back [min]; estimate, no source.</summary>
    public double LooseBack { get; init; } = 0.5;

    /// <summary>Carrying a part out, one person [min]; estimate, no source.</summary>
    public double CarryOut { get; init; } = 1.5;

    /// <summary>Bringing it back, setting it in place and lining it up, one person [min]; estimate, no source.</summary>
    public double CarryBack { get; init; } = 3;

    /// <summary>More for what is longer than 1200 mm [min]; estimate, no source.</summary>
    public double UnwieldyMore { get; init; } = 1;

    /// <summary>Holding what would drop when its last fixing goes [min]; estimate, no source.</summary>
    public double HoldOverhead { get; init; } = 1;

    /// <summary>Unloading or loading contents, each way [min/kg]; estimate, no source.</summary>
    public double ContentsPerKg { get; init; } = 0.1;

    /// <summary>Making a medium safe, and bringing it back with its test [min]; estimates, no source.</summary>
    public IReadOnlyDictionary<Medium, (double Out, double Back)> MakingSafe { get; init; } = new Dictionary<Medium, (double, double)>
    {
        [Medium.Mains] = (4, 6),   // shore lead off, locked, proved dead; back: polarity, protective conductor, trip test
        [Medium.Dc] = (5, 4),      // loads off, battery negative lifted and insulated, proved dead
        [Medium.Gas] = (6, 15),    // valve shut, vented; back: tightness test by whom the law reserves it to
        [Medium.Fuel] = (4, 5),
        [Medium.Water] = (8, 6),   // pump fuse out, tap open, drained; back: filled, held at pressure, wiped and watched
        [Medium.Waste] = (4, 3),
        [Medium.Exhaust] = (0, 3), // waiting for the heater to cool is no labour
    };

    private static IEnumerable<FixingTime> Rows()
    {
        // wood screw 30 mm long at 2 mm pitch with a power driver: index 3 and the running of the tool within the van factor
        yield return Turned(WoodScrew, placeIndex: 3, outIndex: OfPowerDriver(5)!.Value, backIndex: OfPowerDriver(5)!.Value);
        yield return Turned(CupWasherScrew, 3, OfPowerDriver(5)!.Value, OfPowerDriver(5)!.Value);
        yield return Turned(SelfDrillingScrew, 3, OfPowerDriver(6)!.Value, OfPowerDriver(6)!.Value);
        // broken loose with four ratchet turns of the arm, spun out by eight finger spins; back the same and a torque check
        var bolt = ToolUse.Of(Motion.ArmTurn, 4)!.Value + ToolUse.Of(Motion.FingerSpin, 8)!.Value;
        yield return Turned(Bolt, 3, bolt, bolt + 6);
        yield return Turned(RivetNut, 3, bolt, bolt + 6);
        yield return Turned(HandKnob, 1, ToolUse.Of(Motion.FingerSpin, 8)!.Value, ToolUse.Of(Motion.FingerSpin, 8)!.Value);
        var union = ToolUse.Of(Motion.ArmStroke, 4)!.Value;
        yield return Turned(Union, 6, union, union);
        var clip = ToolUse.Of(Motion.WristTurn, 9)!.Value;
        yield return Turned(HoseClip, 3, clip, clip);
        yield return Turned(Terminal, 3, ToolUse.Of(Motion.WristTurn, 9)!.Value, ToolUse.Of(Motion.WristTurn, 9)!.Value + 6);
        yield return new(Rivet, 0.5, 0.6, 0.5, 0.5, Guess);
        yield return new(Brad, 0.5, 0.5, 0.5, 0.3, Guess);
        yield return new(Staple, 0.5, 0.2, 0.5, 0.1, Guess);
        yield return new(Adhesive, 1, 2, 2, 1.5, Guess);
        yield return new(Sealant, 1, 2, 2, 2, Guess);
        yield return new(Clip, 0.2, 0.15, 0.2, 0.15, Guess);
        yield return new(Strap, 0.2, 0.5, 0.2, 0.8, Guess);
        yield return new(HookTape, 0.1, 0.1, 0.1, 0.1, Guess);
        yield return new(Clamp, 0.3, 0.4, 0.5, 0.6, Guess);
        yield return new(Pin, 0.1, 0.1, 0.1, 0.2, Guess);
        yield return new(Runner, 0.1, 0.2, 0.1, 0.3, Guess);
        yield return new(Weld, 2, 4, 5, 8, Guess);
        yield return new(PushFit, 0.5, 0.3, 0.3, 0.3, Guess);
        yield return new(Plug, 0.5, 0.2, 0.2, 0.2, Guess); // photographed and labelled before it is pulled
        yield return new(CableTie, 0.1, 0.1, 0.1, 0.2, Guess);
    }

    private static FixingTime Turned(FixingType type, int placeIndex, int outIndex, int backIndex)
    {
        double Minutes(int count, int index) => VanFactor * FixingRun.SecondsOf(new(count, placeIndex, index)) / 60;
        double Each(int index) => Minutes(2, index) - Minutes(1, index);
        return new(type, Minutes(1, outIndex) - Each(outIndex) + BagAndLabel, Each(outIndex), Minutes(1, backIndex) - Each(backIndex) + LineUp, Each(backIndex), $"{Card}; bagging, lining up: {Guess}");
    }

    private const double BagAndLabel = 0.5, LineUp = 0.5; // min a joint; estimate, no source
}
