using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>What becomes of a board or a piece of it.</summary>
public enum BoardFate
{
    /// <summary>It stays as it is.</summary>
    Keep,

    /// <summary>It stays and is dried.</summary>
    Dry,

    /// <summary>It comes out and is renewed.</summary>
    Replace,

    /// <summary>Too little read to say.</summary>
    CannotTell,
}

/// <summary>A piece to cut out of a board.</summary>
/// <param name="Corners">Its corners on the face of the board, in order round it [mm]; the cut runs on seams, framing or straight across.</param>
/// <param name="AreaM2">Its area [m²].</param>
/// <param name="CutMm">Length to cut; edges on a seam or the board's own rim not counted [mm].</param>
/// <param name="RunsOn">What each side runs on, in words, in the order of the corners: <c>seam</c>, <c>edge of the board</c>, <c>bow 3</c>, <c>free cut</c>; the first side joins the first two corners.</param>
public sealed record CutPiece(IReadOnlyList<Place> Corners, double AreaM2, double CutMm, IReadOnlyList<string> RunsOn);

/// <summary>What to do with one board.</summary>
/// <param name="Sheet">The board.</param>
/// <param name="Fate">What becomes of it.</param>
/// <param name="Pieces">What to cut out; none unless it is renewed in part; one for each face with all its area when all of it goes.</param>
/// <param name="Litres">Water over the dry board that is in it [l].</param>
/// <param name="LitresOut">Water that leaves with the pieces [l].</param>
/// <param name="ScrewsUnder">Fixings of other parts inside the pieces, by joint, with their count.</param>
/// <param name="Under">Insulation behind or under the pieces.</param>
/// <param name="Lines">Lines within reach of a saw behind or before the pieces, as far as their routes are known.</param>
/// <param name="WrongMinutes">Expected cost of this, in minutes of work: of being wrong, of drying and of the cut.</param>
/// <param name="WrongIfKeptMinutes">The same if all of it were kept.</param>
/// <param name="Because">Why, in words.</param>
public sealed record BoardCut(
    DampSheet Sheet, BoardFate Fate, IReadOnlyList<CutPiece> Pieces, Span Litres, Span LitresOut, IReadOnlyList<(JointId Joint, PartId Part, int Fixings)> ScrewsUnder,
    IReadOnlyList<PartId> Under, IReadOnlyList<LineId> Lines, double WrongMinutes, double WrongIfKeptMinutes, string Because);

/// <summary>What to keep, dry and renew.</summary>
/// <param name="Map">The map it rests on.</param>
/// <param name="Boards">Board by board, in the order of the map.</param>
/// <param name="Assumed">Costs, margins and rules taken, one line each.</param>
public sealed record CutPlan(DampMap Map, IReadOnlyList<BoardCut> Boards, IReadOnlyList<string> Assumed);
