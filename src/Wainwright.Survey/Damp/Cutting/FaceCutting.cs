using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>Chances of one piece of board: past saving, and wet.</summary>
/// <param name="Spent">Chance that it is past saving [0–1].</param>
/// <param name="Wet">Chance that it is wet, past saving counted in [0–1].</param>
/// <param name="Read">A reading reaches it: what nobody read is not cut on suspicion.</param>
internal readonly record struct CellChance(double Spent, double Wet, bool Read = true);

/// <summary>The best pieces of one face, when what stays is kept or dried.</summary>
internal sealed class FaceCutting(BoardFace face, DampNet net, Part part, Vehicle vehicle, Func<int, CellChance> chance, CutStakes stakes)
{
    /// <summary>A piece found: where, what it gains, and what its sides run on.</summary>
    public sealed record Cut(BoardFace Face, FaceBox Box, double Gain, CutPiece Piece);

    // thinner than this it is a covering, not a board [mm]
    private const double CoveringMm = 2;

    /// <summary>Expected minutes of leaving the face whole.</summary>
    public double Left(bool dried) => face.Cells.Sum(c => net.Cells[c].AreaMm2 * (Rot(c) + Stays(c, dried)));

    /// <summary>The pieces to cut; none when nothing gains.</summary>
    public IReadOnlyList<Cut> Best(bool dried)
    {
        if (face.HighMm - face.LowMm < CoveringMm) return [];
        var tiles = face.Cells.Select((c, i) => new CutTable.Tile(face.Boxes[i], Owner(c), Stays(c, dried) - (stakes.CutSoundPerM2 * 1e-6 * (1 - Argues(c))), stakes.KeptRottenPerM2 * 1e-6 * Argues(c))).ToList();
        var pays = tiles.Where(t => t.GainPerMm2 + t.RotPerMm2 > 0).Select(t => t.Box).ToList();
        if (pays.Count == 0) return [];
        var edges = face.Cells.Select((c, i) => (net.Cells[c].Solid, Box: face.Boxes[i])).GroupBy(p => p.Solid).Select(g => Round(g.Select(p => p.Box))).ToList();
        var (u, v) = CutLines.Of(face, edges, CutLines.Framing(face, part.System, vehicle), Round(pays), stakes);
        var table = new CutTable(tiles, u, v, stakes);
        return [.. PieceSearch.Best(table).Select(f => Made(table, f))];
    }

    /// <summary>What a solid belongs to: between two solids of one sheet that is drawn in several boxes there is no seam.</summary>
    private int Owner(int cell) =>
        net.Cells[cell].Solid is var s && part.ComesApartInto.Index().Where(p => part.Solids[s].Name is { } n && p.Item.Solids.Contains(n)).Select(p => (int?)p.Index).FirstOrDefault() is { } piece ? piece : part.ComesApartInto.Count;

    private double Argues(int cell) => chance(cell).Read ? chance(cell).Spent : 0;

    private double Rot(int cell) => stakes.KeptRottenPerM2 * 1e-6 * chance(cell).Spent;

    private double Stays(int cell, bool dried) => 1e-6 * (dried ? stakes.DryingPerM2 : stakes.LeftWetPerM2 * (chance(cell).Wet - chance(cell).Spent));

    private Cut Made(CutTable table, PieceSearch.Found found)
    {
        var (u0, u1, v0, v1) = (table.LinesU[found.U0], table.LinesU[found.U1], table.LinesV[found.V0], table.LinesV[found.V1]);
        var box = new FaceBox(u0.AtMm, v0.AtMm, u1.AtMm, v1.AtMm);
        var cut = table.CutMm(found.U0, found.U1, found.V0, found.V1);
        Place At(double u, double v) => face.At(u, v, vehicle.LoadSpace);
        IReadOnlyList<string> runs = [Side(v0, cut.V0, box.U0, box.U1, face.Extent.V0), Side(u1, cut.U1, box.V0, box.V1, face.Extent.U1), Side(v1, cut.V1, box.U0, box.U1, face.Extent.V1), Side(u0, cut.U0, box.V0, box.V1, face.Extent.U0)];
        var area = face.Boxes.Sum(b => b.Shared(box).AreaMm2) * 1e-6;
        return new(face, box, found.Gain, new([At(box.U0, box.V0), At(box.U1, box.V0), At(box.U1, box.V1), At(box.U0, box.V1)], area, cut.U0 + cut.U1 + cut.V0 + cut.V1, runs));
    }

    private static string Side(CutLine line, double cutMm, double from, double to, double rim) =>
        cutMm <= 0.5 ? Math.Abs(line.AtMm - rim) < 1 ? "edge of the board" : "seam"
            : line.Framing is { } name && from >= line.FromMm - 1 && to <= line.ToMm + 1 ? name : "free cut";

    private static FaceBox Round(IEnumerable<FaceBox> boxes) => boxes.Aggregate((a, b) => new(Math.Min(a.U0, b.U0), Math.Min(a.V0, b.V0), Math.Max(a.U1, b.U1), Math.Max(a.V1, b.V1)));
}
