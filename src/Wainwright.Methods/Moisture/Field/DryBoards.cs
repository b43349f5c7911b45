namespace Wainwright.Methods.Moisture.Field;

/// <summary>The dry board of each group and how uneven boards are, as what was read low leaves them.</summary>
/// <remarks>
/// A reading is either of dry board, round the group's figure by meter and unevenness, or of wet board, anywhere over it. Dry board,
/// unevenness and the share of wet readings are summed over on grids. A group that nobody read keeps what was thought beforehand.
/// </remarks>
sealed class DryBoards
{
    // unevenness of one board's dry moisture [points] and how likely each is; shares of wet readings. Own rules
    static readonly double[] Uneven = [0.1, 0.3, 0.6, 1.2], UnevenWeight = [1, 2, 1, 0.5], WetShares = [0.05, 0.2, 0.4, 0.7];

    // a wet reading lies anywhere within 25 points over the dry board; three in ten are past the meter's end
    const double PerPoint = 0.04, PastTheEnd = 0.3, Never = 1e-6;

    // grid over the dry board, in standard deviations
    const int Steps = 120;
    const double Widest = 4;

    DryBoards(double[] percent, double[] sigma, double[] unevenWeight) => (Percent, Sigma, UnevenChance) = (percent, sigma, unevenWeight);

    /// <summary>Middle of each group [%].</summary>
    public double[] Percent { get; }

    /// <summary>Its standard deviation [points].</summary>
    public double[] Sigma { get; }

    /// <summary>Chance of each unevenness.</summary>
    public double[] UnevenChance { get; }

    /// <summary>Mean square of the unevenness [points²].</summary>
    public double UnevenVariance => Uneven.Zip(UnevenChance, (u, w) => w * u * u).Sum();

    /// <summary>The unevenness that a number from 0 to 1 picks [points].</summary>
    public double PickUneven(double share)
    {
        var k = 0;
        while (k < Uneven.Length - 1 && share >= UnevenChance[k]) share -= UnevenChance[k++];
        return Uneven[k];
    }

    public static DryBoards Of(IReadOnlyList<FieldObservation> seen, Func<int, int> groupOf, FieldPriors priors)
    {
        var groups = priors.DryPercent.Count;
        var per = Enumerable.Range(0, groups).Select(g => seen.Where(o => groupOf(o.Cell) == g).ToArray()).ToArray();
        var tried = new List<(int Uneven, double Log, (double Mean, double Square)[] Dry)>();
        for (var u = 0; u < Uneven.Length; u++)
        {
            var chances = Enumerable.Range(0, groups).Select(g => Chances(per[g], priors.DryPercent[g], priors.DrySigmaPoints, Uneven[u])).ToArray();
            foreach (var share in WetShares)
            {
                var log = Math.Log(UnevenWeight[u]);
                var dry = new (double, double)[groups];
                for (var g = 0; g < groups; g++)
                {
                    var (one, mean, square) = Sum(chances[g], priors.DryPercent[g], priors.DrySigmaPoints, share);
                    log += one;
                    dry[g] = (mean, square);
                }
                tried.Add((u, log, dry));
            }
        }
        var best = tried.Max(t => t.Log);
        var total = tried.Sum(t => Math.Exp(t.Log - best));
        var (percent, sigma, chance) = (new double[groups], new double[groups], new double[Uneven.Length]);
        foreach (var t in tried) chance[t.Uneven] += Math.Exp(t.Log - best) / total;
        for (var g = 0; g < groups; g++)
        {
            percent[g] = tried.Sum(t => Math.Exp(t.Log - best) / total * t.Dry[g].Mean);
            sigma[g] = Math.Sqrt(Math.Max(1e-6, tried.Sum(t => Math.Exp(t.Log - best) / total * t.Dry[g].Square) - (percent[g] * percent[g])));
        }
        return new(percent, sigma, chance);
    }

    static double At(int step, double percent, double sigma) => percent + (sigma * Widest * ((2.0 * step / Steps) - 1));

    /// <summary>For each step of the grid and each reading, how likely it is of dry board and of wet.</summary>
    static (double Dry, double Wet)[][] Chances(FieldObservation[] seen, double percent, double sigma, double uneven) =>
        seen.Length == 0 ? [] : [.. Enumerable.Range(0, Steps + 1).Select(k => seen.Select(o => Chance(o, At(k, percent, sigma), uneven)).ToArray())];

    static (double Log, double Mean, double Square) Sum((double Dry, double Wet)[][] chances, double percent, double sigma, double wetShare)
    {
        if (chances.Length == 0) return (0, percent, (percent * percent) + (sigma * sigma));
        Span<double> log = stackalloc double[Steps + 1];
        var most = double.NegativeInfinity;
        for (var k = 0; k <= Steps; k++)
        {
            var z = (At(k, percent, sigma) - percent) / sigma;
            // logarithms are taken of products of a few readings, each above a millionth
            double product = 1;
            var n = 0;
            log[k] = -z * z / 2;
            foreach (var (dry, wet) in chances[k])
            {
                product *= ((1 - wetShare) * dry) + (wetShare * wet) + Never;
                if (++n % 16 != 0) continue;
                log[k] += Math.Log(product);
                product = 1;
            }
            log[k] += Math.Log(product);
            most = Math.Max(most, log[k]);
        }
        double sum = 0, one = 0, two = 0;
        for (var k = 0; k <= Steps; k++)
        {
            var (p, at) = (Math.Exp(log[k] - most), At(k, percent, sigma));
            sum += p;
            one += p * at;
            two += p * at * at;
        }
        // the grid's own coarseness counts as doubt
        var step = 2 * sigma * Widest / Steps;
        return (most + Math.Log(sum), one / sum, (two / sum) + (step * step / 12));
    }

    static (double Dry, double Wet) Chance(FieldObservation seen, double dry, double uneven)
    {
        var width = Math.Sqrt((seen.SigmaPoints * seen.SigmaPoints) + (uneven * uneven));
        var z = (seen.Percent - dry) / width;
        return seen.Bound switch
        {
            MeterReading.Bound.AtLeast => (NormalCurve.Below(-z), PastTheEnd),
            MeterReading.Bound.AtMost => (NormalCurve.Below(z), Never),
            _ => (NormalCurve.Height(z) / width, PerPoint * NormalCurve.Below(z)),
        };
    }
}
