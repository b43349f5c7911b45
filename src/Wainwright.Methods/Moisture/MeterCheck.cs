namespace Wainwright.Methods.Moisture;

/// <summary>A moisture meter held on its check block: a resistor that is marked with the reading it ought to give.</summary>
public static class MeterCheck
{
    /// <summary>How far off a meter may be and still count as right [points].</summary>
    public const double AlikePoints = 0.5;

    /// <summary>Habit of the trade.</summary>
    public static readonly Basis Basis = new(
        Source: "A check block read before and after; half a point off counts as right: common practice, no source",
        Assumes: ["the block's own mark is right", "block and meter as warm as the room"],
        Caution: "One block tells of one place on the scale. It says nothing of the wood, the pins' depth or the species.",
        How: Provenance.CommonPractice);

    /// <param name="OffPoints">What it read above the mark; negative below [points].</param>
    /// <param name="IsAlike">No further off than <see cref="AlikePoints"/>.</param>
    public sealed record Result(double OffPoints, bool IsAlike);

    /// <summary>Judges one check.</summary>
    /// <param name="markedPercent">Mark of the block [%], 5 to 60.</param>
    /// <param name="readPercent">What the meter showed [%], 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(double markedPercent, double readPercent)
    {
        var off = Must.BeWithin(readPercent, 0, 100) - Must.BeWithin(markedPercent, 5, 60);
        return new(off, Math.Abs(off) <= AlikePoints + 1e-9);
    }
}
