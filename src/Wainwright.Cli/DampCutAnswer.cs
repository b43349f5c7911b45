using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Survey;
using Wainwright.Survey.Damp.Cutting;

namespace Wainwright.Cli;

/// <summary>What to keep, dry and renew, as it is shown.</summary>
internal sealed class DampCutAnswer(CutPlan plan)
{
    public object ForPrograms() => new
    {
        assumed = plan.Assumed,
        caution = CutStakes.Basis.Caution,
        boards = plan.Boards.Select(b => new
        {
            id = b.Sheet.Part.Text,
            name = b.Sheet.Name,
            fate = b.Fate,
            pieces = b.Pieces.Select(p => new { corners = p.Corners.Select(Three), areaM2 = p.AreaM2, cutMm = p.CutMm, runsOn = p.RunsOn }),
            litres = Ends(b.Litres),
            litresOut = Ends(b.LitresOut),
            screws = b.ScrewsUnder.Select(s => new { joint = s.Joint.Text, part = s.Part.Text, fixings = s.Fixings }),
            insulation = b.Under.Select(u => u.Text),
            lines = b.Lines.Select(l => l.Text),
            wrongMinutes = b.WrongMinutes,
            wrongIfKeptMinutes = b.WrongIfKeptMinutes,
            because = b.Because,
        }),
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        at.Out.WriteLine(ink.Strong("what to keep, dry and cut"));
        foreach (var board in plan.Boards)
        {
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{Word(ink, board.Fate)} {board.Sheet.Part} {board.Sheet.Name}: {Litres(board.Litres)} over dry")));
            at.Out.WriteLine(ink.Faint(Shown.Plain($"{"",-13}{board.Because}")));
            foreach (var piece in board.Pieces) at.Out.WriteLine(Shown.Plain($"{"",-13}{Piece(piece)}"));
            if (board.Pieces.Count == 0) continue;
            at.Out.WriteLine(Shown.Plain($"{"",-13}{Litres(board.LitresOut)} leave with it{Behind(board)}"));
        }
        foreach (var assumed in plan.Assumed) at.Out.WriteLine(ink.Faint(Shown.Plain($"taken: {assumed}")));
        at.Out.WriteLine(ink.Faint($"caution: {CutStakes.Basis.Caution}"));
    }

    private static string Piece(CutPiece piece) =>
        string.Create(CultureInfo.InvariantCulture, $"{piece.AreaM2:0.00} m², {piece.CutMm / 1000:0.00} m of cut: {string.Join(" – ", piece.Corners.Select((c, i) => string.Create(CultureInfo.InvariantCulture, $"({c.XMm:0}, {c.YMm:0}, {c.ZMm:0}) {piece.RunsOn[i]}")))}");

    private static string Behind(BoardCut board)
    {
        List<string> said = [];
        if (board.ScrewsUnder.Count > 0) said.Add($"fixings in it: {string.Join(", ", board.ScrewsUnder.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Fixings} of {s.Joint} ({s.Part})")))}");
        if (board.Under.Count > 0) said.Add($"behind it: {string.Join(", ", board.Under)}");
        if (board.Lines.Count > 0) said.Add($"lines near: {string.Join(", ", board.Lines)}");
        return said.Count == 0 ? "" : $"; {string.Join("; ", said)}";
    }

    private static string Litres(Span litres) => string.Create(CultureInfo.InvariantCulture, $"{litres.Likely:0.0} ({litres.Low:0.0}–{litres.High:0.0}) l");

    private static string Word(Ink ink, BoardFate fate) => fate switch
    {
        BoardFate.Keep => ink.Good("keep        "),
        BoardFate.Dry => ink.Doubt("dry         "),
        BoardFate.Replace => ink.Bad("CUT         "),
        _ => ink.Doubt("cannot tell "),
    };

    private static object Ends(Span span) => new { low = span.Low, likely = span.Likely, high = span.High };

    private static double[] Three(Place place) => [place.XMm, place.YMm, place.ZMm];
}
