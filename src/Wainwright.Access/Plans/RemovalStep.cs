using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What is done in a step.</summary>
public enum StepKind
{
    /// <summary>A medium is made safe.</summary>
    MakeSafe,

    /// <summary>A joint is undone.</summary>
    Undo,

    /// <summary>A line's end is undone.</summary>
    Disconnect,

    /// <summary>A part is carried out.</summary>
    TakeOut,

    /// <summary>A piece of a part is taken off and carried out.</summary>
    TakePiece,

    /// <summary>The part can be reached by hand.</summary>
    Reach,

    /// <summary>The part can be seen.</summary>
    See,

    /// <summary>A part that would drop or tip is held or propped.</summary>
    Hold,
}

/// <summary>One step of a plan.</summary>
public sealed record RemovalStep
{
    /// <summary>From 1.</summary>
    public required int Number { get; init; }

    /// <summary>What is done.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>The part taken out, or whose joint or line end is undone.</summary>
    public PartId? Part { get; init; }

    /// <summary>The joint undone.</summary>
    public JointId? Joint { get; init; }

    /// <summary>The line whose end is undone.</summary>
    public LineId? Line { get; init; }

    /// <summary>The medium made safe.</summary>
    public Medium? Medium { get; init; }

    /// <summary>The piece taken off.</summary>
    public string? Piece { get; init; }

    /// <summary>Its name in certificates and when planning anew: the same in every plan of the job.</summary>
    public string Key { get; init; } = "";

    /// <summary>In words, imperative.</summary>
    public required string Action { get; init; }

    /// <summary>Labour now [min], all people together.</summary>
    public required double OutMinutes { get; init; }

    /// <summary>Labour to bring it back [min].</summary>
    public required double BackMinutes { get; init; }

    /// <summary>Expected labour to put right what it spoils [min].</summary>
    public required double DamageMinutes { get; init; }

    /// <summary>Where the minutes come from.</summary>
    public required string Origin { get; init; }

    /// <summary>How many people it takes.</summary>
    public required int People { get; init; }

    /// <summary>The load against what people may lift; absent for what is not carried, or of unknown mass.</summary>
    public Lift? Lift { get; init; }

    /// <summary>What forces it.</summary>
    public required Because Why { get; init; }

    /// <summary>The opening it leaves by.</summary>
    public string? Through { get; init; }

    /// <summary>Where it goes, from where it stands to outside; empty where nothing is carried or its room is not modelled.</summary>
    public required IReadOnlyList<PathPoint> Path { get; init; }

    /// <summary>
    /// Size along the axes to which a soft load is folded before it goes [mm]; then the path's shifts are places of its low
    /// corner. Absent when it goes as it lies.
    /// </summary>
    public Place? FoldedMm { get; init; }

    /// <summary>Whether hand and tool get to it only past the parts that it holds and rests on: to be tried first.</summary>
    public bool OnTrial { get; init; }

    /// <summary>What leaves with it.</summary>
    public required IReadOnlyList<PartId> With { get; init; }

    /// <summary>The licence it takes; absent when any competent person may.</summary>
    public string? Licence { get; init; }

    /// <summary>What to heed.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}

/// <summary>Why a step is in the plan.</summary>
/// <param name="Reason">Of what kind; absent for a target's own step.</param>
/// <param name="ForPart">The part for whose sake; absent for a target's own step.</param>
/// <param name="Words">In words.</param>
/// <param name="InEveryPlan">Whether no plan can do without it; otherwise it is the cheapest of several ways.</param>
public sealed record Because(OrderReason? Reason, PartId? ForPart, string Words, bool InEveryPlan)
{
    /// <summary>
    /// The proved sentence that asks for it: whoever does what it is for must do one of these, in words, and of them the plan does
    /// only this one. Empty where no sentence of the proof names it alone.
    /// </summary>
    public IReadOnlyList<string> OneOf { get; init; } = [];

    /// <summary>What the sentence is about, in words; absent where there is none.</summary>
    public string? OneOfFor { get; init; }

    /// <summary>Where it stands in the way: how the part it is done for meets it with all before it done, in each direction.</summary>
    public IReadOnlyList<Blocking> Wall { get; init; } = [];
}

/// <summary>A point of a way out.</summary>
/// <param name="ShiftMm">How far the middle of the load's bounds is from where it was found.</param>
/// <param name="QuarterTurnsAbout">Quarter turns so far about the vehicle axes through that middle, in order.</param>
public sealed record PathPoint(Place ShiftMm, IReadOnlyList<Axis> QuarterTurnsAbout)
{
    /// <summary>
    /// Only on a tilted way: how it is turned in all about that middle, from how it was found; no quarter turns are listed
    /// then. From one point to the next the middle goes straight while the load turns evenly by the shorter way.
    /// </summary>
    public Turned? Turned { get; init; }
}

/// <summary>A turn in vehicle axes (x to the rear, y to the right, z up) as a unit quaternion; it and its negative are the same turn.</summary>
/// <param name="X">Axis along x times the sine of half the angle.</param>
/// <param name="Y">Axis along y times the sine of half the angle.</param>
/// <param name="Z">Axis along z times the sine of half the angle.</param>
/// <param name="W">Cosine of half the angle.</param>
public sealed record Turned(double X, double Y, double Z, double W);
