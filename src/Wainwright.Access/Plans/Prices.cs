using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Prices of a scene's items under an objective, in whole numbers: what is sought first, tenths of a second of labour after it.</summary>
internal sealed class Prices
{
    // a part's pieces share its count in whole numbers up to this many
    private const long SharesOfAPart = 60;

    private readonly Objective objective;
    private readonly long one;

    public Prices(Scene scene, Objective objective)
    {
        this.objective = objective;
        var labour = scene.Items.Select(i => i.Price.Tenths).ToList();
        one = objective == Objective.LeastLabour ? 0 : labour.Sum() + 1;
        Costs = [.. scene.Items.Select((item, i) => First(item) * one + labour[i])];
    }

    /// <summary>Price of each item.</summary>
    public IReadOnlyList<long> Costs { get; }

    /// <summary>What a price says of what is sought.</summary>
    /// <param name="price">A price or a lower bound.</param>
    public double Of(long price) => objective switch
    {
        Objective.LeastLabour => price / TenthsOfASecond.InAMinute,
        Objective.FewestPartsOut => (double)(price / one) / SharesOfAPart,
        _ => price / one / 10.0,
    };

    private long First(Item item) => (objective, item) switch
    {
        (Objective.FewestPartsOut, TakeOut load) => SharesOfAPart * load.Load.Count(),
        (Objective.FewestPartsOut, TakePiece piece) => (SharesOfAPart + Pieces(piece.Part) - 1) / Pieces(piece.Part),
        // tenths of a minute are finer than any guess of damage
        (Objective.LeastDestroyed, _) => (long)Math.Round(item.Price.Damage * 10),
        _ => 0,
    };

    private static int Pieces(Part part) => part.Solids.GroupBy(s => part.ComesApartInto.FirstOrDefault(p => s.Name is { } n && p.Solids.Contains(n))?.Name).Count();
}
