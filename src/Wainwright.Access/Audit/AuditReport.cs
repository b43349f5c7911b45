namespace Wainwright.Access;

/// <summary>What an independent replay of a plan found.</summary>
/// <param name="Faults">What is wrong with the plan, in words; empty when nothing is.</param>
/// <param name="NotShown">What the replay cannot show, each in one sentence; no fault of the plan.</param>
/// <param name="Loads">Loads walked along their way.</param>
/// <param name="Hands">Ways of hand and tool walked.</param>
public sealed record AuditReport(IReadOnlyList<string> Faults, IReadOnlyList<string> NotShown, int Loads, int Hands)
{
    /// <summary>Whether nothing is wrong.</summary>
    public bool Holds => Faults.Count == 0;
}

/// <summary>How hand and tool come to one fixing in a plan: evidence that an audit walks.</summary>
/// <param name="Step">Number of the step.</param>
/// <param name="Boxes">The hand and what it holds, as boxes about their point of work [mm]; none where it is worked from outside or without a tool known.</param>
/// <param name="Way">Where the point of work goes, from the fixing to outside the van [mm].</param>
public sealed record HandWay(int Step, IReadOnlyList<(Fitout.Place Low, Fitout.Place High)> Boxes, IReadOnlyList<Fitout.Place> Way);
