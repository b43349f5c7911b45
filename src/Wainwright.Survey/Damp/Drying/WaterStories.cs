namespace Wainwright.Survey.Damp.Drying;

/// <summary>Draws courses of one story and weighs them by the readings: adaptive importance sampling, all draws weighed against the mixture they came from.</summary>
/// <remarks>
/// Cornuet, Marin, Mira, Robert 2012 (Scand. J. Stat. 39), from memory: after each round the next draws come from kernels round the likely ones, tempered so that
/// enough of them count; every draw is weighed by prior times likelihood over the mixture of all rounds. The mean weight is how well the story as a whole fits.
/// </remarks>
internal sealed class WaterStories(IReadOnlyList<Fitout.Place> places, Func<WaterDraw, WaterCourse> course, Func<WaterCourse, double> logLikelihood, Func<WaterCourse, double[]> offs)
{
    private static readonly double[] Rounds = [0.3, 0.14, 0.14, 0.14, 0.14, 0.14];

    private const double FromPrior = 0.15, FromBell = 0.85, KernelWidth = 0.6, LeastWidth = 0.15, PlaceMm = 150, CountingShare = 0.15, LeastCounting = 6;

    /// <summary>A round: what its draws came from.</summary>
    private sealed record Round(int Count, IReadOnlyList<(WaterDraw Draw, double Weight)> Kernels, double[] Width, BellOfMarks? Bell);

    private readonly List<WaterDraw> draws = [];

    private readonly List<double> likelihoods = [];

    private readonly List<Round> rounds = [];

    /// <summary>The courses computed.</summary>
    public List<WaterCourse> Courses { get; } = [];

    /// <summary>Logarithm of each course's weight: prior times likelihood over what it was drawn from.</summary>
    public double[] LogWeights { get; private set; } = [];

    /// <summary>Logarithm of how well the story fits: the mean weight.</summary>
    public double LogEvidence => LogSum(LogWeights) - Math.Log(LogWeights.Length);

    /// <summary>The place that most weight came in at.</summary>
    /// <param name="weights">Weight of each course.</param>
    public Fitout.Place LikelyPlace(IReadOnlyList<double> weights) => places[draws.Select((d, i) => (d.Place, weights[i])).GroupBy(p => p.Place).MaxBy(g => g.Sum(p => p.Item2))!.Key];

    /// <summary>Draws and weighs.</summary>
    /// <param name="count">Courses.</param>
    /// <param name="seed">Start of the drawing.</param>
    /// <param name="told">Told after each course.</param>
    /// <param name="stop">Calls it off.</param>
    public void Run(int count, int seed, Action told, CancellationToken stop)
    {
        var left = count;
        for (var r = 0; r < Rounds.Length && left > 0; r++)
        {
            var now = r == Rounds.Length - 1 ? left : Math.Min(left, Math.Max(1, (int)Math.Round(count * Rounds[r])));
            left -= now;
            var round = Next(now);
            rounds.Add(round);
            var chance = new Random((seed * 31) + r);
            var fresh = Enumerable.Range(0, now).Select(_ => Draw(round, chance)).ToList();
            var made = new WaterCourse[now];
            Parallel.For(0, now, new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
            {
                made[i] = course(fresh[i]);
                told();
            });
            draws.AddRange(fresh);
            Courses.AddRange(made);
            likelihoods.AddRange(made.Select(logLikelihood));
            LogWeights = [.. draws.Select((d, i) => likelihoods[i] + LogPrior(d) - LogMixture(d))];
        }
    }

    private Round Next(int count)
    {
        if (draws.Count == 0) return new(count, [], [], null);
        var weights = Tempered(LogWeights, Math.Max(LeastCounting, CountingShare * draws.Count), out var power);
        var width = new double[WaterCourse.Marks];
        for (var m = 0; m < width.Length; m++)
        {
            var mean = draws.Select((d, i) => weights[i] * d.Marks[m]).Sum();
            var variance = draws.Select((d, i) => weights[i] * (d.Marks[m] - mean) * (d.Marks[m] - mean)).Sum();
            width[m] = Math.Max(LeastWidth, KernelWidth * Math.Sqrt(variance));
        }
        var bell = BellOfMarks.Of([.. draws.Select(d => d.Marks)], [.. Courses.Select(offs)], weights, power);
        return new(count, [.. draws.Select((d, i) => (d, weights[i])).Where(k => k.Item2 > 1e-6)], width, bell);
    }

    private WaterDraw Draw(Round round, Random chance)
    {
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        if (round.Kernels.Count == 0 || chance.NextDouble() < FromPrior)
            return new(places.Count > 0 ? chance.Next(places.Count) : 0, [.. Enumerable.Range(0, WaterCourse.Marks).Select(_ => Normal())]);
        var kernel = Pick(round.Kernels.Select(k => k.Weight), chance);
        var from = round.Kernels[kernel].Draw;
        var place = places.Count > 0 ? Pick(PlaceShares(from.Place), chance) : 0;
        if (chance.NextDouble() < FromBell) return new(place, round.Bell!.Draw(Normal));
        return new(place, [.. from.Marks.Select((m, i) => m + (round.Width[i] * Normal()))]);
    }

    private static int Pick(IEnumerable<double> shares, Random chance)
    {
        var all = shares.ToList();
        var at = chance.NextDouble() * all.Sum();
        for (var i = 0; i < all.Count; i++)
            if ((at -= all[i]) < 0) return i;
        return all.Count - 1;
    }

    private readonly Dictionary<int, double[]> placeShares = [];

    private double[] PlaceShares(int from) => placeShares.TryGetValue(from, out var known) ? known : placeShares[from] = Shares(from);

    private double[] Shares(int from)
    {
        var shares = places.Select(p => Math.Exp(-0.5 * Math.Pow(p.DistanceMm(places[from]) / PlaceMm, 2))).ToArray();
        var sum = shares.Sum();
        return [.. shares.Select(s => s / sum)];
    }

    private double LogPrior(WaterDraw draw) => draw.Marks.Sum(m => -0.5 * m * m) - (WaterCourse.Marks * HalfLogTwoPi) - Math.Log(Math.Max(1, places.Count));

    private double LogMixture(WaterDraw draw)
    {
        var all = (double)rounds.Sum(r => r.Count);
        return LogSum([.. rounds.Select(r => Math.Log(r.Count / all) + LogProposal(r, draw))]);
    }

    private double LogProposal(Round round, WaterDraw draw)
    {
        var prior = LogPrior(draw);
        if (round.Kernels.Count == 0) return prior;
        List<double> terms = [Math.Log(FromPrior) + prior];
        var atAny = 0.0;
        foreach (var (from, weight) in round.Kernels)
        {
            var atPlace = places.Count > 0 ? Math.Max(1e-300, PlaceShares(from.Place)[draw.Place]) : 1;
            atAny += weight * atPlace;
            var log = Math.Log((1 - FromPrior) * (1 - FromBell) * weight * atPlace) - (WaterCourse.Marks * HalfLogTwoPi);
            for (var m = 0; m < round.Width.Length; m++)
            {
                var z = (draw.Marks[m] - from.Marks[m]) / round.Width[m];
                log -= (0.5 * z * z) + Math.Log(round.Width[m]);
            }
            terms.Add(log);
        }
        terms.Add(Math.Log((1 - FromPrior) * FromBell * atAny) + round.Bell!.LogDensity(draw.Marks));
        return LogSum(terms);
    }

    private static readonly double HalfLogTwoPi = 0.5 * Math.Log(2 * Math.PI);

    /// <summary>Weights that sum to 1, raised to the power at which so many of them count: 1 where enough do anyway.</summary>
    public static double[] Tempered(IReadOnlyList<double> logWeights, double counting) => Tempered(logWeights, counting, out _);

    private static double[] Tempered(IReadOnlyList<double> logWeights, double counting, out double power)
    {
        double low = 0, high = 1;
        power = 1;
        if (Effective(Normalised(logWeights, 1)) >= counting) return Normalised(logWeights, 1);
        for (var i = 0; i < 30; i++)
        {
            var middle = (low + high) / 2;
            if (Effective(Normalised(logWeights, middle)) >= counting) low = middle;
            else high = middle;
        }
        power = low;
        return Normalised(logWeights, low);
    }

    /// <summary>How many equal weights the weights are worth.</summary>
    public static double Effective(IReadOnlyList<double> weights) => 1 / weights.Sum(w => w * w);

    private static double[] Normalised(IReadOnlyList<double> logWeights, double power)
    {
        var most = logWeights.Max();
        var raised = logWeights.Select(l => Math.Exp(power * (l - most))).ToArray();
        var sum = raised.Sum();
        return [.. raised.Select(w => w / sum)];
    }

    internal static double LogSum(IReadOnlyList<double> logs)
    {
        var most = logs.Max();
        return double.IsNegativeInfinity(most) ? most : most + Math.Log(logs.Sum(l => Math.Exp(l - most)));
    }
}
