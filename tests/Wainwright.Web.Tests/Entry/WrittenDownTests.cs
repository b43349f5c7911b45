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
        Assert.Single(WrittenDown.Of(job, [Piece("upper"), Piece("lower")], [], new Dictionary<JointId, string>(), new(2026, 3, 10)));
        Assert.Equal([Shelf.Id], Leaving.In(job.Parts, [Piece("upper"), Piece("lower")]));
    }

    [Fact]
    public void What_belongs_to_no_named_piece_is_one_more()
    {
        var part = Shelf with { ComesApartInto = [Shelf.ComesApartInto[0]] };
        Assert.Empty(Leaving.In([part], [Piece("upper")]));
        Assert.Equal([Shelf.Id], Leaving.In([part], [Piece("upper"), Piece("rest")]));
    }

    private static BoxSolid Board(string name, double x) => new() { Name = name, At = new(x, 0, 0), Size = new(50, 50, 50) };

    private static RemovalStep Piece(string name) => new()
    {
        Number = 1, Kind = StepKind.TakePiece, Part = Shelf.Id, Piece = name, Action = $"take {name}", OutMinutes = 1, BackMinutes = 1, DamageMinutes = 0,
        Origin = "invented", People = 1, Why = new(null, null, "wanted", true), Path = [], With = [], Cautions = [],
    };
}
