namespace Wainwright.Access;

/// <summary>Who works, and what they have.</summary>
public sealed record CrewOptions
{
    /// <summary>More would stand on one another's feet.</summary>
    public const int MostPeople = 4;

    /// <summary>How many people [1–4].</summary>
    public int People { get; init; } = 2;

    /// <summary>How many drivers, spanners, knives of each kind there are [1 or more].</summary>
    public int ToolsOfAKind { get; init; } = 1;

    /// <summary>
    /// Length of the load space that one working person takes up [mm]. 914 mm is the nominal clearance to keep round a thing
    /// that is worked on (DOE-HDBK-1140-2001, 3.1.1).
    /// </summary>
    public double StandingMm { get; init; } = 914;

    /// <summary>How hard each search for a shorter schedule tries, in the solver's own units of work: the same on every machine.</summary>
    public double Effort { get; init; } = 4;
}
