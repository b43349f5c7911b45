using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What a planner is told beside the job.</summary>
public sealed record AccessOptions
{
    /// <summary>Parts that are out already, with their joints undone.</summary>
    public IReadOnlyList<PartId> AlreadyOut { get; init; } = [];

    /// <summary>Parts that must stay in.</summary>
    public IReadOnlyList<PartId> MustStay { get; init; } = [];

    /// <summary>What a plan is to have least of.</summary>
    public Objective Objective { get; init; } = Objective.LeastLabour;

    /// <summary>
    /// Room wanted between a part on its way and what it passes [mm]; never more than the two had as found. 0 lets things slide
    /// past one another in contact, as a drawer does in its case.
    /// </summary>
    public int ClearanceMm { get; init; }

    /// <summary>A load that would not go with this much room on every side is called tight [mm]; common practice, no source.</summary>
    public int TightBelowMm { get; init; } = 5;

    /// <summary>Overlap in the model that is taken for a measuring error [mm]; a tape is good to 5 mm (common practice, no source).</summary>
    public int ShaveMm { get; init; } = 5;

    /// <summary>Who gets to see, reach and undo things; absent for room for the large man and reach of the small woman.</summary>
    public Person Person { get; init; } = Person.Anyone;

    /// <summary>Minutes.</summary>
    public LabourTable Labour { get; init; } = LabourTable.Usual;

    /// <summary>Whether a second search, with round and slanting shapes as small as they can be, brackets the answer.</summary>
    public bool Bracket { get; init; } = true;

    /// <summary>When parts are tried tilted, and how long.</summary>
    public Tilting Tilting { get; init; } = Tilting.Usual;

    /// <summary>How much each search may spend.</summary>
    public SearchBudget Budget { get; init; } = SearchBudget.Usual;

    /// <summary>Told now and then how far a search has come, on the thread that searches.</summary>
    public Action<SearchProgress>? Progress { get; init; }

    /// <summary>Ends a search early with the best found so far.</summary>
    public CancellationToken Stop { get; init; }
}
