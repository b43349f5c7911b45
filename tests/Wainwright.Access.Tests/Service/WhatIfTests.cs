using Wainwright.Access.Tests.Crew;
using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Service;

/// <summary>Changes are planned, never guessed: the van after a change is asked the same questions again.</summary>
public class WhatIfTests
{
    private static readonly Upkeep AsBuilt = UpkeepRound.Of(Workshop);

    private static readonly WhatIfs Changes = WhatIfRanking.Of(Workshop, AsBuilt);

    [Fact]
    public void What_a_change_saves_is_what_the_changed_van_asked_afresh_costs_less()
    {
        Assert.NotEmpty(Changes.Ranked);
        foreach (var change in Changes.Ranked)
        {
            var made = change.Change.On(Workshop);
            Assert.NotNull(made.Job);
            var after = UpkeepRound.Of(made.Job);
            Assert.Equal(AsBuilt.HoursPerYear * 60 - change.SavedMinutesPerYear, after.HoursPerYear * 60, 0.01);
            Assert.True(change.IsProved);
        }
    }

    [Fact]
    public void The_best_comes_first_and_says_for_whom()
    {
        Assert.Equal(Changes.Ranked.Select(c => c.SavedMinutesPerYear).OrderDescending(), Changes.Ranked.Select(c => c.SavedMinutesPerYear));
        Assert.Equal(Enumerable.Range(1, Changes.Ranked.Count), Changes.Ranked.Select(c => c.Number));
        Assert.All(Changes.Ranked, c => Assert.Equal(c.SavedMinutesPerYear, c.Gains.Sum(g => g.SavedMinutesPerYear), 1e-9));
        // the batteries stand behind the parts washer; a hatch in a board beside them spares taking it out
        Assert.Equal(WhatIfKind.Hatch, Changes.Ranked[0].Kind);
        Assert.Contains(Changes.Ranked[0].Gains, g => g.Visit.Part == new PartId("B14") && g.NowMinutes < g.WasMinutes);
    }

    [Fact]
    public void What_was_not_planned_is_counted_with_its_bound()
    {
        var one = WhatIfRanking.Of(Workshop, AsBuilt, most: 1, looks: 1);
        Assert.Equal(1, one.Planned);
        Assert.True(one.Thought > 1);
        Assert.True(one.RestSavesAtMost >= Changes.Ranked.Skip(1).Max(c => c.SavedMinutesPerYear));
    }

    [Fact]
    public void Where_nothing_was_asked_no_change_is_thought_of()
    {
        var upkeep = UpkeepRound.Of(Workshop, new() { Stop = new(canceled: true) });

        Assert.Equal((0, 0), (WhatIfRanking.Of(Workshop, upkeep).Thought, WhatIfRanking.Of(Workshop, upkeep).Ranked.Count));
    }

    [Fact]
    public void Bolts_that_are_undone_at_every_visit_are_worth_knobs() =>
        Assert.Contains(Changes.Ranked, c => c.Kind == WhatIfKind.ByHand && c.Gains.Any(g => g.Visit.Part == new PartId("B13")) && c.Heed.Contains("crash", StringComparison.Ordinal));

    [Fact]
    public void A_part_stuck_by_a_few_millimetres_gets_a_way_where_a_strip_is_cut_off_what_holds_it()
    {
        // a crate 500 wide between two fixed boards that stand 490 apart and never leave
        var crate = CrewVan.Box("C", 300, 700, 0, 500, 500, 500);
        var left = CrewVan.Box("L", 1000, 0, 0, 200, 700, 1995);
        var right = CrewVan.Box("R", 1000, 1190, 0, 200, 810, 1995);
        var job = CrewVan.With([crate, left, right], []);
        job = UpkeepTests.Serving(job with { Vehicle = job.Vehicle with { Openings = [job.Vehicle.Openings[0] with { WidthMm = 600, FromMm = 650, HeightMm = 600 }] } }, ("C", 12, ServiceAccess.Remove));
        var upkeep = UpkeepRound.Of(job);
        Assert.Equal(Sureness.Unreachable, Assert.Single(upkeep.Open).Minutes.Sureness);

        var best = WhatIfRanking.Of(job, upkeep).Ranked[0];

        Assert.Equal(WhatIfKind.CutBack, best.Kind);
        Assert.Null(Assert.Single(best.Gains).WasMinutes);
        Assert.Empty(UpkeepRound.Of(best.Change.On(job).Job!).Open);
    }

    [Fact]
    public void Asked_twice_it_answers_alike() =>
        Assert.Equal(Changes.Ranked.Select(c => c.What), WhatIfRanking.Of(Workshop, UpkeepRound.Of(Workshop)).Ranked.Select(c => c.What));
}
