namespace Wainwright.Access;

/// <summary>A plan laid out for several people: who does what, when, and how long it takes by the clock.</summary>
public sealed record CrewSchedule
{
    /// <summary>How many people it is for.</summary>
    public required int People { get; init; }

    /// <summary>Time by the clock until all is done [min]; 0 when there is nothing to do or too few to do it.</summary>
    public required double Minutes { get; init; }

    /// <summary>No schedule of the same steps is shorter [min].</summary>
    public required double LowerBoundMinutes { get; init; }

    /// <summary>Whether no schedule of the same steps is shorter: proved.</summary>
    public bool IsProved => TooFew.Count == 0 && Minutes <= LowerBoundMinutes + 1e-9;

    /// <summary>Labour of all people together [min].</summary>
    public required double LabourMinutes { get; init; }

    /// <summary>Each step with its time and its people, in order of beginning.</summary>
    public required IReadOnlyList<CrewTask> Tasks { get; init; }

    /// <summary>The chain of steps that sets the length, first to last: each could not begin before the one ahead of it was done.</summary>
    public required IReadOnlyList<CrewLink> Critical { get; init; }

    /// <summary>Steps that take more people than there are; then there is no schedule.</summary>
    public IReadOnlyList<RemovalStep> TooFew { get; init; } = [];

    /// <summary>What is taken for granted.</summary>
    public required IReadOnlyList<string> Assumes { get; init; }
}

/// <summary>A step of the plan with its time and its people.</summary>
/// <param name="Step">The step.</param>
/// <param name="FromMinutes">Begins [min from the start].</param>
/// <param name="ToMinutes">Ends [min from the start].</param>
/// <param name="People">Who, from 1.</param>
/// <param name="Tool">What is in hand; absent for bare hands.</param>
/// <param name="Where">Where one stands, in words.</param>
public sealed record CrewTask(RemovalStep Step, double FromMinutes, double ToMinutes, IReadOnlyList<int> People, string? Tool, string Where);

/// <summary>What a step waited for.</summary>
public enum WaitFor
{
    /// <summary>Nothing: it begins the work.</summary>
    Nothing,

    /// <summary>Another step had to be done first.</summary>
    Step,

    /// <summary>Somebody to be free.</summary>
    Person,

    /// <summary>A tool to be free.</summary>
    Tool,

    /// <summary>Room to stand, or the way to the door.</summary>
    Room,
}

/// <summary>A link of the chain that sets the length.</summary>
/// <param name="Number">Number of the step in the plan.</param>
/// <param name="Why">What it waited for.</param>
/// <param name="Words">In words.</param>
public sealed record CrewLink(int Number, WaitFor Why, string Words);
