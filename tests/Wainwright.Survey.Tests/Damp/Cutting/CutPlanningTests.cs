using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;

namespace Wainwright.Survey.Tests.Damp.Cutting;

public sealed class CutPlanningTests
{
    static readonly Job Camper = A.Read("demo", "touring-camper");

    static readonly DampMap Wet = DampMapping.Of(Camper, new DateOnly(2026, 3, 2))!;

    static readonly CutPlan Plan = CutPlanning.Of(Wet);

    static BoardCut Of(CutPlan plan, string part) => plan.Boards.Single(b => b.Sheet.Part.Text == part);

    [Fact]
    public void The_ceiling_under_the_vent_is_cut_over_the_aisle_and_not_over_the_washroom()
    {
        var ceiling = Of(Plan, "A10");
        Assert.Equal(BoardFate.Replace, ceiling.Fate);
        Assert.All(ceiling.Pieces, p => Assert.All(p.Corners, c => Assert.InRange(c.YMm, 823, 1705)));
        Assert.Contains(ceiling.Pieces, p => p.RunsOn.Contains("seam"));
        Assert.Contains(ceiling.Under, u => u.Text == "A12");
        Assert.NotEmpty(ceiling.ScrewsUnder);
        Assert.True(ceiling.WrongMinutes < ceiling.WrongIfKeptMinutes);
    }

    [Fact]
    public void What_the_map_cannot_tell_the_plan_cannot_tell_and_names_the_place()
    {
        foreach (var (map, board) in Wet.Sheets.Zip(Plan.Boards))
        {
            Assert.Equal(map.Advice == DampAdvice.CannotTell, board.Fate == BoardFate.CannotTell);
            if (board.Fate == BoardFate.CannotTell) Assert.Contains("measure at x", board.Because, StringComparison.Ordinal);
        }
        Assert.Contains(Plan.Boards, b => b.Fate == BoardFate.CannotTell);
    }

    [Fact]
    public void No_plan_is_dearer_than_keeping_all_and_no_more_water_leaves_than_is_there() =>
        Assert.All(Plan.Boards, b =>
        {
            // what was read wet is dried even where keeping it would come cheaper
            Assert.True(b.WrongMinutes <= b.WrongIfKeptMinutes + 1e-9 || b.Fate == BoardFate.Dry);
            Assert.True(b.LitresOut.Likely <= b.Litres.High && b.Litres.Low <= b.Litres.Likely && b.Litres.Likely <= b.Litres.High);
            Assert.Equal(b.Fate == BoardFate.Replace, b.Pieces.Count > 0);
        });

    [Fact]
    public void A_board_that_was_read_wet_is_never_just_kept() =>
        Assert.DoesNotContain(Plan.Boards, b => b.Fate == BoardFate.Keep && Wet.Readings.Any(r => r.Made.Percent > 16 && Wet.Net.Sheets[Wet.Net.Cells[r.Cell].Sheet].Part == b.Sheet.Part));

    [Fact]
    public void Wet_for_months_cuts_no_less()
    {
        var months = CutPlanning.Of(Wet, CutStakes.Usual with { LongWet = true });
        Assert.All(Plan.Boards.Zip(months.Boards), b => Assert.True(b.Second.WrongIfKeptMinutes >= b.First.WrongIfKeptMinutes));
        Assert.True(months.Boards.Sum(b => b.Pieces.Sum(p => p.AreaM2)) >= Plan.Boards.Sum(b => b.Pieces.Sum(p => p.AreaM2)));
        Assert.Contains(months.Assumed, a => a.Contains("20 % (wet for months)", StringComparison.Ordinal));
    }

    [Fact]
    public void What_keeping_all_costs_is_what_it_costs_on_the_mean_of_whole_likely_maps()
    {
        var draws = Wet.Field.Draws(1_000, 7);
        var (all, drawn) = (0.0, 0.0);
        foreach (var (board, sheet) in Plan.Boards.Select((b, i) => (b, i)))
        {
            all += board.WrongIfKeptMinutes;
            drawn += draws.Average(d => Wet.Net.Cells.Select((c, i) => (c, i)).Where(c => c.c.Sheet == sheet).Sum(c => c.c.AreaMm2 * 1e-6 * (d[c.i] > 28 ? 600 : d[c.i] > 16 ? 300 : 0)));
        }
        // of 1 000 maps the mean differs from what they are drawn from by some percent
        Assert.Equal(all, drawn, tolerance: 0.06 * all);
    }

    [Fact]
    public void Litres_are_area_times_thickness_times_dry_density_times_what_is_over_dry()
    {
        // 1 m² of birch ply of 12 mm at 28 % over 12 % dry: 0.012 m³ · 640 kg/m³ · 0.16 = 1.23 l
        var job = A.Van(A.Part("B").At(0, 0, 18, 1000, 1000, 12) with { System = PartSystem.Floor, Made = [new() { Material = "birch ply" }] });
        var map = DampMapping.Of(job, cellMm: 500)!;
        var dry = map.Field.DryPercent(0);
        var litres = new WaterHeld(map, [[.. map.Net.Cells.Select(_ => dry + 16)]]).Litres(map.Net.Sheets[0], [.. Enumerable.Range(0, 4).Select(c => (c, 1.0))]);
        Assert.Equal(1.2288, litres.Likely, tolerance: 1e-9);
        Assert.Equal(1.152, litres.Low, tolerance: 1e-9);
        Assert.Equal(1.3056, litres.High, tolerance: 1e-9);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CutPlanning.Of(Wet, new(GridMm: 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CutPlanning.Of(Wet, new(FreeCutPerM: -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CutPlanning.Of(Wet, new(WetPercent: 40)));
    }
}
