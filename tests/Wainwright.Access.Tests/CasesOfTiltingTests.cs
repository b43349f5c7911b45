namespace Wainwright.Access.Tests;

/// <summary>Small vans in which it matters whether a thing may be tilted, and how much ground is clear outside.</summary>
public class CasesOfTiltingTests
{
    private const string Tank = "tank-tilts-out-of-the-side-door", Crate = "door-too-small-by-32-mm", Boiler = "boiler-thicker-than-every-door", Wall = "landing-blocked-by-a-wall";

    [Fact]
    public void A_tank_taller_than_the_door_comes_out_tilted()
    {
        var step = Plan(Tank, "A").Steps[^1];

        Assert.Equal("sliding door", step.Through);
        Assert.Contains(step.Path, p => p.Turned is { W: < 0.999 });
        Assert.All(step.Path, p => Assert.Empty(p.QuarterTurnsAbout));
        Assert.Contains(step.Cautions, c => c.StartsWith("Goes tilted", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_tilting_the_same_tank_is_proved_to_be_stuck()
    {
        var plan = Plan(Tank, "A", Tilting.Off);

        Assert.Equal(Proof.ProvedUnreachable, plan.Proof);
        Assert.Null(Assert.Single(plan.HeldForGood).Tilt);
    }

    [Fact]
    public void The_plan_with_a_tilted_load_holds_against_its_proof_and_the_replay()
    {
        var planner = new RemovalPlanner(Demo.Case(Tank));
        var plan = planner.Remove(Demo.Parts("A"));

        Assert.Empty(planner.ProofFaults(Demo.Parts("A")));
        Assert.Empty(planner.Audit(plan).Faults);
    }

    [Theory]
    [InlineData(Crate, 632, "rear door", 32)]
    [InlineData(Boiler, 640, "rear door", 50)]
    [InlineData("stuck-by-one-millimetre", 701, "rear door", 1)]
    public void What_is_thicker_than_every_door_every_way_is_proved_to_pass_none_at_any_angle(string name, double ballMm, string opening, int shortMm)
    {
        var plan = Plan(name, "A");

        Assert.Equal(Proof.ProvedUnreachable, plan.Proof);
        Assert.Null(plan.Bracket);
        var tilt = Assert.Single(plan.HeldForGood).Tilt!;
        Assert.True(tilt.IsImpossible);
        Assert.Equal((ballMm, opening, shortMm, 0), (tilt.BallMm!.Value, tilt.NearestOpening, tilt.ShortMm!.Value, tilt.Tries));
    }

    [Theory]
    [InlineData(Boiler, 635, 45)]
    [InlineData("stuck-by-one-millimetre", null, null)]
    public void Where_nobody_gave_a_tolerance_the_ball_is_smaller_by_what_a_tape_is_good_to(string name, int? ballMm, int? shortMm)
    {
        var job = Demo.Case(name);
        job = job with { Parts = [.. job.Parts.Select(p => p with { Solids = [.. p.Solids.Select(s => s with { PlusMinusMm = null })] })] };

        var tilt = Assert.Single(RemovalPlanner.Remove(job, Demo.Parts("A")).HeldForGood).Tilt!;

        Assert.Equal((ballMm is not null, (double?)ballMm, shortMm), (tilt.IsImpossible, tilt.BallMm, tilt.ShortMm));
    }

    [Fact]
    public void A_door_that_may_be_wider_than_the_tape_said_proves_nothing_against_what_would_then_pass()
    {
        var job = Demo.Case(Crate);
        var doubtful = job with { Vehicle = job.Vehicle with { Openings = [.. job.Vehicle.Openings.Select(o => o with { WidthMm = new(600, 40) })] } };

        var held = Assert.Single(RemovalPlanner.Remove(doubtful, Demo.Parts("A")).HeldForGood);

        Assert.False(held.Tilt!.IsImpossible);
        Assert.True(held.Tilt.Tries > 0);
        Assert.Contains("proves nothing", held.Tilt.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Before_a_garage_wall_the_answer_says_how_much_more_ground_it_takes()
    {
        var held = Assert.Single(Plan(Wall, "A").HeldForGood);

        Assert.Equal(new LandingShort("rear door", 100), held.Landing);
    }

    [Fact]
    public void With_the_van_driven_forward_the_same_cabinet_leaves()
    {
        var job = Demo.Case(Wall);
        var free = job with { Vehicle = job.Vehicle with { Openings = [.. job.Vehicle.Openings.Select(o => o with { LandingMm = null })] } };

        Assert.Equal("A", CasesFiles.WhatComesOut(RemovalPlanner.Remove(free, Demo.Parts("A"))));
    }

    [Fact]
    public void A_rack_outside_before_the_door_comes_off_first_and_not_by_a_door()
    {
        var steps = Plan("rack-before-the-rear-door", "A").Steps;

        Assert.Equal(["R", "A"], steps.Select(s => s.Part?.Text));
        Assert.Equal([null, "rear door"], steps.Select(s => s.Through));
    }

    [Fact]
    public void Loose_goods_and_what_folds_make_no_part_unreachable()
    {
        var planner = new RemovalPlanner(Demo.Case("loose-goods-and-mattress-never-block"));

        Assert.All(Demo.Case("loose-goods-and-mattress-never-block").Parts, part => Assert.Equal(Proof.ProvedCheapest, planner.Remove([part.Id]).Proof));
    }

    private static RemovalPlan Plan(string name, string wanted, Tilting? tilting = null) =>
        RemovalPlanner.Remove(Demo.Case(name), Demo.Parts(wanted), new AccessOptions { Tilting = tilting ?? Tilting.Usual });
}
