using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

public class CertificateTests
{
    private readonly Ways ways = new("t1: a; a2: b; b3: a | d; d10");

    private Solved Plan => (Solved)ways.Plan("t");

    private IReadOnlyList<string> Faults(Solved plan) => CertificateCheck.Faults(ways.Puzzle, ItemSet.All(4), plan);

    [Fact]
    public void A_cut_that_is_not_true_is_refused()
    {
        var proof = Plan.Proof with { Cuts = [.. Plan.Proof.Cuts, new Cut(ways.Item("d"), ItemSet.Of(4, ways.Item("t")))] };

        Assert.Contains("item 3 can be done without any of 0", Faults(Plan with { Proof = proof }));
    }

    [Fact]
    public void A_cut_left_out_leaves_the_bound_unproved()
    {
        var proof = Plan.Proof with { Cuts = [.. Plan.Proof.Cuts.Where(c => !c.OneOf.Has(ways.Item("d")))] };

        Assert.Contains("a choice cheaper than 16 obeys all cuts", Faults(Plan with { Proof = proof }));
    }

    [Fact]
    public void An_order_that_does_not_work_is_refused() =>
        Assert.Contains("item 0 cannot be done when it is its turn", Faults(Plan with { Order = [.. Plan.Order.Reverse()] }));

    [Fact]
    public void A_price_that_does_not_add_up_is_refused() =>
        Assert.Contains("the price is not the sum of its items", Faults(Plan with { Cost = 15 }));

    [Fact]
    public void A_bound_above_what_the_cuts_give_is_refused() =>
        Assert.Contains("a choice cheaper than 17 obeys all cuts", Faults(Plan with { LowerBound = 17 }));
}
