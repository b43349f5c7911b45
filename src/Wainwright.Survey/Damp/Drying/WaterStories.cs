using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Draws courses of one story and weighs them by the readings, each round from where the courses so far let it be guessed that the readings are met.</summary>
/// <remarks>
/// Every draw is weighed by the likelihood of its own computed course over the mixture of all rounds (Cornuet, Marin, Mira, Robert 2012, Scand. J. Stat. 39, from memory);
/// the prior stands above and below and drops out. The guess (<see cref="CourseGuess"/>) only chooses what is computed. The mean weight is how well the story as a whole fits.
/// </remarks>
internal sealed class WaterStories(IReadOnlyList<Place> places, PatchFit fit, Func<WaterDraw, WaterCourse> course, Func<WaterDraw, double[]> hint)
{
    // shares of the rounds; of each but the first so much stays as wide as before any reading; of the pool this many for each draw are to count. Own rules
    private static readonly double[] Rounds = [0.25, 0.15, 0.2, 0.2, 0.2];

    private const double FromPrior = 0.1, CountingEach = 8;

    private readonly List<WaterDraw> draws = [];

    private readonly List<double> likelihoods = [];

    private readonly List<(int Count, GuessedDraws? From)> rounds = [];

    /// <summary>The courses computed.</summary>
    public List<WaterCourse> Courses { get; } = [];

    /// <summary>Logarithm of each course's weight: prior times likelihood over what it was drawn from.</summary>
    public double[] LogWeights { get; private set; } = [];

    /// <summary>Logarithm of how well the story fits: the mean weight.</summary>
    public double LogEvidence => Weights.LogSum(LogWeights) - Math.Log(LogWeights.Length);

    /// <summary>Courses that the readings leave.</summary>
    public double Effective => Weights.Effective(Weights.Tempered(LogWeights, 0));

    /// <summary>The place that most weight came in at.</summary>
    /// <param name="weights">Weight of each course.</param>
    public Place LikelyPlace(IReadOnlyList<double> weights) => places[draws.Select((d, i) => (d.Place, weights[i])).GroupBy(p => p.Place).MaxBy(g => g.Sum(p => p.Item2))!.Key];

    /// <summary>Draws and weighs.</summary>
    /// <param name="count">Courses.</param>
    /// <param name="begin">Where the drawing begins.</param>
    /// <param name="told">Told after each course.</param>
    /// <param name="stop">Calls it off.</param>
    public void Run(int count, int begin, Action told, CancellationToken stop)
    {
        var left = count;
        CourseGuess? guess = null;
        for (var r = 0; r < Rounds.Length && left > 0; r++)
        {
            var now = r == Rounds.Length - 1 ? left : Math.Min(left, Math.Max(1, (int)Math.Round(count * Rounds[r])));
            left -= now;
            var chance = new Random((begin * 31) + r);
            GuessedDraws? from = null;
            if (draws.Count > 0)
            {
                var learnt = guess = CourseGuess.Of([.. draws.Select(Point)], [.. draws.Select(hint)], [.. Courses.Select(fit.Offs)], guess?.Reaches, r);
                from = new(places, d => Guessed(learnt, d), CountingEach * now, chance, stop);
            }
            Compute([.. Draw(from, now, chance)], from, told, stop);
        }
    }

    private void Compute(List<WaterDraw> fresh, GuessedDraws? from, Action told, CancellationToken stop)
    {
        var made = new WaterCourse[fresh.Count];
        Parallel.For(0, fresh.Count, new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = Environment.ProcessorCount }, i =>
        {
            made[i] = course(fresh[i]);
            told();
        });
        rounds.Add((fresh.Count, from));
        draws.AddRange(fresh);
        Courses.AddRange(made);
        likelihoods.AddRange(made.Select(c => fit.LogLikelihood(fit.Offs(c))));
        LogWeights = [.. draws.Select((d, i) => likelihoods[i] - LogMixtureOverPrior(d))];
    }

    private IEnumerable<WaterDraw> Draw(GuessedDraws? from, int count, Random chance)
    {
        var wide = from is null ? count : (int)Math.Round(FromPrior * count);
        var fresh = Enumerable.Range(0, wide).Select(_ => GuessedDraws.Prior(places.Count, chance)).ToList();
        return from is null || wide == count ? fresh : fresh.Concat(from.Take(count - wide, chance)).Take(count);
    }

    private double Guessed(CourseGuess guess, WaterDraw draw)
    {
        var (off, variance) = guess.At(Point(draw), hint(draw));
        return fit.LogLikelihood(off, variance);
    }

    private double[] Point(WaterDraw draw) => CourseGuess.Point(draw, places.Count > 0 ? places[draw.Place] : new(0, 0, 0));

    private double LogMixtureOverPrior(WaterDraw draw)
    {
        double sum = 0, all = rounds.Sum(r => r.Count);
        foreach (var (count, from) in rounds)
            sum += count / all * (from is null ? 1 : FromPrior + ((1 - FromPrior) * Math.Exp(from.LogOverPrior(draw))));
        return Math.Log(sum);
    }
}
