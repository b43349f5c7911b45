using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Tests.Damp.Drying;

public sealed class ForecastingTests(ITestOutputHelper said)
{
    const double Wet = 24, Days = 90;

    static SheetDrying The(DryingForecast forecast, string part) => forecast.Sheets.Single(s => s.Sheet.Part.Text == part);

    static DryingForecast Foretold(DampMap map, DryingCare care, double days, double targetPercent = Forecasting.UsualTargetPercent) =>
        Forecasting.Of(map, care, days, targetPercent, cancellation: TestContext.Current.CancellationToken);

    SheetDrying Floor(DryingCare care, params IReadOnlyList<Part> parts)
    {
        var floor = The(Foretold(WetFloor.Map(Wet, parts), care, Days), "S1");
        said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{care}: days {floor.Days}, wet {floor.WetAreaM2} m², mould {floor.MouldIndex}; {floor.Closed}"));
        return floor;
    }

    // common practice, no source: a subfloor under sheet vinyl is still wet after three months without a drop more, the same floor bare is dry
    [Fact]
    public void Under_vinyl_a_wet_floor_is_wet_after_ninety_days_and_bare_it_is_dry()
    {
        var covered = Floor(DryingCare.AsBuilt, WetFloor.Ply(), WetFloor.Vinyl());
        Assert.Equal(double.PositiveInfinity, covered.Days.Low);
        Assert.True(covered.WetAreaM2.Low > 0.9 * covered.Sheet.AreaM2);
        Assert.Contains("under vinyl 2 mm (V1)", covered.Closed, StringComparison.Ordinal);

        var bare = Floor(DryingCare.AsBuilt, WetFloor.Ply());
        Assert.True(bare.Days.High < Days);
        Assert.Equal(0, bare.WetAreaM2.High);
        Assert.Empty(bare.Closed);
    }

    [Fact]
    public void Lifting_the_vinyl_is_as_good_as_none_and_heat_is_better()
    {
        var bare = Floor(DryingCare.AsBuilt, WetFloor.Ply());
        var lifted = Floor(DryingCare.FinishLifted, WetFloor.Ply(), WetFloor.Vinyl());
        var heated = Floor(DryingCare.HeatedAndAired, WetFloor.Ply(), WetFloor.Vinyl());
        Assert.Equal(bare.Days.Likely, lifted.Days.Likely, 0.02 * bare.Days.Likely);
        Assert.True(heated.Days.Likely < lifted.Days.Likely);
        Assert.True(heated.Days.High < lifted.Days.High);
    }

    [Fact]
    public void Under_a_cupboard_it_dries_slower_than_bare_and_faster_once_the_cupboard_is_out()
    {
        var bare = Floor(DryingCare.AsBuilt, WetFloor.Ply());
        var under = Floor(DryingCare.FinishLifted, WetFloor.Ply(), WetFloor.Vinyl(), WetFloor.Cupboard());
        var opened = Floor(DryingCare.OneSideOpened, WetFloor.Ply(), WetFloor.Vinyl(), WetFloor.Cupboard());
        Assert.True(under.Days.Likely > 1.5 * bare.Days.Likely);
        Assert.Contains("hollow", under.Closed, StringComparison.Ordinal);
        Assert.Equal(bare.Days.Likely, opened.Days.Likely, 0.02 * bare.Days.Likely);
    }

    [Fact]
    public void A_board_under_another_dries_through_it_and_later()
    {
        var battens = WetFloor.Ply("S1", 12);
        var lower = new Part { Id = new("B1"), Name = "battens", System = PartSystem.Floor, Known = Known.Seen, Made = [new() { Material = "softwood battens", ThicknessMm = 12 }] }.At(400, 400, 0, 1200, 800, 12);
        var map = WetFloor.Map(Wet, battens, lower);
        var forecast = Foretold(map, DryingCare.AsBuilt, Days);
        var first = forecast.Frames[0];
        var (above, below) = (Mean(map, forecast.Frames[^6], "S1"), Mean(map, forecast.Frames[^6], "B1"));
        Assert.True(below > above + 0.5, $"{below} under {above}");
        Assert.InRange(Mean(map, first, "S1"), Wet - 3, Wet + 3);
        Assert.Contains("under subfloor (S1)", The(forecast, "B1").Closed, StringComparison.Ordinal);
    }

    static double Mean(DampMap map, DampFrame frame, string part) =>
        Enumerable.Range(0, map.Net.Cells.Count).Where(c => map.Net.Sheets[map.Net.Cells[c].Sheet].Part.Text == part).Average(c => frame.LikelyPercent[c]);

    [Fact]
    public void A_dry_floor_is_dry_from_the_first_day_and_grows_no_mould()
    {
        var floor = The(Foretold(WetFloor.Map(10, WetFloor.Ply(), WetFloor.Vinyl()), DryingCare.AsBuilt, Days), "S1");
        Assert.Equal(0, floor.Days.Likely);
        Assert.InRange(floor.MouldIndex.Likely, 0, 0.01);
    }

    [Fact]
    public void Wet_under_vinyl_grows_mould_and_bare_hardly()
    {
        Assert.True(Floor(DryingCare.AsBuilt, WetFloor.Ply(), WetFloor.Vinyl()).MouldIndex.Likely > 3);
        Assert.True(Floor(DryingCare.HeatedAndAired, WetFloor.Ply(), WetFloor.Vinyl()).MouldIndex.Likely < 1);
    }

    [Fact]
    public void It_says_which_air_it_takes_and_that_none_was_read()
    {
        var read = WetFloor.Map(Wet, WetFloor.Ply());
        Assert.Contains("air of 19 °C and 55 % as read on 2026-03-02", Foretold(read, DryingCare.AsBuilt, 5).Assumed[0], StringComparison.Ordinal);
        Assert.Contains("30 °C and 40 %", Foretold(read, DryingCare.HeatedAndAired, 5).Assumed[0], StringComparison.Ordinal);
        var job = WetFloor.Read(Wet, WetFloor.Ply());
        var unread = DampMapping.Of(job with { Readings = [.. job.Readings.Select(r => r with { AirC = null, AirRhPercent = null })] }, cellMm: 200)!;
        Assert.Contains("read air and humidity", Foretold(unread, DryingCare.AsBuilt, 5).Assumed[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_can_be_called_off_and_tells_how_far_it_is()
    {
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        var map = WetFloor.Map(Wet, WetFloor.Ply());
        Assert.ThrowsAny<OperationCanceledException>(() => Forecasting.Of(map, DryingCare.AsBuilt, Days, cancellation: stop.Token));
        var told = new List<double>();
        Forecasting.Of(map, DryingCare.AsBuilt, 5, progress: new Listening(told.Add), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(9, told.Count);
        Assert.Equal(1, told[^1], 1e-9);
    }

    [Theory]
    [InlineData(0, 16)]
    [InlineData(4000, 16)]
    [InlineData(30, 5)]
    public void Nonsense_is_refused(double days, double target)
    {
        var map = WetFloor.Map(Wet, WetFloor.Ply());
        Assert.Throws<ArgumentOutOfRangeException>(() => Foretold(map, DryingCare.AsBuilt, days, target));
    }

    sealed class Listening(Action<double> told) : IProgress<double>
    {
        public void Report(double value) => told(value);
    }
}
