using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>How hard everything may be thrown one way before a part comes loose.</summary>
/// <param name="Way">The way; unit vector in vehicle axes.</param>
/// <param name="Words">The same in words: <c>forward, up and left</c>.</param>
/// <param name="FactorG">
/// It lets go here [g], above the 1 g down that always acts. Infinite: thrown against something that only pushes. Below 0: it
/// does not carry its own weight at rest. Absent when a mass or a place is not known.
/// </param>
/// <param name="FirstYieldG">The first fixing reaches its strength here, with likely strengths [g]; absent like the factor.</param>
/// <param name="Governing">The joint that resists most when it lets go; absent when none does.</param>
/// <param name="First">The joint that reaches its strength first; absent when none does.</param>
/// <param name="LetsGo">How the part begins to move then; absent when nothing moves.</param>
public sealed record Thrown(Vector3D Way, string Words, Span? FactorG, double? FirstYieldG, JointId? Governing, JointId? First, Motion? LetsGo);

/// <summary>A part against one load case.</summary>
/// <param name="Case">The load case.</param>
/// <param name="Verdict">Whether it holds in every direction of it.</param>
/// <param name="Worst">The direction in which it is shortest of what is asked, or nearest to it.</param>
/// <param name="DemandG">What is asked in that direction [g].</param>
/// <param name="FactorG">What it stands in that direction [g]; absent when it could not be worked out.</param>
/// <param name="Governing">The joint that decides there; absent when none does.</param>
/// <param name="ByPull">Whether a pull by hand gauge decided: it kept a set under less than every day's driving asks.</param>
public sealed record CaseAnswer(LoadCase Case, Verdict Verdict, string Worst, double DemandG, Span? FactorG, JointId? Governing, bool ByPull = false);

/// <summary>How a part is held at all.</summary>
public enum HeldBy
{
    /// <summary>By fixings that are there.</summary>
    Fixings,

    /// <summary>It stands loose: only friction and what is beside it.</summary>
    Nothing,

    /// <summary>Fixings are recorded and every one of them is missing or sheared.</summary>
    NothingLeft,

    /// <summary>Nobody recorded how.</summary>
    NotRecorded,
}

/// <summary>Will it hold: one part, in every direction.</summary>
public sealed record PartHolding
{
    /// <summary>The part.</summary>
    public required Part Part { get; init; }

    /// <summary>How it is held at all.</summary>
    public required HeldBy HeldBy { get; init; }

    /// <summary>Mass that its fixings hold: itself laden and what rides on it [kg]; absent when not known.</summary>
    public Span? LadenKg { get; init; }

    /// <summary>Likely mass of the part itself, laden [kg]; absent when not known.</summary>
    public double? OwnKg { get; init; }

    /// <summary>The 26 directions, faces of the cube first; empty when it cannot be told.</summary>
    public IReadOnlyList<Thrown> Directions { get; init; } = [];

    /// <summary>The load cases it is judged against.</summary>
    public IReadOnlyList<CaseAnswer> Cases { get; init; } = [];

    /// <summary>The worst of its cases.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Why, in one sentence.</summary>
    public required string Because { get; init; }

    /// <summary>The joint that decides where it is shortest; absent when none does.</summary>
    public JointId? Weakest { get; init; }

    /// <summary>How that joint lets go, in words; absent when no joint decides.</summary>
    public string? GivesBy { get; init; }

    /// <summary>The pull by hand gauge that somebody made on it; absent when nobody did.</summary>
    public PulledPart? Pulled { get; init; }

    /// <summary>Parts that its load passes through on the way to the van, nearest first.</summary>
    public IReadOnlyList<PartId> Through { get; init; } = [];

    /// <summary>Parts that ride on it.</summary>
    public IReadOnlyList<PartId> Riders { get; init; } = [];

    /// <summary>The one look that would tell most; absent when it holds or falls short whatever the doubt.</summary>
    public string? NextLook { get; init; }

    /// <summary>What was taken for granted.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>What a given throw does, in a word of the road [g]: the worse of its directions; absent when not known.</summary>
    public Span? InG(ThrownWord word)
    {
        var ways = HeldDirections.Of(word);
        Span? worst = null;
        foreach (var thrown in Directions.Where(d => ways.Any(w => (w - d.Way).Length < 1e-6)))
            if (thrown.FactorG is { } g && (worst is not { } so || g.Low < so.Low || (g.Low == so.Low && g.Likely < so.Likely))) worst = g;
        return worst;
    }
}

/// <summary>Will it hold: every part of a van.</summary>
/// <param name="Job">The job.</param>
/// <param name="Cases">What it is judged against, with what is asked.</param>
/// <param name="Parts">The parts, those that fall shortest first.</param>
public sealed record JobHolding(Job Job, IReadOnlyList<LoadCase> Cases, IReadOnlyList<PartHolding> Parts)
{
    /// <summary>Shown wherever a figure in g is.</summary>
    public const string Caution =
        "A figure in g is worked out, not tested: fixings nobody pulled, wood nobody tested, a load that is steady where a crash is not. It certifies nothing. Seats, belts, child restraints, gas containers and structure are for the regulation and a licensed engineer.";

    /// <summary>The answer for one part; absent when the job has no such part.</summary>
    public PartHolding? The(PartId part) => Parts.FirstOrDefault(p => p.Part.Id == part);
}
