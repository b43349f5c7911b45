namespace Wainwright.Methods.Retention.Doubt;

/// <summary>Strengths from standard normal numbers: one for each unknown, then one for each fixing.</summary>
sealed class Luck
{
    private readonly IReadOnlyList<DoubtfulFixing> _fixings;
    private readonly int[] _unknown;
    private readonly double[] _shared, _own;

    public IReadOnlyList<string> Unknowns { get; }
    public int Numbers => Unknowns.Count + _fixings.Count;
    public double[] PullN { get; }
    public double[] ShearN { get; }

    public Luck(IReadOnlyList<DoubtfulFixing> fixings)
    {
        _fixings = fixings;
        foreach (var fixing in fixings)
        {
            Ordered(fixing.PullN, fixing.Unknown);
            Ordered(fixing.ShearN, fixing.Unknown);
        }
        Unknowns = [.. fixings.Select(f => f.Unknown).Distinct()];
        _unknown = [.. fixings.Select(f => Unknowns.ToList().IndexOf(f.Unknown))];
        _shared = [.. fixings.Select(f => Math.Sqrt(Must.BeWithin(f.SharedShare, 0, 1)))];
        _own = [.. fixings.Select(f => Math.Sqrt(1 - f.SharedShare))];
        (PullN, ShearN) = (new double[fixings.Count], new double[fixings.Count]);
    }

    /// <summary>Sets the strengths.</summary>
    public void Take(double[] numbers)
    {
        for (var i = 0; i < _fixings.Count; i++)
        {
            var z = Of(numbers, i);
            (PullN[i], ShearN[i]) = (DoubtfulFixing.At(_fixings[i].PullN, z), DoubtfulFixing.At(_fixings[i].ShearN, z));
        }
    }

    /// <summary>Slope of something by each number, from its slope by each strength.</summary>
    public double[] Slope(double[] numbers, double[] byPull, double[] byShear)
    {
        const double Step = 1e-4;
        var slope = new double[Numbers];
        for (var i = 0; i < _fixings.Count; i++)
        {
            var z = Of(numbers, i);
            var by = (byPull[i] * (DoubtfulFixing.At(_fixings[i].PullN, z + Step) - DoubtfulFixing.At(_fixings[i].PullN, z - Step))
                + byShear[i] * (DoubtfulFixing.At(_fixings[i].ShearN, z + Step) - DoubtfulFixing.At(_fixings[i].ShearN, z - Step))) / (2 * Step);
            slope[_unknown[i]] += by * _shared[i];
            slope[Unknowns.Count + i] = by * _own[i];
        }
        return slope;
    }

    /// <summary>Standard normal numbers, after Box and Muller.</summary>
    public static void Draw(Random chance, double[] numbers)
    {
        for (var k = 0; k < numbers.Length; k += 2)
        {
            var far = Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble()));
            var (sin, cos) = Math.SinCos(2 * Math.PI * chance.NextDouble());
            numbers[k] = far * cos;
            if (k + 1 < numbers.Length) numbers[k + 1] = far * sin;
        }
    }

    private double Of(double[] numbers, int fixing) => _shared[fixing] * numbers[_unknown[fixing]] + _own[fixing] * numbers[Unknowns.Count + fixing];

    private static void Ordered(in Spread spread, string name)
    {
        if (!(Must.NotBeNegative(spread.Low) <= spread.Likely && spread.Likely <= Must.BeFinite(spread.High)))
            throw new ArgumentOutOfRangeException(name, spread, $"{name}: low, likely and high must rise");
    }
}
