namespace Wainwright.Methods.Labour;

/// <summary>Time to loosen or fasten a run of like fixings with one tool, as a Basic MOST sequence.</summary>
/// <remarks>
/// TMU = 40 (fetch the tool within reach, lay it aside: A1 B0 G1 and A1 B0 P1) + n · 10 · (A1 + P + L), 1 TMU = 0.036 s.
/// P is the index of putting the tool on the work, L that of the turning (<see cref="ToolUse"/>).
/// </remarks>
public static class FixingRun
{
    const double FetchAndLayAsideTmu = 40, SecondsPerTmu = 0.036;
    const int ActionDistance = 1;

    /// <summary>Basic MOST tool-use sequence.</summary>
    public static readonly Basis Basis = new(
        Source: "Basic MOST tool-use sequence A B G, A B P, L, A B P, A; index × 10 = TMU; P and L from the tool-use data card",
        Assumes: ["a trained worker at normal pace", "clean fixings that turn freely, in good reach", "the tool lies within reach"],
        Caution: "Bench times. Corroded screws, sealant, dirt and kneeling are not in them.",
        How: Provenance.Quoted);

    /// <param name="Count">Fixings in the run, 0 or more.</param>
    /// <param name="PlaceIndex">Index of putting the tool on the work [0–6]: hand 0–1, screwdriver or ratchet 3, adjustable spanner 6.</param>
    /// <param name="TurnIndex">Index of loosening or fastening one [0 or more].</param>
    public sealed record Input(int Count, int PlaceIndex, int TurnIndex);

    /// <exception cref="ArgumentOutOfRangeException">A negative value.</exception>
    public static double SecondsOf(Input run)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(run.Count);
        ArgumentOutOfRangeException.ThrowIfNegative(run.PlaceIndex);
        ArgumentOutOfRangeException.ThrowIfNegative(run.TurnIndex);
        return run.Count == 0 ? 0 : (FetchAndLayAsideTmu + run.Count * 10.0 * (ActionDistance + run.PlaceIndex + run.TurnIndex)) * SecondsPerTmu;
    }
}
