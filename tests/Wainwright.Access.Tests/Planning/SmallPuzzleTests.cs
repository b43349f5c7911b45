using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

// The five puzzles were set up for this planner; their optima follow by enumeration, which the last test repeats.
public class SmallPuzzleTests
{
    private const string Choice = "t1: a | b c; a7; b2; c3";
    private const string CircularWait = "t1: a; a2: b; b3: a | d; d10";
    private const string SharedBlocker = "t0: p q; p1: s | u; q1: s | w; s5; u3; w3";
    private const string OddCover = "t0: e f g; e0: a | b; f0: b | c; g0: a | c; a1; b1; c1";
    private const string Locked = "t1: a; a1: t | b; b1: a";

    [Theory]
    [InlineData(Choice, 6, "b c t")]
    [InlineData(CircularWait, 16, "a b d t")]
    [InlineData(SharedBlocker, 7, "p q s t")]
    public void The_cheapest_plan_is_found_proved_and_in_an_order_that_works(string text, long cost, string items)
    {
        var ways = new Ways(text);

        var plan = Assert.IsType<Solved>(ways.Plan("t"));

        Assert.Equal(cost, plan.Cost);
        Assert.True(plan.IsProved);
        Assert.Equal(items, string.Join(' ', ways.Named(plan.Order).Split(' ').Order()));
        Assert.Empty(CertificateCheck.Faults(ways.Puzzle, ItemSet.All(ways.Puzzle.Count), plan));
    }

    [Fact]
    public void An_odd_cover_costs_two_although_its_linear_relaxation_says_one_and_a_half()
    {
        var plan = Assert.IsType<Solved>(new Ways(OddCover).Plan("t"));

        Assert.Equal((2, 2), (plan.Cost, plan.LowerBound));
    }

    [Fact]
    public void Things_that_wait_for_one_another_for_ever_are_proved_unreachable_with_their_walls()
    {
        var ways = new Ways(Locked);

        var answer = Assert.IsType<Unreachable>(ways.Plan("t"));

        Assert.Equal("a", ways.Named(answer.Walls[ways.Item("t")]));
        Assert.Equal("t b", ways.Named(answer.Walls[ways.Item("a")]));
    }

    [Fact]
    public void What_must_stay_in_is_not_touched()
    {
        var ways = new Ways(Choice);
        ItemSet Only(string name) => ItemSet.Of(ways.Puzzle.Count, ways.Item(name));

        var plan = Assert.IsType<Solved>(new Planner(ways.Puzzle).Plan([ways.Item("t")], Only("c"), SearchBudget.Usual, CancellationToken.None));

        Assert.Equal(8, plan.Cost);
        Assert.Empty(CertificateCheck.Faults(ways.Puzzle, ItemSet.All(4).Without(ways.Item("c")), plan));
        Assert.Empty(Assert.IsType<Unreachable>(new Planner(ways.Puzzle).Plan([ways.Item("t")], Only("t"), SearchBudget.Usual, CancellationToken.None)).Walls[0]);
    }

    [Fact]
    public void A_cheap_way_that_can_never_be_gone_is_given_up()
    {
        var plan = Assert.IsType<Solved>(new Ways("t1: a | b; a0: c; c0: d; d0: c; b9").Plan("t"));

        Assert.Equal((10, 10), (plan.Cost, plan.LowerBound));
    }

    [Fact]
    public void Two_targets_share_what_both_need()
    {
        var ways = new Ways("p1: s | u; q1: s | w; s5; u3; w3");

        var plan = Assert.IsType<Solved>(new Planner(ways.Puzzle).Plan([0, 1], null, SearchBudget.Usual, CancellationToken.None));

        Assert.Equal(7, plan.Cost);
    }

    [Theory]
    [InlineData(Choice), InlineData(CircularWait), InlineData(SharedBlocker), InlineData(OddCover), InlineData(Locked)]
    public void Trying_every_subset_gives_the_same(string text)
    {
        var ways = new Ways(text);

        Assert.Equal(BruteForce.Cheapest(ways.Puzzle, [ways.Item("t")]), (ways.Plan("t") as Solved)?.Cost);
    }
}
