namespace Wainwright.Methods.Retention;

/// <summary>What is left of a fixing's strength in the state in which it is found.</summary>
/// <remarks>
/// Low, likely and high as part of the sound strength, apart for straight out and across. Several troubles multiply. Nobody has seen it:
/// from nothing to all, so that it never counts towards *holds* until somebody looks.
/// </remarks>
public static class FixingCondition
{
    /// <summary>Multipliers.</summary>
    public static readonly Basis Basis = new(
        Source: "over-driven: a report of 294 screws, 2009 (documents.pub, abstract), 77 % less at the most; wetted: NDS table 11.3.3; end grain: NDS 12.2 and 12.5.2; a board's edge weaker than its face and weaker still when damp: Wu 1999 (repository.lsu.edu/agrnr_pubs/1423, abstract), its figure and all others common practice, no source",
        Assumes: ["the trouble is as it was seen, no worse inside"],
        Caution: "A judgement in numbers. One screw pulled out tells more.",
        How: Provenance.CommonPractice);

    /// <summary>What is wrong.</summary>
    public enum State
    {
        /// <summary>Nothing.</summary>
        Sound,

        /// <summary>Nobody has seen it.</summary>
        NotSeen,

        /// <summary>Turns, rattles, or its head stands off.</summary>
        Loose,

        /// <summary>Not there.</summary>
        Missing,

        /// <summary>Sheared, stripped or torn out.</summary>
        Sheared,

        /// <summary>Turned on until the thread in the wood or sheet gave.</summary>
        OverDriven,

        /// <summary>The wood is or was wet.</summary>
        Wetted,

        /// <summary>In the end of a batten, along the grain.</summary>
        EndGrain,

        /// <summary>In the edge of a board, between its plies.</summary>
        BoardEdge,

        /// <summary>Rusted.</summary>
        Rusted,

        /// <summary>Put back into an old hole.</summary>
        ReusedHole,
    }

    /// <param name="Pull">Straight out [-].</param>
    /// <param name="Shear">Across [-].</param>
    /// <param name="How">How the figures are known.</param>
    public readonly record struct Left(Spread Pull, Spread Shear, Provenance How);

    /// <summary>What is left.</summary>
    /// <param name="state">What is wrong.</param>
    /// <param name="fixing">What it is; brads and nails suffer most from wetting.</param>
    public static Left Of(State state, WoodFixing fixing) => state switch
    {
        State.Sound => new(Spread.Exactly(1), Spread.Exactly(1), Provenance.OwnRule),
        State.NotSeen => new(new(0, 0.8, 1), new(0, 0.8, 1), Provenance.CommonPractice),
        State.Loose => new(new(0, 0.2, 0.5), new(0.2, 0.5, 0.8), Provenance.CommonPractice),
        State.Missing or State.Sheared => new(Spread.Exactly(0), Spread.Exactly(0), Provenance.OwnRule),
        State.OverDriven => new(new(0.1, 0.23, 0.6), new(0.6, 0.8, 1), Provenance.Quoted),
        State.Wetted when fixing == WoodFixing.SmoothNail => new(new(0, 0.25, 0.5), new(0.5, 0.7, 1), Provenance.FromMemory),
        State.Wetted => new(new(0.5, 0.7, 1), new(0.5, 0.7, 1), Provenance.FromMemory),
        State.EndGrain when fixing == WoodFixing.LagScrew => new(new(0.5, 0.75, 0.9), new(0.5, 0.67, 0.9), Provenance.FromMemory),
        State.EndGrain => new(new(0, 0.5, 0.75), new(0.5, 0.67, 0.9), Provenance.FromMemory),
        State.BoardEdge => new(new(0.3, 0.6, 0.9), new(0.3, 0.6, 0.9), Provenance.CommonPractice),
        State.Rusted => new(new(0.3, 0.7, 1), new(0.3, 0.7, 1), Provenance.CommonPractice),
        _ => new(new(0.4, 0.7, 0.9), new(0.7, 0.9, 1), Provenance.CommonPractice),
    };
}
