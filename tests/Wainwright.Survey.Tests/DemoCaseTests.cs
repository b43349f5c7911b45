namespace Wainwright.Survey.Tests;

/// <summary>Vans of one situation each: the right answer stands in their notes.</summary>
public sealed class DemoCaseTests
{
    [Theory]
    [InlineData("axle-over-its-limit", "axle-load", "rear", Verdict.FallsShort)]
    [InlineData("axle-over-its-limit", "axle-load", "front", Verdict.Holds)]
    [InlineData("axle-within-its-limit", "axle-load", "rear", Verdict.Holds)]
    [InlineData("axle-not-weighed", "axle-load", "rear", Verdict.CannotTell)]
    [InlineData("heater-return-too-small", "heater-circulation-air", "A", Verdict.FallsShort)]
    [InlineData("heater-return-enough", "heater-circulation-air", "A", Verdict.Holds)]
    [InlineData("heater-return-not-measured", "heater-circulation-air", "A", Verdict.CannotTell)]
    [InlineData("outlet-near-sink-unprotected", "mains-outlet-near-water", "B", Verdict.FallsShort)]
    [InlineData("outlet-near-sink-protected", "mains-outlet-near-water", "B", Verdict.Holds)]
    [InlineData("outlet-near-sink-not-traced", "mains-outlet-near-water", "B", Verdict.CannotTell)]
    public void A_situation_gets_its_right_answer(string van, string check, string subject, Verdict verdict) =>
        Assert.Equal(verdict, A.Read("cases", van).Check(check, subject).Verdict);

    [Fact]
    public void The_overlap_names_the_pair_and_the_millimetres() =>
        Assert.Equal([new(new("A"), new("B"), 30)], Overlaps.Of(A.Read("cases", "overlap-in-the-measures")));

    [Fact]
    public void The_rear_axle_is_over_by_sixty_kilograms_though_the_whole_passes()
    {
        var rear = A.Read("cases", "axle-over-its-limit").Check("axle-load", "rear");
        Assert.Equal(60, rear.Demand!.Value.Likely - rear.Capacity!.Value.Likely, tolerance: 1e-9);
        Assert.Equal(Verdict.Holds, A.Read("cases", "axle-over-its-limit").Check("plated-mass").Verdict);
    }

    [Fact]
    public void The_heaters_return_air_is_short_by_what_the_note_says()
    {
        var air = A.Read("cases", "heater-return-too-small").Check("heater-circulation-air");
        Assert.Equal(2_036, air.Demand!.Value.Likely - air.Capacity!.Value.Likely, tolerance: 0.5);
        Assert.Contains("ratio 0.28", air.Because, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("touring-camper")]
    [InlineData("bicycle-workshop")]
    public void The_demonstration_vans_have_no_overlaps(string van) => Assert.Empty(Overlaps.Of(A.Read("demo", van)));

    [Fact]
    public void The_touring_campers_mass_sheet_agrees_with_the_scale() =>
        Assert.Equal(Verdict.Holds, A.Read("demo", "touring-camper").Check("mass-sheet-agrees").Verdict);
}
