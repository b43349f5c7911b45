using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;
using Wainwright.Survey.Damp;

namespace Wainwright.Survey.Tests.Damp;

public sealed class DampMapTests(ITestOutputHelper said)
{
    const double Coarse = 200;

    static readonly DateOnly AsFound = new(2026, 3, 2), Dried = new(2026, 3, 23);

    static readonly Job Camper = A.Read("demo", "touring-camper");

    static DampMap Map(Job job, DateOnly? on = null) => DampMapping.Of(job, on, cellMm: Coarse)!;

    static DampSheetMap Of(DampMap map, string part) => map.Sheets.Single(s => s.Sheet.Part.Text == part);

    [Fact]
    public void With_half_of_the_readings_hidden_the_map_foretells_them_within_its_spread()
    {
        int inside = 0, hidden = 0;
        for (var split = 0; split < 8; split++)
        {
            var chance = new Random(split);
            var hide = Camper.Points.OrderBy(_ => chance.Next()).Take(12).Select(p => p.Id).ToHashSet();
            var whole = Map(Camper, AsFound);
            var half = Map(Camper with { Readings = [.. Camper.Readings.Where(r => r.Point is not { } p || !hide.Contains(p))] }, AsFound);
            foreach (var reading in whole.Readings.Where(r => hide.Contains(r.Point)))
            {
                double At(double share) => half.Field.QuantilePercent(reading.Cell, share);
                // the meter's own error beside the map's
                double Wide(double side) => Math.Sqrt((side * side) + Math.Pow(1.645 * reading.SigmaPoints, 2));
                var (low, high) = (At(0.5) - Wide(At(0.5) - At(0.05)), At(0.5) + Wide(At(0.95) - At(0.5)));
                hidden++;
                if (reading.Made.Bound == MeterReading.Bound.AtLeast ? high >= reading.Made.Percent : low <= reading.Made.Percent && reading.Made.Percent <= high) inside++;
            }
        }
        said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"hidden readings inside their 90 % interval: {inside} of {hidden}, {100.0 * inside / hidden:0} %"));
        Assert.Equal(96, hidden);
        Assert.InRange((double)inside / hidden, 0.8, 1);
    }

    [Fact]
    public void The_roof_leak_is_right_of_the_vent_and_the_panel_there_is_to_be_probed()
    {
        var map = Map(Camper, AsFound);
        var panel = Of(map, "A10");
        Assert.Equal(DampAdvice.CutOrProbe, panel.Advice);
        Assert.InRange(panel.WettestAt.XMm, 1150, 1700);
        Assert.InRange(panel.WettestAt.YMm, 1270, 1705);
        Assert.Equal(24, map.Readings.Count);
        Assert.Contains("no check on its block is written within 7 days of 24 readings", Assert.Single(map.Told), StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_is_as_well_wet_as_dry_where_its_chance_is_neither_small_nor_large_and_on_another_day_where_the_range_spans_the_threshold()
    {
        var map = Map(Camper, AsFound);
        var cells = Enumerable.Range(0, map.Net.Cells.Count).ToList();
        Assert.Contains(cells, c => map.IsAsWellWetAsDry(c));
        Assert.All(cells, c => Assert.Equal(map.ChanceOver(c, 16) is > 0.2 and < 0.8, map.IsAsWellWetAsDry(c)));
        // where a wet reading was taken, and beside a dry one, there is no doubt
        Assert.All(map.Readings.Where(r => r.Made.Percent is > 26 or < 12), r => Assert.False(map.IsAsWellWetAsDry(r.Cell)));
        double[] All(double percent) => [.. cells.Select(_ => percent)];
        Assert.True(map.IsAsWellWetAsDry(0, new(30, All(14), All(15), All(17))));
        Assert.False(map.IsAsWellWetAsDry(0, new(30, All(12), All(14), All(16))));
        Assert.False(map.IsAsWellWetAsDry(0, new(30, All(16.1), All(18), All(20))));
    }

    [Fact]
    public void A_board_that_nobody_read_is_not_condemned_by_its_neighbours()
    {
        var battens = Of(Map(Camper, AsFound), "A01");
        Assert.Equal(0, battens.Readings);
        Assert.Equal(DampAdvice.CannotTell, battens.Advice);
        Assert.Contains("measure at x", battens.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void After_three_weeks_of_drying_less_is_wet_and_nothing_needs_the_bradawl()
    {
        var (wet, dried) = (Map(Camper, AsFound), Map(Camper, Dried));
        Assert.True(dried.Sheets.Sum(s => s.Over[0].AreaM2.Likely) < 0.3 * wet.Sheets.Sum(s => s.Over[0].AreaM2.Likely));
        Assert.DoesNotContain(dried.Sheets, s => s.Advice is DampAdvice.CutOrProbe or DampAdvice.Dry);
    }

    [Fact]
    public void Without_a_reading_no_board_can_be_told_and_each_says_where_to_measure()
    {
        var map = Map(Camper with { Readings = [] });
        Assert.All(map.Sheets, s => Assert.Equal(DampAdvice.CannotTell, s.Advice));
        Assert.All(map.Sheets, s => Assert.Contains("measure at x", s.Because, StringComparison.Ordinal));
        Assert.Null(map.Newest);
    }

    [Fact]
    public void A_reading_far_from_its_board_is_left_out_and_said()
    {
        var job = Camper with { Points = [.. Camper.Points.Select(p => p.Id.Text == "P05" ? p with { At = new(1500, 1300, 1400) } : p)] };
        var map = Map(job, AsFound);
        Assert.Equal(23, map.Readings.Count);
        Assert.Contains(map.Told, t => t.StartsWith("P05 left out: 468 mm from the board", StringComparison.Ordinal));
    }

    [Fact]
    public void A_corrected_reading_counts_and_the_wrong_one_does_not()
    {
        var wrong = Camper.Readings.Single(r => r.Id.Text == "P01-d00");
        var job = Camper with { Readings = [.. Camper.Readings, wrong with { Id = new("P01-again"), Value = 12.3, Corrects = wrong.Id, TakenAt = wrong.TakenAt.AddMinutes(1) }] };
        Assert.Equal(12.3, Map(job, AsFound).Readings.Single(r => r.Point.Text == "P01").Made.Percent, tolerance: 1e-9);
    }

    [Theory]
    [InlineData("A10", "A06")] // ceiling and wall: down the skin behind them
    [InlineData("A32", "A02")] // a partition's foot stands on the floor
    [InlineData("A10", "A11")] // over a seam
    [InlineData("A02", "A03")]
    [InlineData("A02", "A05")] // floor and the lining above it
    public void Water_can_walk_from_board_to_board_where_they_are_built_together(string one, string other)
    {
        var net = DampNet.Of(Camper, Coarse)!;
        string Part(int cell) => net.Sheets[net.Cells[cell].Sheet].Part.Text;
        Assert.Contains(net.Surface.Links, l => (Part(l.A), Part(l.B)) == (one, other) || (Part(l.B), Part(l.A)) == (one, other));
    }

    [Fact]
    public void Water_does_not_walk_across_the_room_or_the_side_door()
    {
        var net = DampNet.Of(Camper, Coarse)!;
        string Part(int cell) => net.Sheets[net.Cells[cell].Sheet].Part.Text;
        Assert.DoesNotContain(net.Surface.Links, l => (Part(l.A), Part(l.B)) is ("A05", "A06") or ("A06", "A05"));
        Assert.DoesNotContain(net.Cells, c => net.Sheets[c.Sheet].Part.Text == "A06" && c.Middle.XMm < 1280);
    }

    [Fact]
    public void The_next_places_are_worth_their_way_and_say_what_must_come_out()
    {
        var map = Map(Camper, AsFound);
        var next = NextReadings.Of(map, 3);
        Assert.NotEmpty(next);
        Assert.All(next, n => Assert.True(n.GainMinutes > n.Minutes));
        Assert.All(next, n => Assert.Equal(n.Covers.Count > 0, n.ComesOut.Count > 0));
        Assert.Equal(next.Count, next.Select(n => n.At).Distinct().Count());
    }

    [Fact]
    public void A_van_without_wood_has_no_map() => Assert.Null(DampMapping.Of(A.Van()));
}
