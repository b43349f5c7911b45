using Wainwright.Fitout;
using Wainwright.Methods.Risk;
using Wainwright.Survey.Findings;

namespace Wainwright.Survey.Tests.Findings;

public sealed class FindingsTests
{
    static Finding Found(string id, Severity? severity = null, Likelihood? likelihood = null, Urgency? urgency = null, params Use[] uses) =>
        new() { Id = new(id), What = $"fault {id}", Known = Known.Seen, Severity = severity, Likelihood = likelihood, Urgency = urgency, AppliesTo = uses };

    [Fact]
    public void Risk_is_a_range_from_the_mildest_to_the_worst()
    {
        var finding = Found("F", Severity.Catastrophic, Likelihood.Occasional) with { SeverityAtBest = Severity.Critical, LikelihoodAtLeast = Likelihood.Remote };
        var ranked = Assert.Single(RankedFindings.Of(A.Van() with { Findings = [finding] }));
        Assert.Equal(MilStd882.Level.High, ranked.Worst);
        Assert.Equal(MilStd882.Level.Medium, ranked.Mildest);
    }

    [Fact]
    public void The_worse_comes_first_and_what_nobody_judged_comes_after_high()
    {
        var van = A.Van() with
        {
            Findings = [Found("low", Severity.Negligible, Likelihood.Remote), Found("unjudged"), Found("serious", Severity.Critical, Likelihood.Occasional), Found("high", Severity.Catastrophic, Likelihood.Probable)],
        };
        Assert.Equal(["high", "unjudged", "serious", "low"], RankedFindings.Of(van).Select(r => r.Finding.Id.Text));
    }

    [Fact]
    public void Of_equal_risk_the_more_urgent_comes_first()
    {
        var van = A.Van() with { Findings = [Found("later", Severity.Critical, Likelihood.Remote, Urgency.U3), Found("now", Severity.Critical, Likelihood.Remote, Urgency.U0)] };
        Assert.Equal(["now", "later"], RankedFindings.Of(van).Select(r => r.Finding.Id.Text));
    }

    [Fact]
    public void A_remembered_cell_of_the_matrix_says_so() =>
        Assert.True(Assert.Single(RankedFindings.Of(A.Van() with { Findings = [Found("F", Severity.Marginal, Likelihood.Improbable)] })).FromMemory);

    static UseToday Today(Job job, Use use) => StopUse.Of(job, Checks.All(job, A.Day)).Single(u => u.Use == use);

    [Fact]
    public void A_stop_finding_stops_the_uses_it_names()
    {
        var van = A.Van() with { Findings = [Found("F", urgency: Urgency.U0, uses: Use.Shower)] };
        Assert.True(Today(van, Use.Shower).MustStop);
        Assert.False(Today(van, Use.Gas).MustStop);
    }

    [Fact]
    public void What_stops_driving_stops_driving_loaded() =>
        Assert.True(Today(A.Van() with { Findings = [Found("F", urgency: Urgency.U0, uses: Use.Drive)] }, Use.DriveLoaded).MustStop);

    [Fact]
    public void A_stop_finding_that_names_no_use_stops_all() =>
        Assert.All(StopUse.Of(A.Van() with { Findings = [Found("F", urgency: Urgency.U0)] }, []), u => Assert.True(u.MustStop));

    [Fact]
    public void A_hazard_that_is_gone_stops_nothing() =>
        Assert.All(StopUse.Of(A.Van() with { Findings = [Found("F", Severity.Critical, Likelihood.Eliminated, Urgency.U0)] }, []), u => Assert.False(u.MustStop));

    [Fact]
    public void A_check_that_falls_short_stops_with_its_reason()
    {
        var stop = Assert.Single(Today(A.Van(A.Part("heater", new AirHeater { CombustionAirFrom = AirFrom.Room })), Use.Heater).Stopped);
        Assert.Contains("draws from the room", stop.Why, StringComparison.Ordinal);
        Assert.Equal("heater-burner-air", stop.Check!.Id);
    }

    [Fact]
    public void What_is_not_aboard_needs_no_showing()
    {
        var van = A.Van(A.Part("alarm", new Alarm { Senses = Senses.CarbonMonoxideAndSmoke }));
        Assert.NotEmpty(Today(van, Use.SleepIn).NotShown);
        Assert.Empty(Today(van, Use.Heater).NotShown);
        Assert.Empty(Today(van, Use.Gas).NotShown);
    }

    [Fact]
    public void A_check_that_cannot_tell_is_listed_as_not_shown()
    {
        var heater = Today(A.Van(A.Part("heater", new AirHeater())), Use.Heater);
        Assert.False(heater.MustStop);
        Assert.Contains(heater.NotShown, n => n.Check!.Id == "heater-burner-air");
    }

    [Fact]
    public void The_isolation_sheet_names_what_nobody_isolated_and_what_stays_live()
    {
        var van = A.Van(A.Part("battery", new Battery { Volts = 12 }), A.Part("inlet", new MainsInlet { Volts = 230 }), A.Part("cylinder", new GasStore())) with
        {
            Isolation =
            [
                new() { Id = "1", What = "lead unplugged", Medium = Medium.Mains, DoneAt = new(2026, 2, 1, 8, 0, 0, TimeSpan.Zero) },
                new() { Id = "2", What = "negative off", Medium = Medium.Dc, DoneAt = new(2026, 2, 1, 8, 5, 0, TimeSpan.Zero), Remains = "solar leads live in daylight" },
                new() { Id = "3", What = "cylinder out", Medium = Medium.Gas },
            ],
        };
        var sheet = IsolationSheet.Of(van);
        Assert.Equal([Medium.Gas], sheet.NotIsolated);
        Assert.Equal(["3"], sheet.ToDo.Select(s => s.Id));
        Assert.Equal(["solar leads live in daylight"], sheet.StaysLive);
    }
}
