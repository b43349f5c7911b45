using Wainwright.Fitout;

namespace Wainwright.Survey.Tests.Combustion;

public sealed class HeaterTests
{
    static readonly AirHeater Heater = new()
    {
        CombustionAirFrom = AirFrom.Outside,
        CombustionIntakeBoreMm = new(22, 0.5),
        CombustionIntakeNominalMm = 22,
        CirculationInlets = [new() { Name = "hole", DiameterMm = new(65, 0.5) }],
        HotAirOutlets = [new() { Name = "outlet", DiameterMm = new(60, 0.5) }],
        StartVolts = new(12.1, 0.05),
    };

    static Job Van(AirHeater heater) => A.Van(A.Part("heater", heater), A.Part("battery", new Battery { Volts = 12.8 }));

    [Theory]
    [InlineData(AirFrom.Outside, Verdict.Holds)]
    [InlineData(AirFrom.Room, Verdict.FallsShort)]
    [InlineData(AirFrom.NotSeen, Verdict.CannotTell)]
    public void The_burners_own_air_is_a_claim_of_its_own(AirFrom from, Verdict verdict)
    {
        var van = Van(Heater with { CombustionAirFrom = from });
        Assert.Equal(verdict, van.Check("heater-burner-air").Verdict);
        Assert.Equal(Verdict.Holds, van.Check("heater-circulation-air").Verdict);
    }

    [Fact]
    public void A_return_hole_larger_than_the_outlet_holds_by_its_margin()
    {
        var air = Van(Heater).Check("heater-circulation-air");
        Assert.Equal(Verdict.Holds, air.Verdict);
        Assert.Equal(65.0 * 65 / (60 * 60) - 1, air.Margin!.Value.Likely, tolerance: 1e-9);
    }

    [Fact]
    public void A_small_return_hole_falls_short()
    {
        var air = Van(Heater with { CirculationInlets = [new() { Name = "hole", DiameterMm = new(31.75, 0.5) }] }).Check("heater-circulation-air");
        Assert.Equal(Verdict.FallsShort, air.Verdict);
        Assert.NotNull(air.Remedy);
    }

    [Fact]
    public void Holes_add_up_and_a_grille_counts_its_open_part()
    {
        var hole = new Aperture { Name = "slot", WidthMm = new(100, 0.5), HeightMm = new(20, 0.5), Count = 2, OpenFraction = new(0.5, 0.02) };
        var air = Van(Heater with { CirculationInlets = [hole] }).Check("heater-circulation-air");
        Assert.Equal(2_000, air.Capacity!.Value.Likely, tolerance: 1e-9);
        Assert.Equal(Verdict.FallsShort, air.Verdict);
    }

    [Fact]
    public void Nearly_equal_holes_ask_for_a_closer_measurement()
    {
        var air = Van(Heater with { CirculationInlets = [new() { Name = "hole", DiameterMm = 60.2 }] }).Check("heater-circulation-air");
        Assert.Equal(Verdict.CannotTell, air.Verdict);
        Assert.Contains(air.Missing, m => m.StartsWith("measure closer", StringComparison.Ordinal));
    }

    [Fact]
    public void An_outlet_that_nobody_measured_cannot_tell()
    {
        var air = Van(Heater with { HotAirOutlets = [.. Heater.HotAirOutlets, new() { Name = "second" }] }).Check("heater-circulation-air");
        Assert.Equal(Verdict.CannotTell, air.Verdict);
        Assert.Contains(air.Missing, m => m.Contains("“second”", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(22.0, Verdict.Holds)]
    [InlineData(11.0, Verdict.FallsShort)]
    [InlineData(19.8, Verdict.CannotTell)]
    [InlineData(null, Verdict.CannotTell)]
    public void A_crushed_intake_pipe_is_seen(double? boreMm, Verdict verdict) =>
        Assert.Equal(verdict, Van(Heater with { CombustionIntakeBoreMm = boreMm is { } b ? new(b, 0.5) : null }).Check("heater-burner-air-pipe").Verdict);

    [Theory]
    [InlineData(12.1, Verdict.Holds)]
    [InlineData(10.5, Verdict.FallsShort)]
    [InlineData(11.65, Verdict.CannotTell)]
    [InlineData(null, Verdict.CannotTell)]
    public void The_plug_is_measured_while_the_glow_pin_draws(double? volts, Verdict verdict) =>
        Assert.Equal(verdict, Van(Heater with { StartVolts = volts is { } v ? new(v, 0.05) : null }).Check("heater-supply-volts").Verdict);

    [Fact]
    public void Without_a_battery_nobody_knows_what_the_plug_should_have() =>
        Assert.Equal(Verdict.CannotTell, A.Van(A.Part("heater", Heater)).Check("heater-supply-volts").Verdict);
}
