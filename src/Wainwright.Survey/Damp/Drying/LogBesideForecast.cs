using System.Globalization;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>A drying log with what was worked out from the boards as built beside it.</summary>
public static class LogBesideForecast
{
    /// <summary>The log with the forecast's day for each point, and late where a later reading is over the slow end.</summary>
    /// <param name="log">The log.</param>
    /// <param name="map">The map that the forecast starts from.</param>
    /// <param name="forecast">The forecast.</param>
    public static DryingLog Of(DryingLog log, DampMap map, DryingForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(forecast);
        // a map without a reading has no day 0
        if (map.Newest is not { } newest) return log;
        var from = (newest - log.FirstDay).TotalDays;
        return log with { Points = [.. log.Points.Select(p => map.Readings.FirstOrDefault(r => r.Point == p.Point.Id) is { } reading ? Beside(p, reading.Cell, from, forecast) : p)] };
    }

    private static PointDrying Beside(PointDrying point, int cell, double from, DryingForecast forecast)
    {
        var days = new Span(When(f => f.LowPercent[cell]), When(f => f.LikelyPercent[cell]), When(f => f.HighPercent[cell]));
        var with = point with { ByPhysics = days };
        var last = point.Visits[^1];
        if (point.Pace != DryingPace.OnTime || last.AtLeast || last.Day <= from + 0.5 || At(forecast, last.Day - from, cell) is not { } slow || last.Percent <= slow) return with;
        return with with { Pace = DryingPace.Late, Because = string.Create(CultureInfo.InvariantCulture, $"{point.Because}; slower than the slow end worked out, {slow:0.0} %") };

        double When(Func<DampFrame, double> percent)
        {
            // dry and staying so
            var wet = forecast.Frames.ToList().FindLastIndex(f => percent(f) > point.TargetPercent);
            return wet < 0 ? from : wet == forecast.Frames.Count - 1 ? double.PositiveInfinity : from + forecast.Frames[wet + 1].Day;
        }
    }

    /// <summary>The slow end on a day of the forecast, between its frames; null past its end.</summary>
    private static double? At(DryingForecast forecast, double day, int cell)
    {
        var after = forecast.Frames.ToList().FindIndex(f => f.Day >= day);
        if (after < 0) return null;
        var (b, a) = (forecast.Frames[after], forecast.Frames[Math.Max(0, after - 1)]);
        var share = b.Day > a.Day ? (day - a.Day) / (b.Day - a.Day) : 1;
        return a.HighPercent[cell] + (share * (b.HighPercent[cell] - a.HighPercent[cell]));
    }
}
