using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

public class CertificateTests
{
    private readonly Ways ways = new("t0: e f g; e0: a | b; f0: b | c; g0: a | c; a1; b1; c1");

    private Solved Plan => (Solved)ways.Plan("t");

    private IReadOnlyList<string> Faults(Solved plan) => CertificateCheck.Faults(ways.Puzzle, ItemSet.All(7), plan);

    [Fact]
    public void A_cut_that_is_not_true_is_refused()
    {
        var proof = Plan.Proof with { Cuts = [.. Plan.Proof.Cuts, new Cut(ways.Item("a"), ItemSet.Of(7, ways.Item("b")))] };

        Assert.Contains("item 4 can be done without any of 5", Faults(Plan with { Proof = proof }));
    }

    [Fact]
    public void A_cut_left_out_leaves_the_bound_unproved()
    {
        var proof = Plan.Proof with { Cuts = [.. Plan.Proof.Cuts.Where(c => c.Item != ways.Item("g"))] };

        Assert.Contains("a choice cheaper than 2 obeys all cuts", Faults(Plan with { Proof = proof }));
    }

    [Fact]
    public void An_item_called_necessary_that_is_not_is_refused()
    {
        var proof = Plan.Proof with { Necessary = [ways.Item("a")] };

        Assert.Contains("item 4 is called necessary and is not", Faults(Plan with { Proof = proof, Cost = 3 }));
    }

    [Fact]
    public void An_item_left_out_that_might_be_worth_its_price_is_refused()
    {
        var proof = Plan.Proof with { Useful = Plan.Proof.Useful.Without(ways.Item("b")) };

        Assert.Contains("item 5 is left out of the proof and might be worth its price", Faults(Plan with { Proof = proof }));
    }

    [Fact]
    public void An_order_that_does_not_work_is_refused() =>
        Assert.Contains("item 0 cannot be done when it is its turn", Faults(Plan with { Order = [.. Plan.Order.Reverse()] }));

    [Fact]
    public void A_price_that_does_not_add_up_is_refused() =>
        Assert.Contains("the price is not the sum of its items", Faults(Plan with { Cost = 1 }));

    [Fact]
    public void A_bound_above_what_the_cuts_give_is_refused() =>
        Assert.Contains("a choice cheaper than 3 obeys all cuts", Faults(Plan with { LowerBound = 3 }));
}
