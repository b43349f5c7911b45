using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>What a round of courses is drawn from: prior times the likelihood of the guess, brought to a density by a pool of draws that cost next to nothing.</summary>
internal sealed class GuessedDraws
{
    // draws of each go of the pool, goes, share of them that stays as wide as before any reading; places smeared so far. Own rules
    private const int Pool = 1200, Goes = 4;

    private const double Wide = 0.1, PlaceMm = 100;

    private readonly IReadOnlyList<Place> places;

    private readonly Func<WaterDraw, double> logGuess;

    private readonly List<(BellOfMarks Bell, double[] AtPlace)> bells = [];

    private readonly List<WaterDraw> pool = [];

    private readonly double[] shares = [];

    private readonly double power, logMean;

    /// <param name="places">Places it may come in at; none for condensation.</param>
    /// <param name="logGuess">Logarithm of the guessed likelihood.</param>
    /// <param name="counting">So many of the pool are to count, else the guess is softened.</param>
    /// <param name="chance">Where draws come from.</param>
    /// <param name="stop">Calls it off.</param>
    public GuessedDraws(IReadOnlyList<Place> places, Func<WaterDraw, double> logGuess, double counting, Random chance, CancellationToken stop)
    {
        (this.places, this.logGuess) = (places, logGuess);
        List<double> guessed = [], denser = [];
        for (var go = 0; go < Goes; go++)
        {
            var fresh = Enumerable.Range(0, Pool).Select(_ => Fresh(chance)).ToArray();
            var logs = new double[Pool];
            Parallel.For(0, Pool, new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = Environment.ProcessorCount }, i => logs[i] = logGuess(fresh[i]));
            pool.AddRange(fresh);
            guessed.AddRange(logs);
            for (var i = 0; i < denser.Count; i++) denser[i] += Denser(bells[^1], pool[i]);
            denser.AddRange(fresh.Select(d => 1 + bells.Sum(b => Denser(b, d))));
            // goes are as long as each other, so that the mixture they came from is their plain mean
            var over = denser.Select(d => -Math.Log(d / (bells.Count + 1))).ToArray();
            shares = Weights.Tempered(guessed, over, counting, out power);
            logMean = Weights.LogSum([.. guessed.Select((g, i) => (power * g) + over[i])]) - Math.Log(pool.Count);
            if (go < Goes - 1) bells.Add((BellOfMarks.Of([.. pool.Select(d => d.Marks)], shares), AtPlaces()));
        }
    }

    /// <summary>Logarithm of how many times denser a draw is here than before any reading.</summary>
    /// <param name="draw">The draw.</param>
    public double LogOverPrior(WaterDraw draw) => (power * logGuess(draw)) - logMean;

    /// <summary>Draws, taken evenly along the weights of the pool.</summary>
    /// <param name="count">How many.</param>
    /// <param name="chance">Where they come from.</param>
    public IEnumerable<WaterDraw> Take(int count, Random chance)
    {
        var at = chance.NextDouble() / count;
        double passed = 0;
        for (var i = 0; i < pool.Count; i++)
            for (passed += shares[i]; at < passed; at += 1.0 / count) yield return pool[i];
    }

    /// <summary>A draw as before any reading.</summary>
    /// <param name="places">Number of places.</param>
    /// <param name="chance">Where it comes from.</param>
    public static WaterDraw Prior(int places, Random chance) => new(places > 0 ? chance.Next(places) : 0, [.. Enumerable.Range(0, WaterCourse.Marks).Select(_ => Normal(chance))]);

    private WaterDraw Fresh(Random chance)
    {
        if (bells.Count == 0 || chance.NextDouble() < Wide) return Prior(places.Count, chance);
        var (bell, atPlace) = bells[^1];
        return new(places.Count > 0 ? Pick(atPlace, chance) : 0, bell.Draw(() => Normal(chance)));
    }

    /// <summary>How many times denser a go of the pool is at a draw than before any reading.</summary>
    private double Denser((BellOfMarks Bell, double[] AtPlace) go, WaterDraw draw)
    {
        var prior = -draw.Marks.Length * 0.5 * Math.Log(2 * Math.PI);
        foreach (var mark in draw.Marks) prior -= 0.5 * mark * mark;
        return Wide + ((1 - Wide) * Math.Exp(go.Bell.LogDensity(draw.Marks) - prior) * (places.Count > 0 ? go.AtPlace[draw.Place] * places.Count : 1));
    }

    /// <summary>Chance of each place by the pool, smeared to its neighbours.</summary>
    private double[] AtPlaces()
    {
        var at = new double[places.Count];
        for (var i = 0; i < pool.Count; i++)
            if (places.Count > 0) at[pool[i].Place] += shares[i];
        double[] smeared = new double[at.Length];
        for (var p = 0; p < at.Length; p++)
        {
            var near = places.Select(q => Math.Exp(-0.5 * Math.Pow(q.DistanceMm(places[p]) / PlaceMm, 2))).ToArray();
            var all = near.Sum();
            for (var q = 0; q < at.Length; q++) smeared[q] += at[p] * near[q] / all;
        }
        return smeared;
    }

    private static int Pick(double[] shares, Random chance)
    {
        var at = chance.NextDouble() * shares.Sum();
        for (var i = 0; i < shares.Length; i++)
            if ((at -= shares[i]) < 0) return i;
        return shares.Length - 1;
    }

    private static double Normal(Random chance) => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
