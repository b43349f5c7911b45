using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Drying;
using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>What is not known of how water came in, drawn.</summary>
/// <param name="Place">Which of the places it may have come in at; 0 for condensation.</param>
/// <param name="Marks">Standard normal marks, in the order of <see cref="WaterCourse.Mark"/>.</param>
internal sealed record WaterDraw(int Place, double[] Marks);

/// <summary>One course of wetting of a patch, computed.</summary>
/// <param name="SinceDays">Days before the readings when it began [d].</param>
/// <param name="Litres">Water let in [l].</param>
/// <param name="LitresHeld">Water still there over the start [l].</param>
/// <param name="AtReadings">Moisture at the readings on the day of the map [%].</param>
/// <param name="Days">Days of the frames, the last 0 [d].</param>
/// <param name="Percent">Moisture of every piece of the patch on each [%].</param>
internal sealed record WaterCourse(double SinceDays, double Litres, double LitresHeld, double[] AtReadings, double[] Days, float[][] Percent)
{
    /// <summary>What each mark moves.</summary>
    public enum Mark
    {
        /// <summary>How long ago it began.</summary>
        Since,

        /// <summary>How much came.</summary>
        Litres,

        /// <summary>Whether it grew or fell.</summary>
        Growth,

        /// <summary>How long it has stopped.</summary>
        Stopped,

        /// <summary>How wide it spread before boards took it up.</summary>
        Spread,

        /// <summary>Resistance of materials.</summary>
        Resistance,

        /// <summary>Wicking.</summary>
        Wicking,

        /// <summary>Airing of hollows.</summary>
        Airing,

        /// <summary>Humidity of the room over the time.</summary>
        Humidity,
    }

    public static readonly int Marks = Enum.GetValues<Mark>().Length;

    // 5, 50 and 95 of 100 before any reading: own rules, no source
    private static readonly (double Low, double Likely, double High) Since = (7, 60, 500), LitresLet = (0.1, 2, 40), LitresPerM2 = (0.05, 0.5, 5), SpreadMm = (60, 200, 600);

    private const double HumidityPoints = 0.05, GrowthFactor = 1.8, LeastSpread = 0.05, FullFrom = 0.6;

    private const int Parts = 3, FramesEach = 4, MostGoes = 12;

    // of the hint: how far boards wick [mm], points for each kg/m² of a 12 mm panel, and its ends [points]. Own rules
    private const double WickedMm = 100, PercentPerKgM2 = 12, LeastHint = 2, MostHint = 80;

    // a wetting is known to so little that steps may be coarser than for drying
    private static readonly StepControl Steps = new(0.03, 20);

    /// <summary>Computes the course.</summary>
    /// <param name="map">The map.</param>
    /// <param name="built">The boards as built.</param>
    /// <param name="patch">The patch.</param>
    /// <param name="places">Pieces that it may come in at; none for condensation.</param>
    /// <param name="air">The room, its humidity as the dry boards have it.</param>
    /// <param name="draw">What is drawn.</param>
    /// <param name="stop">Calls it off.</param>
    public static WaterCourse Of(DampMap map, AsBuilt built, DampPatch patch, IReadOnlyList<int> places, DryingAir air, WaterDraw draw, CancellationToken stop)
    {
        double At(Mark mark) => draw.Marks[(int)mark];
        var room = air with { HumidityFraction = Math.Clamp(air.HumidityFraction + (HumidityPoints * At(Mark.Humidity)), 0.2, 0.9) };
        var sheets = built.Under(DryingCare.AsBuilt, room, new(At(Mark.Resistance), At(Mark.Wicking), At(Mark.Airing)), SlicesOfSheet.Coarse, patch.Cells);
        var shares = places.Count > 0
            ? Around(map.Net, patch, map.Net.Cells[places[draw.Place]].Middle, Between(At(Mark.Spread), SpreadMm))
            : AlongTheSkin(map.Net, patch, built);
        var since = Between(At(Mark.Since), Since);
        var stopped = 0.3 * since * Math.Pow(NormalShare(At(Mark.Stopped)), 2);
        var kg = places.Count > 0 ? Between(At(Mark.Litres), LitresLet) : Between(At(Mark.Litres), LitresPerM2) * shares.Sum(s => map.Net.Cells[patch.Cells[s.Cell]].AreaMm2 * 1e-6);
        var kgPerDay = kg / (since - stopped);
        var run = new DryingRun(sheets.Net, room.HumidityFraction, Steps);
        var before = run.WaterKg;
        List<double> days = [];
        List<float[]> percent = [];
        void Frame()
        {
            days.Add(run.Days - since);
            percent.Add([.. sheets.Percent(run).Select(p => (float)p)]);
        }
        Frame();
        var most = shares.Select(s => sheets.MostPercent(s.Cell)).ToArray();
        double litres = 0;
        for (var part = 0; part < Parts; part++)
        {
            var length = (since - stopped) / Parts;
            var rate = kgPerDay * Math.Pow(GrowthFactor, At(Mark.Growth) * (part - 1));
            litres += rate * length;
            for (var f = 0; f < FramesEach; f++)
            {
                Let(run, sheets, shares, most, length / FramesEach, rate, stop);
                Frame();
            }
        }
        run.Advance(stopped, cancellation: stop);
        if (stopped > 0.01) Frame();
        days[^1] = 0;
        var place = patch.Cells.Select((c, i) => (c, i)).ToDictionary(p => p.c, p => p.i);
        return new(since, litres, Math.Max(0, run.WaterKg - before), [.. patch.Readings.Select(r => (double)percent[^1][place[r.Cell]])], [.. days], [.. percent]);
    }

    /// <summary>Roughly how wet a leak makes readings, on the logarithm: water let in over the area that it spreads to, as if none dried. Only to guess from.</summary>
    /// <param name="awayMm">How far away each reading is [mm].</param>
    /// <param name="draw">What is drawn.</param>
    public static double[] Hint(double[] awayMm, WaterDraw draw)
    {
        var wide = Math.Pow(Between(draw.Marks[(int)Mark.Spread], SpreadMm), 2) + (WickedMm * WickedMm);
        var middle = PercentPerKgM2 * Between(draw.Marks[(int)Mark.Litres], LitresLet) / (2e-6 * Math.PI * wide);
        return [.. awayMm.Select(mm => Math.Log(LeastHint + Math.Min(MostHint, middle * Math.Exp(-0.5 * mm * mm / wide))))];
    }

    /// <summary>Lets water in for a time: a board that is full takes no more, what is left over drips past and away.</summary>
    private static void Let(DryingRun run, BuiltSheets sheets, List<(int Cell, double Share)> shares, double[] most, double days, double kgPerDay, CancellationToken stop)
    {
        // so short that none is filled by half in one go
        var quickest = shares.Max(s => s.Share * kgPerDay * days / sheets.HoldsKg(s.Cell));
        var goes = Math.Clamp((int)Math.Ceiling(2 * quickest), 1, MostGoes);
        for (var g = 0; g < goes; g++)
        {
            List<LeakSource> leaks = [];
            for (var s = 0; s < shares.Count; s++)
            {
                var (cell, share) = shares[s];
                var filled = run.MoisturePercent(sheets.ColumnOf[cell], sheets.LayerOf[cell]) / most[s];
                var takes = Math.Clamp((1 - filled) / (1 - FullFrom), 0, 1);
                if (takes > 0) leaks.Add(new(sheets.ColumnOf[cell], sheets.LayerOf[cell], kgPerDay / 24 * share * takes, run.Days, double.MaxValue));
            }
            run.Advance(days / goes, leaks, stop);
        }
    }

    /// <summary>Water spread round a place before boards took it up: a bell curve over straight distance, whatever board.</summary>
    private static List<(int Cell, double Share)> Around(DampNet net, DampPatch patch, Place at, double spreadMm)
    {
        List<(int Cell, double Share)> shares = [];
        for (var i = 0; i < patch.Cells.Count; i++)
        {
            var cell = net.Cells[patch.Cells[i]];
            var d = cell.DistanceMm(at) / spreadMm;
            var part = Math.Exp(-0.5 * d * d);
            if (part > LeastSpread) shares.Add((i, part * cell.AreaMm2));
        }
        var sum = shares.Sum(s => s.Share);
        return [.. shares.Select(s => (s.Cell, s.Share / sum))];
    }

    /// <summary>Water even over all boards with metal behind them.</summary>
    private static List<(int Cell, double Share)> AlongTheSkin(DampNet net, DampPatch patch, AsBuilt built)
    {
        var cold = Enumerable.Range(0, patch.Cells.Count).Where(i => built.BacksSkin(patch.Cells[i])).ToList();
        var area = cold.Sum(i => net.Cells[patch.Cells[i]].AreaMm2);
        return [.. cold.Select(i => (i, net.Cells[patch.Cells[i]].AreaMm2 / area))];
    }

    private static double Between(double mark, (double Low, double Likely, double High) ends) => MaterialDoubt.At(mark, ends.Low, ends.Likely, ends.High);

    // near enough to the share of a bell curve below a mark
    private static double NormalShare(double mark) => 1 / (1 + Math.Exp(-1.702 * mark));
}
