using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Web.Entry;

namespace Wainwright.Web.Tests.Entry;

public sealed class WrittenDownTests
{
    private static readonly Part Shelf = new()
    {
        Id = new("S"), Name = "shelf", System = PartSystem.Furniture, Known = Known.Measured,
        Solids = [Board("top", 0), Board("leg", 100), Board("foot", 200)],
        ComesApartInto = [new() { Name = "upper", Solids = ["top"], Minutes = 1 }, new() { Name = "lower", Solids = ["leg", "foot"], Minutes = 1 }],
    };

    [Fact]
    public void A_part_in_pieces_is_out_with_the_last_of_them()
    {
        var job = SmallVan.Job with { Parts = [.. SmallVan.Job.Parts, Shelf] };
        Assert.Empty(WrittenDown.Of(job, [Piece("upper")], [], new Dictionary<JointId, string>(), new(2026, 3, 10)));
        Assert.Empty(Leaving.In(job.Parts, [Piece("upper"), Piece("upper")]));
        var edits = WrittenDown.Of(job, [Piece("upper"), Piece("lower")], [], new Dictionary<JointId, string>(), new(2026, 3, 10));
        var stage = Assert.Single(new Change("look", [.. edits]).On(job).Job!.Stages);
        Assert.Equal((StageKind.StripDown, "shelf out"), (stage.Kind, stage.Name));
        Assert.Equal([Shelf.Id], stage.PartsOut);
        Assert.Equal([Shelf.Id], Leaving.In(job.Parts, [Piece("upper"), Piece("lower")]));
    }

    [Fact]
    public void What_belongs_to_no_named_piece_is_one_more()
    {
        var part = Shelf with { ComesApartInto = [Shelf.ComesApartInto[0]] };
        Assert.Empty(Leaving.In([part], [Piece("upper")]));
        Assert.Equal([Shelf.Id], Leaving.In([part], [Piece("upper"), Piece("rest")]));
    }

    [Fact]
    public void Pieces_of_another_part_and_a_load_between_them_change_nothing()
    {
        var job = SmallVan.Job with { Parts = [.. SmallVan.Job.Parts, Shelf] };
        var load = Piece("") with { Kind = StepKind.TakeOut, Part = new("A21"), Piece = null, With = [new("A20")] };
        Assert.Equal([new("A21"), new("A20"), Shelf.Id], Leaving.In(job.Parts, [Piece("upper"), load, Piece("lower")]));
    }

    [Fact]
    public void What_was_out_at_the_last_stage_stays_out_in_the_next()
    {
        var job = SmallVan.Job with
        {
            Parts = [.. SmallVan.Job.Parts, Shelf],
            Stages = [new() { Id = new("ST1"), Name = "worktop out", Kind = StageKind.StripDown, On = new(2026, 3, 9), PartsOut = [new("A21")] }],
        };
        var edits = WrittenDown.Of(job, [Piece("upper"), Piece("lower")], [new("A20")], new Dictionary<JointId, string>(), new(2026, 3, 10));
        Assert.Equal([new("A21"), new("A20"), Shelf.Id], new Change("look", [.. edits]).On(job).Job!.Stages[^1].PartsOut);
    }

    private static BoxSolid Board(string name, double x) => new() { Name = name, At = new(x, 0, 0), Size = new(50, 50, 50) };

    private static RemovalStep Piece(string name) => new()
    {
        Number = 1, Kind = StepKind.TakePiece, Part = Shelf.Id, Piece = name, Action = $"take {name}", OutMinutes = 1, BackMinutes = 1, DamageMinutes = 0,
        Origin = "invented", People = 1, Why = new(null, null, "wanted", true), Path = [], With = [], Cautions = [],
    };
}
