using Wainwright.Survey.Retention;

namespace Wainwright.Survey.Tests.Retention;

/// <summary>Both demonstration vans: what their notes call the hazards comes out as the hazards.</summary>
public sealed class DemoHoldTests
{
    static readonly Lazy<JobHolding> Camper = new(() => Holding.Of(A.Read("demo", "touring-camper"))), Workshop = new(() => Holding.Of(A.Read("demo", "bicycle-workshop")));

    static int Rank(JobHolding van, string part) => van.Parts.Select((p, i) => (p.Part.Id.Text, i)).First(p => p.Text == part).i;

    [Theory, InlineData(true), InlineData(false)]
    public void Every_part_has_a_factor_in_each_direction_or_names_what_to_look_at(bool camper) =>
        Assert.All((camper ? Camper : Workshop).Value.Parts, p =>
        {
            if (p.Verdict == Verdict.CannotTell) Assert.False(string.IsNullOrWhiteSpace(p.NextLook), $"{p.Part.Id}: {p.Because}");
            if (p.Directions.Count > 0) Assert.Equal(26, p.Directions.Count);
            else Assert.Equal(Verdict.CannotTell, p.Verdict);
            Assert.All(p.Directions, d => Assert.True(d.FactorG is not { } g || (g.Low <= g.Likely && g.Likely <= g.High), $"{p.Part.Id} {d.Words}"));
        });

    [Fact]
    public void The_middle_bay_of_the_racking_is_the_first_hazard_of_the_workshop_and_the_front_bay_the_second() =>
        Assert.Equal(["B04", "B03"], Workshop.Value.Parts.Take(2).Select(p => p.Part.Id.Text));

    [Theory, InlineData("B03"), InlineData("B04"), InlineData("B11"), InlineData("B14"), InlineData("B15"), InlineData("B30")]
    public void What_stands_loose_or_walks_in_the_workshop_falls_short(string part) => Assert.Equal(Verdict.FallsShort, Workshop.Value.The(new(part))!.Verdict);

    [Fact]
    public void The_kitchens_upper_locker_ranks_before_every_sound_locker_and_cannot_be_counted_on_in_driving()
    {
        var locker = Camper.Value.The(new("A25"))!;
        Assert.NotEqual(Verdict.Holds, locker.Verdict);
        Assert.All((string[])["A26", "A27", "A28"], sound =>
        {
            Assert.Equal(Verdict.Holds, Camper.Value.The(new(sound))!.Verdict);
            Assert.True(Rank(Camper.Value, "A25") < Rank(Camper.Value, sound));
        });
        Assert.NotEqual(Verdict.Holds, locker.Cases.First(c => c.Case == Fitout.LoadCase.DrivingLightVan).Verdict);
    }

    [Fact]
    public void The_sagging_ceiling_panel_ranks_before_the_sound_ones()
    {
        Assert.NotEqual(Verdict.Holds, Camper.Value.The(new("A10"))!.Verdict);
        Assert.All((string[])["A09", "A11"], sound => Assert.True(Rank(Camper.Value, "A10") < Rank(Camper.Value, sound)));
    }

    [Fact]
    public void The_pull_on_the_loose_bay_is_read_as_one_series_with_the_set_that_stayed()
    {
        var pulls = PulledPart.Of(A.Read("demo", "bicycle-workshop")).ToDictionary(p => p.Part.Id.Text);
        Assert.Equal([0, 100, 200, 300, 0], pulls["B04"].Steps.Select(s => s.ForceN));
        Assert.Equal((4, 1, 0), (pulls["B04"].Test.PermanentSetMm, pulls["B03"].Test.PermanentSetMm, pulls["B05"].Test.PermanentSetMm));
        Assert.Null(pulls["B05"].KeepsAtG);
        Assert.True(pulls["B04"].KeepsAtG!.Value.Likely < pulls["B03"].KeepsAtG!.Value.Likely);
    }
}
