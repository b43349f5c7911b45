namespace Wainwright.Methods.Moisture.Field;

/// <summary>Where the next reading would save most: by how much it lowers the expected cost of keeping what is wet and cutting what is dry.</summary>
/// <remarks>
/// Each cell is judged keep or cut by what costs less on average. A reading moves all means that go together with its cell; the
/// gain is today's expected cost less the expected cost after it, over what it may show. Places are taken one after another, each
/// with the earlier ones read (their spread known, their outcome not). The likeliest range and spread stands for all.
/// </remarks>
public static class ReadingWorth
{
    /// <summary>Preposterior analysis, Raiffa and Schlaifer 1961; the costs are the caller's.</summary>
    public static readonly Basis Basis = new(
        Source: "Raiffa and Schlaifer 1961, value of an observation before it is made, from memory; picked one after another",
        Assumes: ["cells are kept or cut one by one", "the map's spread is right"],
        Caution: "Says where a reading tells most about this map. Where the map is wrong about the way water went, so is this.",
        How: Provenance.FromMemory);

    /// <param name="ThresholdPercent">Wet is over this [%].</param>
    /// <param name="KeptWetPerM2">Cost of a square metre kept and wet, any unit, above 0.</param>
    /// <param name="CutDryPerM2">Cost of a square metre cut and dry, the same unit, above 0.</param>
    /// <param name="SigmaPoints">Standard deviation of the reading to come [points], above 0.</param>
    public sealed record Stakes(double ThresholdPercent, double KeptWetPerM2, double CutDryPerM2, double SigmaPoints);

    /// <param name="Cell">Where.</param>
    /// <param name="Cost">What reaching and reading it costs, in the unit of the stakes, 0 or more.</param>
    public readonly record struct Candidate(int Cell, double Cost);

    /// <param name="Candidate">Which of the candidates.</param>
    /// <param name="Gain">Fall of the expected cost, in the unit of the stakes.</param>
    /// <param name="LeftCost">Expected cost that is left after it and the earlier ones.</param>
    public sealed record Place(int Candidate, double Gain, double LeftCost);

    // five-point Gauss–Hermite for a normal curve: places and weights
    static readonly (double At, double Weight)[] Outcomes =
    [
        (-2.856970013872806, 0.011257411327721), (-1.355626179974266, 0.222075922005613), (0, 0.533333333333333), (1.355626179974266, 0.222075922005613), (2.856970013872806, 0.011257411327721),
    ];

    /// <summary>Expected cost of judging every cell as it stands.</summary>
    public static double CostNow(DampPosterior map, Stakes stakes)
    {
        var m = map.Likeliest;
        double cost = 0;
        for (var i = 0; i < m.Mean.Length; i++) cost += Loss(map, stakes, i, m.Mean[i], m.Spread[i]);
        return cost;
    }

    /// <summary>The best next places, best first by gain less cost; fewer when none of the rest gains anything.</summary>
    /// <param name="map">The map as it is.</param>
    /// <param name="stakes">What being wrong costs.</param>
    /// <param name="candidates">Where a reading may be taken.</param>
    /// <param name="count">How many are wanted, 0 or more.</param>
    public static IReadOnlyList<Place> Best(DampPosterior map, Stakes stakes, IReadOnlyList<Candidate> candidates, int count)
    {
        Must.BeWithin(stakes.ThresholdPercent, 0, 100);
        Must.BePositive(stakes.KeptWetPerM2);
        Must.BePositive(stakes.CutDryPerM2);
        Must.BePositive(stakes.SigmaPoints);
        foreach (var c in candidates) Must.NotBeNegative(c.Cost);
        var mean = map.Likeliest.Mean;
        var variance = map.Likeliest.Spread.Select(s => s * s).ToArray();
        var columns = candidates.Select(c => map.Covariance(c.Cell)).ToArray();
        double Noise(int cell) => Math.Pow(map.Scale.Doubt(stakes.SigmaPoints, map.Scale.From(mean[cell])), 2);
        List<Place> chosen = [];
        while (chosen.Count < count)
        {
            var best = -1;
            double bestGain = 0, bestNet = double.NegativeInfinity;
            for (var c = 0; c < candidates.Count; c++)
            {
                if (chosen.Any(p => p.Candidate == c)) continue;
                var gain = Gain(map, stakes, mean, variance, columns[c], variance[candidates[c].Cell] + Noise(candidates[c].Cell));
                if (gain <= 1e-9 || gain - candidates[c].Cost <= bestNet) continue;
                (best, bestGain, bestNet) = (c, gain, gain - candidates[c].Cost);
            }
            if (best < 0) break;
            var taken = (double[])columns[best].Clone();
            var total = variance[candidates[best].Cell] + Noise(candidates[best].Cell);
            for (var c = 0; c < candidates.Count; c++)
            {
                var share = taken[candidates[c].Cell] / total;
                for (var i = 0; i < variance.Length; i++) columns[c][i] -= share * taken[i];
            }
            for (var i = 0; i < variance.Length; i++) variance[i] = Math.Max(1e-9, variance[i] - (taken[i] * taken[i] / total));
            double left = 0;
            for (var i = 0; i < variance.Length; i++) left += Loss(map, stakes, i, mean[i], Math.Sqrt(variance[i]));
            chosen.Add(new(best, bestGain, left));
        }
        return chosen;
    }

    static double Gain(DampPosterior map, Stakes stakes, double[] mean, double[] variance, double[] column, double total)
    {
        double gain = 0;
        var root = Math.Sqrt(total);
        for (var i = 0; i < mean.Length; i++)
        {
            var shift = column[i] / root;
            if (shift * shift < 1e-4 * variance[i]) continue;
            var rest = Math.Sqrt(Math.Max(1e-9, variance[i] - (shift * shift)));
            var now = Loss(map, stakes, i, mean[i], Math.Sqrt(variance[i]));
            double after = 0;
            foreach (var (at, weight) in Outcomes) after += weight * Loss(map, stakes, i, mean[i] + (shift * at), rest);
            gain += now - after;
        }
        return gain;
    }

    static double Loss(DampPosterior map, Stakes stakes, int cell, double mean, double spread)
    {
        var wet = NormalCurve.Below((mean - map.Scale.To(stakes.ThresholdPercent)) / spread);
        return map.Net.Cells[cell].AreaMm2 * 1e-6 * Math.Min(wet * stakes.KeptWetPerM2, (1 - wet) * stakes.CutDryPerM2);
    }
}
