using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What a plan comes to when the measures are off as far as a tape may be off.</summary>
/// <param name="TapeMm">How far a measure of which nothing is said may be off [mm].</param>
/// <param name="Tight">The plan when every part is as large as it may be; it may be that there is none.</param>
/// <param name="Loose">The plan when every part is as small as it may be.</param>
/// <param name="MeasureAgain">The measures that decide, the least spare first.</param>
public sealed record TightLoose(double TapeMm, RemovalPlan Tight, RemovalPlan Loose, IReadOnlyList<MeasureAgain> MeasureAgain)
{
    /// <summary>Whether the same parts and pieces come out either way, both proved.</summary>
    public bool IsSettled => Tight.Proof == Proof.ProvedCheapest && Loose.Proof == Proof.ProvedCheapest && Out(Tight).SetEquals(Out(Loose));

    private static HashSet<(PartId, string?)> Out(RemovalPlan plan) =>
        [.. plan.Steps.Where(s => s.Kind is StepKind.TakeOut or StepKind.TakePiece).SelectMany(s => s.With.Prepend(s.Part!.Value).Select(p => (p, s.Piece)))];
}

/// <summary>A measure that decides the answer within its tolerance: measure it again, to the millimetre.</summary>
/// <param name="Part">The part.</param>
/// <param name="Along">The axis of the measure.</param>
/// <param name="RecordedMm">What is recorded.</param>
/// <param name="SpareMm">By so much it may grow and still goes as planned; below nought: so much less would spare a part that now comes out.</param>
/// <param name="Beside">What it passes or is held by; none for the van itself.</param>
/// <param name="Words">The same in words.</param>
public sealed record MeasureAgain(PartId Part, Axis Along, double RecordedMm, int SpareMm, IReadOnlyList<PartId> Beside, string Words);
