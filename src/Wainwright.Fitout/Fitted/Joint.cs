namespace Wainwright.Fitout;

/// <summary>How two things are held together or connected.</summary>
public enum FixingType
{
    /// <summary>Screw cutting its thread in wood or board.</summary>
    WoodScrew,

    /// <summary>Screw through a cup washer into wood or a clip nut.</summary>
    CupWasherScrew,

    /// <summary>Screw that drills or cuts its own thread in sheet metal.</summary>
    SelfDrillingScrew,

    /// <summary>Machine screw or bolt into a nut or a solid thread.</summary>
    Bolt,

    /// <summary>Machine screw into a rivet nut.</summary>
    RivetNut,

    /// <summary>Blind rivet.</summary>
    Rivet,

    /// <summary>Brad or other headless nail.</summary>
    Brad,

    /// <summary>Staple.</summary>
    Staple,

    /// <summary>Structural adhesive or contact glue.</summary>
    Adhesive,

    /// <summary>Sealant that also holds.</summary>
    Sealant,

    /// <summary>Spring or push clip.</summary>
    Clip,

    /// <summary>Strap with buckle or bolt.</summary>
    Strap,

    /// <summary>Hook-and-loop tape.</summary>
    HookTape,

    /// <summary>Clamp frame or window clamp.</summary>
    Clamp,

    /// <summary>Loose pin or peg.</summary>
    Pin,

    /// <summary>Wing bolt or hand knob.</summary>
    HandKnob,

    /// <summary>Drawer runner, lift-off hinge or similar slide.</summary>
    Runner,

    /// <summary>Weld or braze.</summary>
    Weld,

    /// <summary>Hose end held by a clip.</summary>
    HoseClip,

    /// <summary>Push-fit pipe connection.</summary>
    PushFit,

    /// <summary>Screwed pipe union or compression fitting.</summary>
    Union,

    /// <summary>Electrical plug or connector.</summary>
    Plug,

    /// <summary>Electrical terminal or lug under a screw.</summary>
    Terminal,

    /// <summary>Cable tie.</summary>
    CableTie,
}

/// <summary>What the tool has to fit.</summary>
public enum Drive
{
    /// <summary>Nothing: undone by hand.</summary>
    Hand,

    /// <summary>Slot.</summary>
    Slot,

    /// <summary>Cross recess.</summary>
    CrossRecess,

    /// <summary>Square recess.</summary>
    Square,

    /// <summary>Hexagon socket.</summary>
    HexSocket,

    /// <summary>Hexalobular recess (ISO 10664).</summary>
    Hexalobular,

    /// <summary>Hexagon head.</summary>
    HexHead,

    /// <summary>Knife, wire or blade.</summary>
    Blade,
}

/// <summary>State of a fixing.</summary>
public enum FixingState
{
    /// <summary>Nobody has seen it.</summary>
    NotSeen,

    /// <summary>As it should be.</summary>
    Sound,

    /// <summary>Loose: turns, spins or rattles.</summary>
    Loose,

    /// <summary>Not there.</summary>
    Missing,

    /// <summary>Sheared, stripped or torn out.</summary>
    Sheared,
}

/// <summary>What takes strength from a fixing that is there and tight.</summary>
public enum FixingFlaw
{
    /// <summary>Turned until the thread in the wood or sheet gave way.</summary>
    OverDriven,

    /// <summary>The wood it bites in was wet, or is.</summary>
    Wetted,

    /// <summary>Driven along the grain, into the end of a batten.</summary>
    EndGrain,

    /// <summary>Driven into the edge of a board, between its plies.</summary>
    BoardEdge,

    /// <summary>Rusted so that its shank has lost steel.</summary>
    Rusted,

    /// <summary>Put back into a hole that has held a screw before.</summary>
    ReusedHole,
}

/// <summary>How a joint is undone.</summary>
public enum ReleaseWay
{
    /// <summary>Unscrewed.</summary>
    Unscrew,

    /// <summary>Drilled out.</summary>
    Drill,

    /// <summary>Cut with knife, wire or saw.</summary>
    Cut,

    /// <summary>Levered or peeled off.</summary>
    Pry,

    /// <summary>Unclipped, unbuckled, unplugged, pulled: by hand.</summary>
    ByHand,
}

/// <summary>How, and from where, a joint is undone.</summary>
public sealed record Release
{
    /// <summary>How.</summary>
    public required ReleaseWay Way { get; init; }

    /// <summary>
    /// The side of the fixing from which hand and tool come; the tool stands off in this direction.
    /// Absent when any side will do.
    /// </summary>
    public Direction? From { get; init; }

    /// <summary>Whether undoing it spoils what it holds.</summary>
    public bool Destructive { get; init; }

    /// <summary>Length of tool and fixing that must be clear in front of it [mm]; absent for the usual tool.</summary>
    [Limits(0, 1_000)]
    public double? ToolMm { get; init; }

    /// <summary>Time for the whole joint as the workshop has measured it [min]; absent to use the labour table.</summary>
    [Limits(0, 1_000)]
    public double? Minutes { get; init; }

    /// <summary>The licence it takes, for example <c>gas</c>; absent when any competent person may.</summary>
    public string? Licence { get; init; }
}

/// <summary>Fixings of one type that hold a part to another part or to the vehicle.</summary>
public sealed record Joint
{
    /// <summary>Its id, stable for the life of the job.</summary>
    public required JointId Id { get; init; }

    /// <summary>The part that is held.</summary>
    public required PartId Part { get; init; }

    /// <summary>What it is held to; absent for the vehicle itself.</summary>
    public PartId? To { get; init; }

    /// <summary>Name of the rib, bow, rail or skin it goes into, where it is the vehicle.</summary>
    public string? Into { get; init; }

    /// <summary>Type of fixing.</summary>
    public required FixingType Type { get; init; }

    /// <summary>Size as the trade writes it: <c>M6</c>, <c>4x30</c>.</summary>
    public string? Size { get; init; }

    /// <summary>What the tool has to fit.</summary>
    public Drive Drive { get; init; }

    /// <summary>How many fixings.</summary>
    [Limits(1, 10_000)]
    public required int Count { get; init; }

    /// <summary>Where they are [mm]; none when nobody measured.</summary>
    public IReadOnlyList<Place> Points { get; init; } = [];

    /// <summary>The way the fixing's shank points, from head to tip.</summary>
    public Direction? Axis { get; init; }

    /// <summary>Material that the fixing bites in.</summary>
    public string? Base { get; init; }

    /// <summary>Thickness of that material [mm]; absent when not measured.</summary>
    [Limits(0.1, 200)]
    public Measured? BaseMm { get; init; }

    /// <summary>Length of thread or shank that bites in that material [mm]; absent when none was pulled and measured.</summary>
    [Limits(0.1, 300)]
    public Measured? PenetrationMm { get; init; }

    /// <summary>Thickness of what is held, under the head [mm]; absent when not measured.</summary>
    [Limits(0.1, 200)]
    public Measured? UnderHeadMm { get; init; }

    /// <summary>What is held, under the head, is made of; absent to take the part's own make-up.</summary>
    public string? UnderHead { get; init; }

    /// <summary>Diameter of the head, or of the washer under it [mm]; absent for the usual head of that size.</summary>
    [Limits(1, 200)]
    public Measured? HeadMm { get; init; }

    /// <summary>Shortest distance from a fixing's middle to an edge of what it bites in or holds [mm]; absent when not measured.</summary>
    [Limits(0, 2_000)]
    public Measured? EdgeMm { get; init; }

    /// <summary>Grade on the head of a bolt, <c>8.8</c>; absent when it was not read.</summary>
    public string? Grade { get; init; }

    /// <summary>Area that is truly bonded, all glue spots together [mm²]; absent when nobody has seen it.</summary>
    [Limits(1, 1e8)]
    public Measured? BondedMm2 { get; init; }

    /// <summary>What one fixing carries until it lets go, where its maker or a test says so [N]; absent to work it out.</summary>
    [Limits(0, 1_000_000)]
    public Measured? RatedN { get; init; }

    /// <summary>What takes strength from the fixings; none when nothing of the kind was found.</summary>
    public IReadOnlyList<FixingFlaw> Flaws { get; init; } = [];

    /// <summary>State of the fixings.</summary>
    public FixingState State { get; init; }

    /// <summary>How many of them are in that state; absent for all. The others are sound.</summary>
    [Limits(0, 10_000)]
    public int? StateCount { get; init; }

    /// <summary>Hidden: covered until something is taken away.</summary>
    public bool Hidden { get; init; }

    /// <summary>How it is undone.</summary>
    public required Release Release { get; init; }

    /// <summary>How it is known.</summary>
    public required Known Known { get; init; }

    /// <summary>Anything else.</summary>
    public string? Note { get; init; }
}
