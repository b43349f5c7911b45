namespace Wainwright.Methods.Retention;

/// <summary>A pull by hand gauge: force and movement, step by step. Mends the stiffness that was assumed and proves a least strength.</summary>
/// <remarks>
/// Initial stiffness: the straight line through the origin of the readings up to a third of the greatest force, at least two of them.
/// Permanent set: movement left when the force is back to a twentieth of the greatest or less. Held: the greatest force, when it did not let go.
/// </remarks>
public static class PullTest
{
    /// <summary>Reading of a pull.</summary>
    public static readonly Basis Basis = new(
        Source: "own rule, after common practice of anchor pull tests",
        Assumes: ["the gauge pulls along the fixing", "movement is read beside the fixing, not at the gauge"],
        Caution: "Proves one fixing at one pull. A hand pull is far below a crash, does not shake, and says nothing of heat, damp or the next fixing. Never pull a part that may fall on somebody.",
        How: Provenance.OwnRule);

    /// <param name="ForceN">Force read [N], 0 or more.</param>
    /// <param name="MovementMm">Movement read from the start [mm].</param>
    public readonly record struct Step(double ForceN, double MovementMm);

    /// <param name="InitialNPerMm">Initial stiffness [N/mm]; null when the readings do not show one.</param>
    /// <param name="GreatestN">Greatest force read [N].</param>
    /// <param name="PermanentSetMm">Movement left after letting off [mm]; null when it was not let off.</param>
    /// <param name="LetGo">It came out or kept moving.</param>
    /// <param name="Missing">What was not read and would tell more; empty when all was.</param>
    public sealed record Result(double? InitialNPerMm, double GreatestN, double? PermanentSetMm, bool LetGo, IReadOnlyList<string> Missing);

    const double InitialPart = 1.0 / 3, OffPart = 0.05;

    /// <param name="steps">The readings in the order in which they were taken, one or more.</param>
    /// <param name="letGo">It came out, or kept moving under the same force.</param>
    /// <exception cref="ArgumentException">No reading.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A force is negative or a value not finite.</exception>
    public static Result Of(IReadOnlyList<Step> steps, bool letGo)
    {
        if (steps.Count == 0) throw new ArgumentException("steps: must hold a reading", nameof(steps));
        foreach (var step in steps)
        {
            Must.NotBeNegative(step.ForceN);
            Must.BeFinite(step.MovementMm);
        }
        var greatest = steps.Max(s => s.ForceN);
        var top = steps.Select((s, i) => (s, i)).First(x => x.s.ForceN == greatest).i;
        var early = steps.Take(top + 1).Where(s => s.ForceN > 0 && s.ForceN <= greatest * InitialPart && s.MovementMm > 0).ToList();
        // too coarse a series shows no initial part: all the readings of the way up then
        if (early.Count < 2) early = [.. steps.Take(top + 1).Where(s => s.ForceN > 0 && s.MovementMm > 0)];
        double? stiffness = early.Count < 2 ? null : early.Sum(s => s.ForceN * s.MovementMm) / early.Sum(s => s.MovementMm * s.MovementMm);
        double? set = !letGo && steps[^1].ForceN <= greatest * OffPart && top < steps.Count - 1 ? steps[^1].MovementMm : null;
        List<string> missing = [];
        if (stiffness is null) missing.Add("two readings of force and movement on the way up");
        if (set is null && !letGo) missing.Add("the movement left after letting off");
        return new(stiffness, greatest, set, letGo, missing);
    }

    /// <summary>The assumed strength, mended: what was held is a floor under all three; what let go is the strength itself, a tenth either way.</summary>
    /// <param name="assumedN">Low, likely and high as assumed [N].</param>
    /// <param name="test">The pull.</param>
    public static Spread Strength(Spread assumedN, Result test) => test.LetGo
        ? new Spread(0.9, 1, 1.1) * test.GreatestN
        : new(Math.Max(assumedN.Low, test.GreatestN), Math.Max(assumedN.Likely, test.GreatestN), Math.Max(assumedN.High, test.GreatestN));

    /// <summary>The assumed stiffness, mended: as measured, a fifth either way; as assumed when the test does not show one.</summary>
    /// <param name="assumedNPerMm">Low, likely and high as assumed [N/mm].</param>
    /// <param name="test">The pull.</param>
    public static Spread Stiffness(Spread assumedNPerMm, Result test) =>
        test.InitialNPerMm is { } measured ? new Spread(0.8, 1, 1.25) * measured : assumedNPerMm;
}
