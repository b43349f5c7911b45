using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Service;

/// <summary>What it costs a year to get at all that asks for service.</summary>
public class UpkeepTests
{
    internal static Job Serving(Job job, params (string Part, double EveryMonths, ServiceAccess How)[] needs) => job with
    {
        Parts = [.. job.Parts.Select(p => p with
        {
            Service = [.. needs.Where(n => n.Part == p.Id.Text).Select(n => new ServiceNeed { What = "look after it", EveryMonths = n.EveryMonths, Access = n.How })],
        })],
    };

    [Fact]
    public void A_year_is_the_sum_of_how_often_times_how_long_each_visit_a_proved_plan()
    {
        var job = Serving(Case("shared-blocker-paid-once"), ("P", 6, ServiceAccess.Remove), ("Q", 24, ServiceAccess.Remove));
        var (p, q) = (RemovalPlanner.Remove(job, Parts("P")), RemovalPlanner.Remove(job, Parts("Q")));

        var upkeep = UpkeepRound.Of(job);

        Assert.Equal(["P", "Q"], upkeep.Parts.Select(x => x.Part.Text).Order());
        Assert.All(upkeep.Visits, v => Assert.Equal(Sureness.Proved, v.Minutes.Sureness));
        Assert.Equal((2 * p.TotalMinutes + 0.5 * q.TotalMinutes) / 60, upkeep.HoursPerYear, 1e-9);
        Assert.Equal(upkeep.HoursPerYear, upkeep.LowHoursPerYear, 1e-9);
        Assert.Equal((2 * p.TotalMinutes + 0.5 * q.TotalMinutes) / 2.5, upkeep.MeanMinutes!.Value, 1e-9);
        Assert.True(upkeep.IsWhole);
        Assert.Empty(upkeep.Open);
    }

    [Fact]
    public void What_passes_no_door_is_unreachable_and_its_visit_stays_open_instead_of_free()
    {
        var upkeep = UpkeepRound.Of(Serving(Case("stuck-by-one-millimetre"), ("A", 12, ServiceAccess.Remove)));

        var visit = Assert.Single(upkeep.Open);
        Assert.Equal(Sureness.Unreachable, visit.Minutes.Sureness);
        Assert.Null(visit.Minutes.HighMinutes);
        Assert.Contains("1 mm too large for rear door", visit.Minutes.Because, StringComparison.Ordinal);
        Assert.Null(upkeep.MeanMinutes);
    }

    [Fact]
    public void Measures_that_contradict_one_another_and_parts_without_measures_cannot_be_told()
    {
        var overlap = UpkeepRound.Of(Serving(Case("overlap-in-the-measures"), ("A", 12, ServiceAccess.Remove)));
        Assert.Equal(Sureness.CannotTell, Assert.Single(overlap.Open).Minutes.Sureness);

        var blank = Case("shared-blocker-paid-once");
        blank = Serving(blank with { Parts = [.. blank.Parts.Select(p => p.Id.Text == "P" ? p with { Solids = [] } : p)] }, ("P", 12, ServiceAccess.Reach));
        var visit = Assert.Single(UpkeepRound.Of(blank).Open);
        Assert.Equal(Sureness.CannotTell, visit.Minutes.Sureness);
        Assert.Contains("measure it", visit.Minutes.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Stopped_before_it_began_it_says_that_nothing_was_asked()
    {
        var upkeep = UpkeepRound.Of(Serving(Case("shared-blocker-paid-once"), ("P", 6, ServiceAccess.Remove)), new() { Stop = new(canceled: true) });

        Assert.False(upkeep.IsWhole);
        Assert.Equal((0, 3), (upkeep.Done, upkeep.Total));
        Assert.All(upkeep.Visits, v => Assert.Equal(Sureness.NotAsked, v.Minutes.Sureness));
    }

    [Fact]
    public void Progress_counts_every_question()
    {
        var told = new Told();
        var upkeep = UpkeepRound.Of(Serving(Case("shared-blocker-paid-once"), ("P", 6, ServiceAccess.Remove), ("Q", 6, ServiceAccess.Reach)), progress: told);

        Assert.Equal(Enumerable.Range(1, 6), told.Heard.Select(p => p.Done));
        Assert.Equal(6, upkeep.Total);
    }

    private sealed class Told : IProgress<AccessProgress>
    {
        public List<AccessProgress> Heard { get; } = [];

        public void Report(AccessProgress value) => Heard.Add(value);
    }
}
