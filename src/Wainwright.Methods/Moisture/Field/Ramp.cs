namespace Wainwright.Methods.Moisture.Field;

/// <summary>From the field to moisture: the dry board, a little uneven, and on it what of the field is over zero.</summary>
static class Ramp
{
    // seven-point Gauss–Hermite for a normal curve: places and weights
    static readonly (double At, double Weight)[] Hermite =
    [
        (-3.750439717725742, 5.48268855972218e-4), (-2.366759410734541, 3.07571239675865e-2), (-1.154405394739968, 0.240123178605013), (0, 0.457142857142857),
        (1.154405394739968, 0.240123178605013), (2.366759410734541, 3.07571239675865e-2), (3.750439717725742, 5.48268855972218e-4),
    ];

    // sixteen-point Gauss–Legendre, one side
    static readonly double[] LegendreAt = [0.0950125098376374, 0.2816035507792589, 0.4580167776572274, 0.6178762444026438, 0.7554044083550030, 0.8656312023878318, 0.9445750230732326, 0.9894009349916499];
    static readonly double[] LegendreWeight = [0.1894506104550685, 0.1826034150449236, 0.1691565193950025, 0.1495959888165767, 0.1246289712555339, 0.0951585116824928, 0.0622535239386479, 0.0271524594117541];

    /// <summary>Field value before any reading under which the given moisture is expected; where that is the dry board, the level far below zero.</summary>
    public static double Begin(double? trendPercent, double dryPercent, double level)
    {
        if (trendPercent is not { } trend || trend <= dryPercent) return -level;
        // over the first two points it comes up from the level to the course itself
        var over = trend - dryPercent;
        return -level + ((over + level) * Math.Min(1, over / 2));
    }

    /// <summary>Chance that a cell holds no more than a given moisture.</summary>
    /// <param name="over">The moisture less the dry board [points].</param>
    /// <param name="mean">Mean of the field there [points].</param>
    /// <param name="spread">Its standard deviation [points].</param>
    /// <param name="doubt">Standard deviation of the dry board, unevenness in it [points].</param>
    public static double Below(double over, double mean, double spread, double doubt)
    {
        // far over the doubt the ramp's foot does not matter
        if (over > 4.5 * doubt) return NormalCurve.Below((over - mean) / Math.Sqrt((spread * spread) + (doubt * doubt)));
        // far under it there is nothing
        if (over < -6 * doubt) return 0;
        var dry = NormalCurve.Below(-mean / spread);
        double wet = 0;
        // on the wet side the dry board's doubt is summed over
        foreach (var (at, weight) in Hermite)
        {
            var x = over - (doubt * at);
            if (x > 0) wet += weight * Math.Max(0, NormalCurve.Below((x - mean) / spread) - dry);
        }
        return (dry * NormalCurve.Below(over / doubt)) + wet;
    }

    /// <summary>Mean and mean square of what is over zero of a bell curve.</summary>
    public static (double One, double Two) Moments(double mean, double spread)
    {
        var (z, wet) = (mean / spread, NormalCurve.Below(mean / spread));
        var height = NormalCurve.Height(z);
        return (Math.Max(0, (mean * wet) + (spread * height)), Math.Max(0, (((mean * mean) + (spread * spread)) * wet) + (mean * spread * height)));
    }

    /// <summary>Logarithm of the chance of what was read, given the field there.</summary>
    static double Told(FieldObservation seen, double dryPercent, double sigma, double field)
    {
        var off = (seen.Percent - dryPercent - Math.Max(0, field)) / sigma;
        return seen.Bound switch
        {
            MeterReading.Bound.AtLeast => NormalCurve.LogBelow(-off),
            MeterReading.Bound.AtMost => NormalCurve.LogBelow(off),
            _ => NormalCurve.LogHeight(off * sigma, sigma),
        };
    }

    /// <summary>What a reading leaves of a bell curve: logarithm of its chance, mean and variance of the field given it.</summary>
    /// <param name="seen">The reading.</param>
    /// <param name="dryPercent">Dry board there [%].</param>
    /// <param name="sigma">Standard deviation of the reading against the dry board and the ramp [points].</param>
    /// <param name="mean">Mean of the field without it [points].</param>
    /// <param name="variance">Its variance [points²].</param>
    public static (double LogChance, double Mean, double Variance) Given(FieldObservation seen, double dryPercent, double sigma, double mean, double variance)
    {
        var spread = Math.Sqrt(variance);
        Span<double> cut = stackalloc double[9];
        var cuts = 0;
        double low = mean - (8 * spread), high = mean + (8 * spread), foot = seen.Percent - dryPercent;
        cut[cuts++] = low;
        // where the chance bends: the ramp's foot, round the reading, and the middle of the curve itself
        ReadOnlySpan<double> bends = [0, foot - (4 * sigma), foot, foot + (4 * sigma), mean - (3 * spread), mean, mean + (3 * spread)];
        foreach (var bend in bends)
            if (bend > low && bend < high && (bend >= 0 || bend == bends[4] || bend == bends[5] || bend == bends[6])) cut[cuts++] = bend;
        cut[cuts++] = high;
        cut[..cuts].Sort();
        Span<double> at = stackalloc double[16 * 8], log = stackalloc double[16 * 8], weight = stackalloc double[16 * 8];
        var n = 0;
        var most = double.NegativeInfinity;
        // left of the foot the reading's chance is one and the same
        var dry = Told(seen, dryPercent, sigma, 0);
        for (var c = 0; c + 1 < cuts; c++)
        {
            double half = (cut[c + 1] - cut[c]) / 2, middle = (cut[c + 1] + cut[c]) / 2;
            if (half <= 0) continue;
            for (var g = 0; g < 16; g++)
            {
                var x = middle + (half * (g < 8 ? -LegendreAt[g] : LegendreAt[g - 8]));
                var z = (x - mean) / spread;
                (at[n], weight[n]) = (x - mean, half * LegendreWeight[g % 8]);
                log[n] = (x <= 0 ? dry : Told(seen, dryPercent, sigma, x)) - (z * z / 2);
                most = Math.Max(most, log[n++]);
            }
        }
        double sum = 0, first = 0, second = 0;
        for (var k = 0; k < n; k++)
        {
            var p = weight[k] * Math.Exp(log[k] - most);
            sum += p;
            first += p * at[k];
            second += p * at[k] * at[k];
        }
        first /= sum;
        return (most + Math.Log(sum / spread) - 0.91893853320467274, mean + first, Math.Max(1e-9, (second / sum) - (first * first)));
    }
}
