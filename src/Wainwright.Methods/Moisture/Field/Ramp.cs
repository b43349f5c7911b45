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

    /// <summary>What a reading leaves of a bell curve: logarithm of its chance, mean and variance of the field given it.</summary>
    /// <remarks>Below zero every field value tells the same, above it the reading is a plain one: two cut bell curves side by side, each in closed form; only a bound near the dry board is summed over.</remarks>
    /// <param name="seen">The reading.</param>
    /// <param name="dryPercent">Dry board there [%].</param>
    /// <param name="sigma">Standard deviation of the reading against the dry board and the ramp [points].</param>
    /// <param name="mean">Mean of the field without it [points].</param>
    /// <param name="variance">Its variance [points²].</param>
    public static (double LogChance, double Mean, double Variance) Given(FieldObservation seen, double dryPercent, double sigma, double mean, double variance)
    {
        var over = seen.Percent - dryPercent;
        var below = Cut(Told(seen.Bound, over, sigma, 0), mean, variance, -1);
        if (seen.Bound == MeterReading.Bound.About)
        {
            var both = variance + (sigma * sigma);
            var above = Cut(NormalCurve.LogHeight(over - mean, Math.Sqrt(both)), ((mean * sigma * sigma) + (over * variance)) / both, variance * sigma * sigma / both, 1);
            return Mixed(below, above);
        }
        if (seen.Bound == MeterReading.Bound.AtLeast && over > FarOver * sigma) return Mixed(below, AtLeast(over, sigma, mean, variance));
        return Mixed(below, Summed(seen.Bound, over, sigma, mean, variance));
    }

    // a bound this many standard deviations over the dry board does not see the ramp's foot
    const double FarOver = 5;

    static double Told(MeterReading.Bound bound, double over, double sigma, double field) => bound switch
    {
        MeterReading.Bound.AtLeast => NormalCurve.LogBelow((field - over) / sigma),
        MeterReading.Bound.AtMost => NormalCurve.LogBelow((over - field) / sigma),
        _ => NormalCurve.LogHeight(over - field, sigma),
    };

    /// <summary>One side of zero of a bell curve that weighs so much.</summary>
    static (double Log, double Mean, double Variance) Cut(double log, double mean, double variance, int side)
    {
        var spread = Math.Sqrt(variance);
        var z = side * mean / spread;
        var logShare = NormalCurve.LogBelow(z);
        var push = Math.Exp(NormalCurve.LogHeight(z, 1) - logShare);
        // far out on the wrong side what is left is an exponential's end
        return (log + logShare, mean + (side * spread * push), variance * (z < -100 ? 1 / (z * z) : Math.Max(0, 1 - (push * (z + push)))));
    }

    static (double Log, double Mean, double Variance) AtLeast(double over, double sigma, double mean, double variance)
    {
        var width = Math.Sqrt((sigma * sigma) + variance);
        var z = (mean - over) / width;
        var log = NormalCurve.LogBelow(z);
        var push = Math.Exp(NormalCurve.LogHeight(z, 1) - log);
        return (log, mean + (variance * push / width), variance - (variance * variance * push * (z + push) / (width * width)));
    }

    static (double LogChance, double Mean, double Variance) Mixed((double Log, double Mean, double Variance) a, (double Log, double Mean, double Variance) b)
    {
        var most = Math.Max(a.Log, b.Log);
        double wa = Math.Exp(a.Log - most), wb = Math.Exp(b.Log - most), sum = wa + wb;
        (wa, wb) = (wa / sum, wb / sum);
        var apart = a.Mean - b.Mean;
        return (most + Math.Log(sum), (wa * a.Mean) + (wb * b.Mean), Math.Max(1e-9, (wa * a.Variance) + (wb * b.Variance) + (wa * wb * apart * apart)));
    }

    /// <summary>The wet side by sixteen points on each piece between the bends.</summary>
    static (double Log, double Mean, double Variance) Summed(MeterReading.Bound bound, double over, double sigma, double mean, double variance)
    {
        var spread = Math.Sqrt(variance);
        var high = Math.Max(mean + (8 * spread), spread);
        ReadOnlySpan<double> bends = [over - (4 * sigma), over, over + (4 * sigma), sigma, 4 * sigma, mean - (3 * spread), mean, mean + (3 * spread)];
        Span<double> cut = stackalloc double[10];
        cut[0] = 0;
        var cuts = 1;
        foreach (var bend in bends)
            if (bend > 0 && bend < high) cut[cuts++] = bend;
        cut[cuts++] = high;
        cut[..cuts].Sort();
        Span<double> at = stackalloc double[16 * 9], log = stackalloc double[16 * 9], weight = stackalloc double[16 * 9];
        var (n, most) = (0, double.NegativeInfinity);
        for (var c = 0; c + 1 < cuts; c++)
            for (var g = 0; g < 16; g++)
            {
                var half = (cut[c + 1] - cut[c]) / 2;
                at[n] = cut[c] + half + (half * (g < 8 ? -LegendreAt[g] : LegendreAt[g - 8]));
                weight[n] = half * LegendreWeight[g % 8];
                log[n] = Told(bound, over, sigma, at[n]) + NormalCurve.LogHeight(at[n] - mean, spread);
                most = Math.Max(most, log[n++]);
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
        return (most + Math.Log(sum), first, Math.Max(0, (second / sum) - (first * first)));
    }
}
