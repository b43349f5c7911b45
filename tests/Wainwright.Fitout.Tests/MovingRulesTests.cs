namespace Wainwright.Fitout.Tests;

public sealed class MovingRulesTests
{
    static IReadOnlyList<Issue> With(params MovingThing[] moving)
    {
        var small = Samples.Small();
        return JobRules.Of(small with { Parts = [small.Parts[0] with { Moving = moving }, small.Parts[1]] });
    }

    static MovingThing Drawer(string name) => new() { Name = name, Kind = MovingKind.Drawer, Opens = Direction.Right };

    [Fact]
    public void Two_drawers_of_different_names_are_clean() => Assert.Empty(With(Drawer("top"), Drawer("bottom")));

    [Fact]
    public void Two_drawers_of_one_name_are_refused() => Assert.Contains("“top”", Assert.Single(With(Drawer("top"), Drawer("top"))).Rule, StringComparison.Ordinal);

    [Fact]
    public void A_drawer_has_no_hinge() => Assert.Contains("slides", Assert.Single(With(Drawer("top") with { Hinge = new(0, 0, 0) })).Rule, StringComparison.Ordinal);

    [Fact]
    public void Nothing_that_keeps_it_shut_with_a_force_is_a_contradiction() =>
        Assert.Contains("yet a force", Assert.Single(With(Drawer("top") with { KeptShutBy = "nothing", HoldsN = 20 })).Rule, StringComparison.Ordinal);

    [Fact]
    public void Gas_springs_without_a_hinge_are_a_doubt()
    {
        var lid = new MovingThing { Name = "lid", Kind = MovingKind.Lid, Opens = Direction.Up, Springs = new() { Count = 2, FixedAt = new(0, 0, 0), MovingAt = new(300, 0, 0) } };
        Assert.Equal(Weight.Doubt, Assert.Single(With(lid)).Weight);
        Assert.Empty(With(lid with { Hinge = new(0, 0, 400) }));
    }

    [Fact]
    public void A_load_case_named_twice_is_refused() =>
        Assert.Contains("twice", Assert.Single(JobRules.Of(Samples.Small() with { JudgedAgainst = [LoadCase.NineThreeCab, LoadCase.NineThreeCab] })).Rule, StringComparison.Ordinal);

    [Fact]
    public void A_movement_names_a_force_and_nothing_else()
    {
        static Reading Taken(string id, Quantity quantity, string unit, string? under = null) => new()
        {
            Id = new(id), Quantity = quantity, Value = 3, Unit = unit, Part = new("P1"), UnderForce = under is null ? null : new ReadingId(under), TakenAt = new(2026, 3, 2, 10, 0, 0, TimeSpan.Zero),
        };
        IReadOnlyList<Issue> Rules(params Reading[] readings) => JobRules.Of(Samples.Small() with { Readings = [.. Samples.Small().Readings, .. readings] });

        Assert.Empty(Rules(Taken("F", Quantity.Force, "N"), Taken("S", Quantity.Length, "mm", "F")));
        Assert.Contains("not a force", Assert.Single(Rules(Taken("T", Quantity.Torque, "Nm"), Taken("S", Quantity.Length, "mm", "T"))).Rule, StringComparison.Ordinal);
        Assert.Contains("for a movement", Assert.Single(Rules(Taken("F", Quantity.Force, "N"), Taken("G", Quantity.Force, "N", "F"))).Rule, StringComparison.Ordinal);
        Assert.Contains("not in the job", Assert.Single(Rules(Taken("S", Quantity.Length, "mm", "F"))).Rule, StringComparison.Ordinal);
        Assert.Contains("is for a force", Assert.Single(Rules(Taken("S", Quantity.Length, "mm") with { Toward = Direction.Forward })).Rule, StringComparison.Ordinal);
    }
}
