namespace Wainwright.Methods.Moisture.Field;

/// <summary>Where the next reading would save most: by how much it lowers the expected cost of keeping what is wet and cutting what is dry.</summary>
/// <remarks>
/// Each cell is judged keep or cut by what costs less on average. A reading moves all means that go together with its cell; the
/// gain is today's expected cost less the expected cost after it, over what it may show. Places are taken one after another, each
/// with the earlier ones read (their spread known, their outcome not). The three likeliest combinations stand for all; which of them is
/// right is told by the reading too.
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

    // what a reading may show, by how likely it is to show less: edges of the slices, finer at both ends
    static readonly double[] Slices = [0, 0.02, 0.07, 0.2, 0.5, 0.8, 0.93, 0.98, 1];

    // combinations that are carried along, likeliest first
    const int Carried = 3;

    /// <summary>Expected cost of judging every cell as it stands.</summary>
    public static double CostNow(DampPosterior map, Stakes stakes) => new State(map, stakes, []).Cost();

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
        var state = new State(map, stakes, [.. candidates.Select(c => c.Cell)]);
        List<Place> chosen = [];
        var gains = new double[candidates.Count];
        while (chosen.Count < count)
        {
            Parallel.For(0, candidates.Count, c => gains[c] = chosen.Any(p => p.Candidate == c) ? 0 : state.Gain(c));
            var best = Enumerable.Range(0, candidates.Count).Where(c => gains[c] > 1e-9).OrderByDescending(c => gains[c] - candidates[c].Cost).Cast<int?>().FirstOrDefault();
            if (best is not { } taken) break;
            state.Take(taken);
            chosen.Add(new(taken, gains[taken], state.Cost()));
        }
        return chosen;
    }

    /// <summary>The likeliest combinations side by side, as they stand after the places taken so far.</summary>
    sealed class State
    {
        readonly DampPosterior map;
        readonly Stakes stakes;
        readonly int[] at;
        readonly double[] weight;
        readonly double[][] mean, variance;

        // member, candidate, cell
        readonly double[][][] together;

        // threshold over the dry board, and the dry board's variance, by cell
        readonly double[] over, doubt2;

        public State(DampPosterior map, Stakes stakes, int[] at)
        {
            (this.map, this.stakes, this.at) = (map, stakes, at);
            var members = map.Members.OrderByDescending(m => m.Weight).Take(Carried).ToArray();
            weight = [.. members.Select(m => m.Weight / members.Sum(k => k.Weight))];
            mean = [.. members.Select(m => m.Mean)];
            variance = [.. members.Select(m => m.Spread.Select(s => s * s).ToArray())];
            together = [.. members.Select(m => map.Covariances(m, at))];
            over = [.. Enumerable.Range(0, map.Net.Cells.Count).Select(i => stakes.ThresholdPercent - map.Ground.DryAt(i))];
            doubt2 = [.. Enumerable.Range(0, map.Net.Cells.Count).Select(i => Math.Pow(map.Ground.Doubt[map.Ground.GroupOf[i]], 2))];
        }

        public double Cost()
        {
            double cost = 0;
            for (var i = 0; i < over.Length; i++)
            {
                double wet = 0;
                for (var m = 0; m < weight.Length; m++) wet += weight[m] * Wet(i, mean[m][i], variance[m][i]);
                cost += Loss(i, wet);
            }
            return cost;
        }

        double Wet(int i, double at, double square) => NormalCurve.Below((at - over[i]) / Math.Sqrt(square + doubt2[i]));

        double Loss(int i, double wet) => map.Net.Cells[i].AreaMm2 * 1e-6 * Math.Min(wet * stakes.KeptWetPerM2, (1 - wet) * stakes.CutDryPerM2);

        /// <summary>What each slice of outcomes does: the members' new weights, and by how many of the place's own covariances means and variances move.</summary>
        (double Chance, double[] Weight, double[] Shift, double[] Fall)[] Outcomes(int candidate)
        {
            var cell = at[candidate];
            var (dry, sigma) = (map.Ground.DryAt(cell), Math.Sqrt((stakes.SigmaPoints * stakes.SigmaPoints) + doubt2[cell]));
            var told = new (double, double[], double[], double[])[Slices.Length - 1];
            for (var s = 0; s + 1 < Slices.Length; s++)
            {
                var seen = new FieldObservation(cell, dry + Shown((Slices[s] + Slices[s + 1]) / 2, cell, sigma), stakes.SigmaPoints);
                var (weights, shift, fall) = (new double[weight.Length], new double[weight.Length], new double[weight.Length]);
                for (var m = 0; m < weight.Length; m++)
                {
                    var (log, newMean, newVariance) = Ramp.Given(seen, dry, sigma, mean[m][cell], variance[m][cell]);
                    weights[m] = weight[m] * Math.Exp(log);
                    shift[m] = (newMean - mean[m][cell]) / variance[m][cell];
                    fall[m] = Math.Max(0, variance[m][cell] - newVariance) / (variance[m][cell] * variance[m][cell]);
                }
                var sum = Math.Max(double.Epsilon, weights.Sum());
                told[s] = (Slices[s + 1] - Slices[s], [.. weights.Select(w => w / sum)], shift, fall);
            }
            return told;
        }

        /// <summary>What the meter shows over the dry board with a given chance of showing less [points].</summary>
        double Shown(double share, int cell, double sigma)
        {
            var (low, high) = (-6 * sigma, (6 * sigma) + Enumerable.Range(0, weight.Length).Max(m => Math.Max(0, mean[m][cell] + (6 * Math.Sqrt(variance[m][cell])))));
            while (high - low > 1e-3)
            {
                var middle = (low + high) / 2;
                double below = 0;
                for (var m = 0; m < weight.Length; m++) below += weight[m] * Ramp.Below(middle, mean[m][cell], Math.Sqrt(variance[m][cell]), sigma);
                if (below < share) low = middle;
                else high = middle;
            }
            return (low + high) / 2;
        }

        public double Gain(int candidate)
        {
            var outcomes = Outcomes(candidate);
            double gain = 0;
            for (var i = 0; i < over.Length; i++)
            {
                // a cell that hardly goes together with the place learns nothing
                var far = true;
                for (var m = 0; m < weight.Length && far; m++) far = together[m][candidate][i] * together[m][candidate][i] < 1e-3 * variance[m][i] * variance[m][at[candidate]];
                if (far) continue;
                double before = 0, after = 0;
                foreach (var (chance, weights, shift, fall) in outcomes)
                {
                    double wet = 0;
                    for (var m = 0; m < weights.Length; m++)
                    {
                        var c = together[m][candidate][i];
                        wet += weights[m] * Wet(i, mean[m][i] + (c * shift[m]), Math.Max(1e-9, variance[m][i] - (c * c * fall[m])));
                    }
                    before += chance * wet;
                    after += chance * Loss(i, wet);
                }
                // today's judgement by the same slices, so that knowing more never costs
                gain += Loss(i, before) - after;
            }
            return gain;
        }

        /// <summary>The place as read: its spread known, its outcome not.</summary>
        public void Take(int candidate)
        {
            var outcomes = Outcomes(candidate);
            for (var m = 0; m < weight.Length; m++)
            {
                var fall = outcomes.Sum(o => o.Chance * o.Fall[m]);
                var taken = (double[])together[m][candidate].Clone();
                for (var i = 0; i < taken.Length; i++) variance[m][i] = Math.Max(1e-9, variance[m][i] - (taken[i] * taken[i] * fall));
                for (var c = 0; c < at.Length; c++)
                {
                    var share = taken[at[c]] * fall;
                    for (var i = 0; i < taken.Length; i++) together[m][c][i] -= share * taken[i];
                }
            }
        }
    }
}
