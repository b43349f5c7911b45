using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention;

public sealed class LoadCasesTests
{
    public static TheoryData<string> Ids => [.. LoadCases.Choices.Concat(PublishedCases.All).Select(c => c.Id)];

    static AccelerationCase Case(string id) => LoadCases.Choices.Concat(PublishedCases.All).Single(c => c.Id == id);

    [Theory, MemberData(nameof(Ids))]
    public void Every_case_says_what_it_proves_what_not_and_where_it_comes_from(string id)
    {
        var found = Case(id);
        Assert.NotEmpty(found.Source);
        Assert.NotEmpty(found.Proves);
        Assert.NotEmpty(found.DoesNotProve);
        Assert.NotEqual(Provenance.NotStated, found.How);
        Assert.Contains((double?[])[found.ForwardG, found.RearwardG, found.SidewaysG, found.UpG], g => g > 0);
    }

    [Fact]
    public void Seats_belts_and_gas_are_said_to_be_out_of_scope() => Assert.Contains("Seats, belts", LoadCases.Basis.Caution, StringComparison.Ordinal);

    [Fact]
    public void What_comes_from_memory_says_so_to_those_who_choose() =>
        Assert.All(LoadCases.Choices.Where(c => c.How == Provenance.FromMemory), c => Assert.StartsWith("From memory.", c.DoesNotProve, StringComparison.Ordinal));

    [Fact]
    public void A_demand_along_an_axis_is_the_cases_own()
    {
        var landing = LoadCases.AircraftEmergency;
        Assert.Equal(9, Demand.Added(landing, new(-1, 0, 0))!.Value, tolerance: 1e-9);
        Assert.Equal(1.5, Demand.Added(landing, new(2, 0, 0))!.Value, tolerance: 1e-9);
        Assert.Equal(4, Demand.Added(landing, new(0, -1, 0))!.Value, tolerance: 1e-9);
        Assert.Equal(3, Demand.Added(landing, new(0, 0, 1))!.Value, tolerance: 1e-9);
        Assert.Equal(6, Demand.Added(landing, new(0, 0, -1))!.Value, tolerance: 1e-9);
    }

    [Fact]
    public void Between_axes_it_lies_on_the_ellipsoid_and_a_silent_axis_makes_it_silent()
    {
        Assert.Equal(10, Demand.Added(LoadCases.TenAllRound, new(-1, 1, 1))!.Value, tolerance: 1e-9);
        var slanting = Demand.Added(LoadCases.AircraftEmergency, new(-1, 1, 0))!.Value;
        Assert.Equal(1 / Math.Sqrt((0.5 / 81) + (0.5 / 16)), slanting, tolerance: 1e-9);
        Assert.Null(Demand.Added(LoadCases.TwentyForward, new(-1, 0, 1)));
        Assert.Null(Demand.Added(LoadCases.Rollover, new(-1, 0, 0)));
    }

    [Fact]
    public void Gravity_is_not_asked_twice() => Assert.Equal(0, Demand.Added(Case("en-12195-1"), new(0, 0, -1)));

    [Fact]
    public void Pulses_of_the_same_area_peak_where_their_shape_says()
    {
        Assert.Equal(Math.PI / 4, Pulse.HalfSinePeakG(10, 100) / Pulse.TrianglePeakG(10, 100), tolerance: 1e-9);
        Assert.Equal(2 * 10 / 0.1 / Pulse.GravityMPerS2, Pulse.TrianglePeakG(10, 100), tolerance: 1e-9);
        Assert.Equal(5_000, PublishedCases.LashingPointN(3_500));
        Assert.Null(PublishedCases.LashingPointN(12_000));
    }
}
