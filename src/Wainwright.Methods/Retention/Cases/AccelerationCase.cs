namespace Wainwright.Methods.Retention;

/// <summary>What a set of accelerations is meant for.</summary>
public enum CaseKind
{
    /// <summary>Braking, swerving, bumps: every day, without damage.</summary>
    Driving,

    /// <summary>Crash or emergency: may bend, must not let go.</summary>
    Crash,

    /// <summary>A test of something else (seats, doors, batteries): shown to compare, not to choose.</summary>
    ToCompare,
}

/// <summary>Accelerations that what is fitted shall stand, and where they come from.</summary>
/// <remarks>
/// Named by the way the thing is thrown: forward when the vehicle brakes. In multiples of g; null: the source says nothing of that way.
/// Gravity, 1 g down, acts besides in every case.
/// </remarks>
/// <param name="Id">Short name for files and commands.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Kind">What it is meant for.</param>
/// <param name="ForwardG">Thrown forward [g].</param>
/// <param name="RearwardG">Thrown rearward [g].</param>
/// <param name="SidewaysG">Thrown to either side [g].</param>
/// <param name="UpG">Thrown up [g], as printed; see <see cref="Demand.Added"/>.</param>
/// <param name="DownG">Thrown down [g], as printed; taken as besides gravity unless the next says otherwise.</param>
/// <param name="DownIsGravity">The printed figure down is gravity itself, nothing besides.</param>
/// <param name="Source">Document.</param>
/// <param name="How">How the figures are known.</param>
/// <param name="Proves">What holding it shows.</param>
/// <param name="DoesNotProve">What it does not show.</param>
public sealed record AccelerationCase(
    string Id, string Title, CaseKind Kind, double? ForwardG, double? RearwardG, double? SidewaysG, double? UpG, double? DownG, bool DownIsGravity,
    string Source, Provenance How, string Proves, string DoesNotProve)
{
    /// <summary>Contradictions and other things a reader must see; empty when there are none.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
