using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;

namespace Wainwright.Survey.Tests.Damp.Cutting;

/// <summary>One board of 1 m by 1 m with rot right across it from x 400 to 600, reckoned by hand.</summary>
public sealed class FaceCuttingTests
{
    static readonly CutStakes Stakes = new(PiecePerPiece: 20, LeftWetPerM2: 0);

    static Part Board() => A.Part("B").At(0, 0, 18, 1000, 1000, 12) with { System = PartSystem.Floor, Made = [new() { Material = "birch ply" }] };

    static Frame Member(double x) => new() { Name = $"member {x}", Kind = FrameKind.FloorMember, XMm = x, Known = Known.Seen };

    static (FaceCutting Face, DampNet Net) Of(Part board, Func<DampCell, bool> rotten, CutStakes? stakes = null, params IReadOnlyList<Frame> frames)
    {
        var job = A.Van(board);
        job = job with { Vehicle = job.Vehicle with { Frames = frames } };
        var net = DampNet.Of(job)!;
        var spent = net.Cells.Select(c => new CellChance(rotten(c) ? 1 : 0, rotten(c) ? 1 : 0)).ToList();
        return (new(Assert.Single(BoardFace.Of(net)), net, board, job.Vehicle, c => spent[c], stakes ?? Stakes), net);
    }

    static bool Band(DampCell cell) => cell.Middle.XMm is > 400 and < 600;

    [Fact]
    public void A_strip_goes_out_a_margin_beyond_the_rot_from_edge_to_edge()
    {
        var (face, _) = Of(Board(), Band);
        Assert.Equal(120, face.Left(dried: false), tolerance: 1e-9);
        var cut = Assert.Single(face.Best(dried: false));
        Assert.Equal(new(300, 0, 700, 1000), cut.Box);
        // rot 0.2 m² · 600 = 120; sound board 0.2 m² · 200 = 40; two cuts of 1 m · 25 = 50; the piece 20
        Assert.Equal(120 - 40 - 50 - 20, cut.Gain, tolerance: 1e-9);
        Assert.Equal(0.4, cut.Piece.AreaM2, tolerance: 1e-9);
        Assert.Equal(2000, cut.Piece.CutMm, tolerance: 1e-6);
        Assert.Equal(["edge of the board", "free cut", "edge of the board", "free cut"], cut.Piece.RunsOn);
        Assert.Equal([new Place(300, 0, 30), new Place(700, 0, 30), new Place(700, 1000, 30), new Place(300, 1000, 30)], cut.Piece.Corners);
    }

    [Fact]
    public void Framing_near_by_draws_the_cut_to_it()
    {
        var cut = Assert.Single(Of(Board(), Band, null, Member(720)).Face.Best(dried: false));
        // 20 mm more of sound board, 0.02 m² · 200 = 4, against 15 saved on the cut
        Assert.Equal(720, cut.Box.U1);
        Assert.Equal(120 - 44 - 25 - 10 - 20, cut.Gain, tolerance: 1e-9);
        Assert.Equal("member 720", cut.Piece.RunsOn[1]);
    }

    [Fact]
    public void At_a_seam_nothing_is_cut_and_no_margin_is_lost()
    {
        var board = A.Part("B") with
        {
            System = PartSystem.Floor,
            Made = [new() { Material = "birch ply" }],
            Solids = [new BoxSolid { Name = "front", At = new(0, 0, 18), Size = new(600, 1000, 12) }, new BoxSolid { Name = "rear", At = new(600, 0, 18), Size = new(400, 1000, 12) }],
            ComesApartInto = [new() { Name = "front", Solids = ["front"], Minutes = 1 }, new() { Name = "rear", Solids = ["rear"], Minutes = 1 }],
        };
        var cut = Assert.Single(Of(board, Band).Face.Best(dried: false));
        Assert.Equal(new(300, 0, 600, 1000), cut.Box);
        Assert.Equal(120 - 20 - 25 - 20, cut.Gain, tolerance: 1e-9);
        Assert.Equal("seam", cut.Piece.RunsOn[1]);
    }

    [Fact]
    public void Two_solids_of_one_sheet_have_no_seam_between_them()
    {
        var board = Board() with { Solids = [new BoxSolid { At = new(0, 0, 18), Size = new(600, 1000, 12) }, new BoxSolid { At = new(600, 0, 18), Size = new(400, 1000, 12) }] };
        Assert.Equal(new(300, 0, 700, 1000), Assert.Single(Of(board, Band).Face.Best(dried: false)).Box);
    }

    [Fact]
    public void Two_places_far_apart_are_two_pieces()
    {
        // 0.02 m² of rot in two corners, worth 12 min each at 600: raised so that it pays
        var dear = Stakes with { KeptRottenPerM2 = 6000 };
        var cuts = Of(Board(), c => c.Middle is { XMm: < 200, YMm: < 100 } or { XMm: > 800, YMm: > 900 }, dear).Face.Best(dried: false);
        Assert.Equal(2, cuts.Count);
        Assert.Equal(new(0, 0, 300, 200), cuts.MinBy(c => c.Box.U0)!.Box);
        // rot 120; sound 0.04 m² · 200 = 8; cut 0.2 + 0.3 m · 25 = 12.5; the piece 20
        Assert.All(cuts, c => Assert.Equal(120 - 8 - 12.5 - 20, c.Gain, tolerance: 1e-9));
    }

    [Fact]
    public void What_nobody_read_is_not_cut_on_suspicion()
    {
        var job = A.Van(Board());
        var net = DampNet.Of(job)!;
        FaceCutting Face(bool read) => new(BoardFace.Of(net)[0], net, job.Parts[0], job.Vehicle, c => new(Band(net.Cells[c]) ? 1 : 0, 1, read), Stakes);
        Assert.NotEmpty(Face(true).Best(dried: true));
        Assert.Empty(Face(false).Best(dried: true));
    }

    [Fact]
    public void Dearer_stakes_never_make_the_decision_cheaper_and_more_lines_never_dearer()
    {
        for (var start = 0; start < 12; start++)
        {
            var chance = new Random(start);
            var (x, y, r) = (chance.Next(200, 800), chance.Next(200, 800), chance.Next(100, 400));
            bool Rotten(DampCell c) => Math.Abs(c.Middle.XMm - x) < r && Math.Abs(c.Middle.YMm - y) < r / 2;
            double Least(CutStakes stakes, params IReadOnlyList<Frame> frames)
            {
                var face = Of(Board(), Rotten, stakes, frames).Face;
                return face.Left(true) - face.Best(true).Sum(c => c.Gain);
            }
            var usual = Least(Stakes);
            Assert.True(Least(Stakes with { FreeCutPerM = 40 }) >= usual - 1e-9);
            Assert.True(Least(Stakes with { KeptRottenPerM2 = 900 }) >= usual - 1e-9);
            Assert.True(Least(Stakes with { CutSoundPerM2 = 300 }) >= usual - 1e-9);
            Assert.True(Least(Stakes with { MarginMm = 150 }) >= usual - 1e-9);
            Assert.True(Least(Stakes, Member(chance.Next(100, 900)), Member(chance.Next(100, 900))) <= usual + 1e-9);
        }
    }
}
