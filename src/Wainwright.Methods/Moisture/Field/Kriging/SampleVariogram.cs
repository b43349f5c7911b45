namespace Wainwright.Methods.Moisture.Field.Kriging;

/// <summary>Half the mean squared difference of pairs, by distance, and the curve that fits it.</summary>
public static class SampleVariogram
{
    /// <summary>Method of moments, and the fit by weighted squares.</summary>
    public static readonly Basis Basis = new(
        Source: "method of moments: Matheron, Economic Geology 58 (1963), from memory; a third of the diagonal, 15 bins and weights of pairs over squared distance as the printed output of an open geostatistics package has them",
        Assumes: ["the same spread everywhere and in every direction", "no trend"],
        Caution: "A curve from few pairs is a guess: look at the pairs in each bin.",
        How: Provenance.FromMemory);

    /// <param name="Pairs">Number of pairs.</param>
    /// <param name="Distance">Their mean distance.</param>
    /// <param name="Gamma">Half their mean squared difference.</param>
    public readonly record struct Bin(int Pairs, double Distance, double Gamma);

    /// <summary>The bins of all pairs nearer than a third of the diagonal of the box round the places; empty bins left out.</summary>
    /// <param name="places">Places, two or more.</param>
    /// <param name="values">A value each.</param>
    /// <param name="bins">Number of equal bins, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Counts that do not fit.</exception>
    public static IReadOnlyList<Bin> Of(IReadOnlyList<(double X, double Y)> places, IReadOnlyList<double> values, int bins = 15)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(places.Count, 2);
        ArgumentOutOfRangeException.ThrowIfNotEqual(values.Count, places.Count);
        ArgumentOutOfRangeException.ThrowIfLessThan(bins, 1);
        double wide = places.Max(p => p.X) - places.Min(p => p.X), high = places.Max(p => p.Y) - places.Min(p => p.Y);
        var cutoff = Math.Sqrt((wide * wide) + (high * high)) / 3;
        var sums = new (int Pairs, double Distance, double Square)[bins];
        for (var i = 0; i < places.Count; i++)
            for (var j = 0; j < i; j++)
            {
                var h = LinearPrediction.Distance(places[i], places[j]);
                if (h > cutoff) continue;
                // a pair on the border counts in the nearer bin
                var b = Math.Clamp((int)Math.Ceiling(h / cutoff * bins) - 1, 0, bins - 1);
                var d = values[i] - values[j];
                sums[b] = (sums[b].Pairs + 1, sums[b].Distance + h, sums[b].Square + (d * d));
            }
        return [.. sums.Where(s => s.Pairs > 0).Select(s => new Bin(s.Pairs, s.Distance / s.Pairs, s.Square / s.Pairs / 2))];
    }

    /// <summary>The curve with the least weighted squares, a bin weighing its pairs over its squared distance; and that sum.</summary>
    /// <remarks>Nugget and sill follow from the range in closed form; the range is searched between the first bin and three times the last.</remarks>
    /// <param name="bins">The bins, three or more.</param>
    /// <param name="shape">The curve.</param>
    public static (VariogramModel Model, double WeightedSquares) Fit(IReadOnlyList<Bin> bins, VariogramModel.Curve shape)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(bins.Count, 3);
        double low = bins[0].Distance, high = 3 * bins[^1].Distance;
        // a coarse look first: the sum may have more than one valley
        const int Looks = 200;
        var best = Enumerable.Range(0, Looks + 1).Select(i => low + ((high - low) * i / Looks)).MinBy(r => With(bins, shape, r).Squares);
        var (a, b) = (Math.Max(low, best - ((high - low) / Looks)), Math.Min(high, best + ((high - low) / Looks)));
        var golden = (Math.Sqrt(5) - 1) / 2;
        for (var i = 0; i < 80; i++)
        {
            var (c, d) = (b - (golden * (b - a)), a + (golden * (b - a)));
            if (With(bins, shape, c).Squares < With(bins, shape, d).Squares) b = d;
            else a = c;
        }
        return With(bins, shape, (a + b) / 2);
    }

    static (VariogramModel Model, double Squares) With(IReadOnlyList<Bin> bins, VariogramModel.Curve shape, double range)
    {
        var unit = new VariogramModel(shape, 0, 1, range);
        double w0 = 0, w1 = 0, w2 = 0, y0 = 0, y1 = 0;
        foreach (var bin in bins)
        {
            var (w, f) = (bin.Pairs / (bin.Distance * bin.Distance), unit.Rise(bin.Distance));
            w0 += w;
            w1 += w * f;
            w2 += w * f * f;
            y0 += w * bin.Gamma;
            y1 += w * f * bin.Gamma;
        }
        var det = (w0 * w2) - (w1 * w1);
        var (nugget, sill) = det > 1e-12 * w0 * w2 ? (((w2 * y0) - (w1 * y1)) / det, ((w0 * y1) - (w1 * y0)) / det) : (0, y1 / w2);
        if (nugget < 0) (nugget, sill) = (0, y1 / w2);
        var model = new VariogramModel(shape, nugget, sill, range);
        return (model, bins.Sum(bin => bin.Pairs / (bin.Distance * bin.Distance) * Math.Pow(bin.Gamma - model.Gamma(bin.Distance), 2)));
    }
}
