using Wainwright.Methods;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>What being wrong about a board costs, and what cutting costs, in minutes of work.</summary>
/// <remarks>All of it is this project's own rule: common practice, no source. A workshop that has counted its hours puts in its own.</remarks>
/// <param name="KeptRottenPerM2">A square metre kept that is past saving: found after refitting [min/m²].</param>
/// <param name="CutSoundPerM2">A square metre cut out and renewed that was not past saving [min/m²].</param>
/// <param name="LeftWetPerM2">A square metre wet but sound, closed up without drying [min/m²].</param>
/// <param name="DryingPerM2">A square metre opened, dried and read again [min/m²].</param>
/// <param name="FreeCutPerM">A metre of cut through the open board, with the batten that has to go behind it [min/m].</param>
/// <param name="FramingCutPerM">A metre of cut over framing that carries both edges [min/m].</param>
/// <param name="PiecePerPiece">Marking out, fitting and finishing one new piece, whatever its size [min].</param>
/// <param name="MarginMm">Board taken beyond the wet at a cut edge; what is past saving within it counts as kept [mm].</param>
/// <param name="GridMm">Step of the straight cuts that are tried between seams and framing [mm].</param>
/// <param name="ReachMm">No board is cut on suspicion: what is further than this from every reading on it is left to the next reading [mm].</param>
/// <param name="PastSavingPercent">From here a board counts as past saving [%].</param>
/// <param name="LongWetPercent">From here where it has stood wet for months [%].</param>
/// <param name="WetPercent">Over this it is wet [%].</param>
/// <param name="LongWet">It has stood wet for months, as far as anybody knows.</param>
public sealed record CutStakes(
    double KeptRottenPerM2 = 600, double CutSoundPerM2 = 200, double LeftWetPerM2 = 300, double DryingPerM2 = 40, double FreeCutPerM = 25, double FramingCutPerM = 10,
    double PiecePerPiece = 30, double MarginMm = 100, double GridMm = 50, double ReachMm = 400, double PastSavingPercent = 28, double LongWetPercent = 20, double WetPercent = 16, bool LongWet = false)
{
    /// <summary>The usual costs.</summary>
    public static readonly CutStakes Usual = new();

    /// <summary>Where the figures come from.</summary>
    public static readonly Basis Basis = new(
        Source: "Fibre saturation, decay and dry: MoistureThresholds; minutes, margin and grid: own rule, common practice, no source",
        Assumes: ["past saving is judged from moisture alone: nobody has put a point to the wood", "minutes are of one trained person"],
        Caution: "A cut proposed by figures is proved by hand: bradawl along the line, and again on what stays. A board that carries load or braces the body is judged by who answers for it.",
        How: Provenance.OwnRule);

    /// <summary>Moisture from which a board counts as past saving [%].</summary>
    public double SpentPercent => LongWet ? LongWetPercent : PastSavingPercent;

    /// <summary>Itself, once every figure is within its range.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A cost is negative or not finite; the grid is not 10 to 1000 mm; a threshold is not 5 to 60 %, or wet is not the lowest.</exception>
    internal CutStakes Checked()
    {
        foreach (var cost in (double[])[KeptRottenPerM2, CutSoundPerM2, LeftWetPerM2, DryingPerM2, FreeCutPerM, FramingCutPerM, PiecePerPiece, MarginMm, ReachMm])
        {
            ArgumentOutOfRangeException.ThrowIfNegative(cost);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(cost, 1e6);
            ArgumentOutOfRangeException.ThrowIfEqual(double.IsNaN(cost), true);
        }
        if (!(GridMm is >= 10 and <= 1000)) throw new ArgumentOutOfRangeException(nameof(GridMm), GridMm, "10 to 1000 mm");
        foreach (var percent in (double[])[PastSavingPercent, LongWetPercent, WetPercent])
            if (!(percent is >= 5 and <= 60)) throw new ArgumentOutOfRangeException(nameof(PastSavingPercent), percent, "5 to 60 %");
        if (WetPercent > SpentPercent) throw new ArgumentOutOfRangeException(nameof(WetPercent), WetPercent, "not above past saving");
        return this;
    }

    /// <summary>What was taken, one line each.</summary>
    internal IReadOnlyList<string> Said() =>
    [
        FormattableString.Invariant($"past saving from {SpentPercent:0.#} %{(LongWet ? " (wet for months)" : $"; how long it was wet is not in the readings: after months from {LongWetPercent:0.#} %")}, wet over {WetPercent:0.#} %"),
        FormattableString.Invariant($"minutes a square metre: kept past saving {KeptRottenPerM2:0}, cut sound {CutSoundPerM2:0}, closed up wet {LeftWetPerM2:0}, opened and dried {DryingPerM2:0} (own rule, common practice, no source)"),
        FormattableString.Invariant($"minutes a metre of cut: free {FreeCutPerM:0} with a batten behind, over framing {FramingCutPerM:0}; {PiecePerPiece:0} for each piece (own rule)"),
        FormattableString.Invariant($"cut {MarginMm:0} mm beyond the wet; straight cuts on seams, framing and every {GridMm:0} mm between; at most two rectangles to a face (own rule)"),
        FormattableString.Invariant($"nothing is cut on suspicion: not where no reading reaches, nor more than {ReachMm:0} mm from a reading on the board (own rule)"),
    ];
}
