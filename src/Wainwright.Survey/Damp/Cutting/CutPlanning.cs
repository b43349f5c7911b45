using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>Decides board by board what to keep, dry and renew, and where to cut, so that the expected cost of being wrong is least.</summary>
public static class CutPlanning
{
    // likely maps drawn for litres, and where the drawing begins: fixed, so that a job gives one answer
    private const int Draws = 200, DrawFrom = 1;

    /// <summary>The plan of a map.</summary>
    /// <param name="map">The map.</param>
    /// <param name="stakes">What being wrong and cutting cost; null for <see cref="CutStakes.Usual"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the stakes leaves its range.</exception>
    public static CutPlan Of(DampMap map, CutStakes? stakes = null)
    {
        ArgumentNullException.ThrowIfNull(map);
        var taken = (stakes ?? CutStakes.Usual).Checked();
        var boards = new BoardCutting(map, taken, new WaterHeld(map, map.Field.Draws(Draws, DrawFrom)));
        var faces = BoardFace.Of(map.Net).ToLookup(f => f.Sheet);
        return new(map, [.. map.Sheets.Select((s, i) => boards.Of(s, [.. faces[i]]))], [.. taken.Said(), "dry density by the words for the wood, from memory, a fifth either way; what a part itself gives goes before it"]);
    }
}

/// <summary>Decides one board.</summary>
internal sealed class BoardCutting(DampMap map, CutStakes stakes, WaterHeld water)
{
    private readonly BehindThePiece behind = new(map.Job);

    // a board of which no more than this stays is taken out whole [share of its area]
    private const double All = 0.999;

    // less doubt than this in what no reading is near is not told [min]; own rule
    private const double MuchMinutes = 15;

    public BoardCut Of(DampSheetMap said, IReadOnlyList<BoardFace> faces)
    {
        var part = map.Job.Parts.First(p => p.Id == said.Sheet.Part);
        var points = map.Readings.Select(r => map.Net.Cells[r.Cell]).Where(c => map.Net.Sheets[c.Sheet].Part == part.Id).Select(c => c.Middle).ToList();
        bool Read(int cell) => map.Field.Ignorance(cell) <= SheetVerdict.NearlyUnknown && points.Exists(p => p.DistanceMm(map.Net.Cells[cell].Middle) <= stakes.ReachMm);
        var chances = faces.SelectMany(f => f.Cells).ToDictionary(c => c, c => new CellChance(map.Field.ProbabilityOver(c, stakes.SpentPercent), map.Field.ProbabilityOver(c, stakes.WetPercent), Read(c)));
        var cutting = faces.Select(f => new FaceCutting(f, map.Net, part, map.Job.Vehicle, c => chances[c], stakes)).ToList();
        var (kept, dried) = (cutting.Sum(f => f.Left(false)), cutting.Sum(f => f.Left(true)));
        var litres = water.Litres(said.Sheet, [.. chances.Keys.Order().Select(c => (c, 1.0))]);
        var unread = Unread(chances);
        BoardCut Whole(BoardFate fate, double wrong, string because) => new(said.Sheet, fate, [], litres, Span.Exactly(0), [], [], [], wrong, kept, because);
        if (said.Advice == DampAdvice.CannotTell) return Whole(BoardFate.CannotTell, Math.Min(kept, dried), said.Because);

        List<(bool Dried, List<FaceCutting.Cut> Cuts)> ways = [.. ((bool[])[false, true]).Select(d => (d, cutting.SelectMany(f => f.Best(d)).ToList()))];
        var (stayDried, cuts) = ways.MinBy(w => (w.Dried ? dried : kept) - w.Cuts.Sum(c => c.Gain));
        var least = (stayDried ? dried : kept) - cuts.Sum(c => c.Gain);
        if (cuts.Count > 0) return Cut(said, cuts, stayDried, least, kept, litres, chances.MaxBy(c => map.Net.Cells[c.Key].AreaMm2 * Math.Min(c.Value.Spent * stakes.KeptRottenPerM2, (1 - c.Value.Spent) * stakes.CutSoundPerM2)).Key, unread);
        // what was read wet is opened and dried, whatever the sums say of a small place. Own rule
        var readWet = said.Advice is DampAdvice.Dry or DampAdvice.CutOrProbe;
        return stayDried || readWet
            ? Whole(BoardFate.Dry, dried, string.Create(CultureInfo.InvariantCulture, $"open and dry it: about {dried:0} min of work at stake, {kept:0} if it were closed up as it is{(dried > kept ? ", but what was read wet is dried" : "")}; no cut pays{unread}"))
            : Whole(BoardFate.Keep, kept, string.Create(CultureInfo.InvariantCulture, $"keep it: about {kept:0} min of work at stake, {dried:0} if it were opened and dried{unread}"));
    }

    /// <summary>Where to measure, when much is in doubt that no reading is near.</summary>
    private string Unread(Dictionary<int, CellChance> chances)
    {
        double Doubt(int c) => map.Net.Cells[c].AreaMm2 * 1e-6 * Math.Min(chances[c].Spent * stakes.KeptRottenPerM2, (1 - chances[c].Spent) * stakes.CutSoundPerM2);
        var unread = chances.Where(c => !c.Value.Read).Select(c => c.Key).ToList();
        if (unread.Sum(Doubt) < MuchMinutes) return "";
        var at = map.Net.Cells[unread.MaxBy(Doubt)].Middle;
        return string.Create(CultureInfo.InvariantCulture, $"; {unread.Sum(c => map.Net.Cells[c].AreaMm2) * 1e-6:0.00} m² of it no reading is near: measure at x {at.XMm:0}, y {at.YMm:0}, z {at.ZMm:0} before it is closed");
    }

    private BoardCut Cut(DampSheetMap said, List<FaceCutting.Cut> cuts, bool dried, double least, double kept, Span litres, int doubted, string unread)
    {
        var (board, at) = (said.Sheet.Part, map.Net.Cells[doubted].Middle);
        List<(int, double)> shares = [.. cuts.SelectMany(c => c.Face.Cells.Select((cell, i) => (cell, Share: c.Face.Boxes[i].Shared(c.Box).AreaMm2 / c.Face.Boxes[i].AreaMm2))).Where(s => s.Share > 0)
            .GroupBy(s => s.cell).Select(g => (g.Key, Math.Min(1, g.Sum(s => s.Share))))];
        var area = cuts.Sum(c => c.Piece.AreaM2);
        var whole = area >= All * said.Sheet.AreaM2;
        var lines = behind.Lines(cuts);
        List<string> because =
        [
            whole ? "all of it goes" : string.Create(CultureInfo.InvariantCulture, $"cut out {area:0.00} of {said.Sheet.AreaM2:0.00} m², {(cuts.Sum(c => c.Piece.CutMm) is > 1 and var mm ? string.Create(CultureInfo.InvariantCulture, $"{mm / 1000:0.0} m to cut") : "along its seams and edges")}; {(dried ? "dry the rest" : "the rest stays")}"),
            string.Create(CultureInfo.InvariantCulture, $"about {least:0} min of work at stake, {kept:0} if all were kept"),
            string.Create(CultureInfo.InvariantCulture, $"before the saw read or prick at x {at.XMm:0}, y {at.YMm:0}, z {at.ZMm:0}, where it is most in doubt, and along the line{unread}"),
        ];
        if (map.Job.Lines.Where(l => lines.Contains(l.Id) && IsDangerous(l)).Select(l => l.Id).ToList() is { Count: > 0 } live)
            because.Add($"{string.Join(", ", live)} within reach of the saw: isolate, prove dead or empty, set the depth");
        // a line with fewer than two points on its way may run anywhere
        if (map.Job.Lines.Where(l => l.Route.Count < 2 && IsDangerous(l)).Select(l => l.Id).ToList() is { Count: > 0 } untraced)
            because.Add($"cannot tell where {string.Join(", ", untraced)} {(untraced.Count == 1 ? "runs" : "run")}: trace before the saw, until then isolate, prove dead or empty");
        if (behind.Unplaced(board) is { Count: > 0 } unplaced) because.Add($"cannot tell whether {string.Join(", ", unplaced)} {(unplaced.Count == 1 ? "lies" : "lie")} in it: find the fixings");
        return new(said.Sheet, BoardFate.Replace, [.. cuts.Select(c => c.Piece)], litres, water.Litres(said.Sheet, shares), behind.Fixings(board, cuts), behind.Insulation(cuts), lines, least, kept, string.Join("; ", because));
    }

    private static bool IsDangerous(Line line) => line.Medium is Medium.Mains or Medium.Gas or Medium.Dc or Medium.Fuel;
}
