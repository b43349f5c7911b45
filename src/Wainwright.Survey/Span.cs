using System.Globalization;

namespace Wainwright.Survey;

/// <summary>A quantity in doubt: the true value lies between low and high, most likely near likely.</summary>
/// <param name="Low">Smallest value that is credible.</param>
/// <param name="Likely">Most likely value.</param>
/// <param name="High">Largest value that is credible.</param>
public readonly record struct Span(double Low, double Likely, double High)
{
    /// <summary>A quantity without doubt: a plate, a rule.</summary>
    public static Span Exactly(double value) => new(value, value, value);

    /// <summary>A value and the half-width of its doubt.</summary>
    public static Span Of(double value, double plusMinus) => new(value - plusMinus, value, value + plusMinus);

    /// <summary>Every value through the same rising function.</summary>
    public Span Rising(Func<double, double> of) => new(of(Low), of(Likely), of(High));

    /// <summary>Sum end by end: both doubts at their worst together.</summary>
    public static Span operator +(Span a, Span b) => new(a.Low + b.Low, a.Likely + b.Likely, a.High + b.High);

    /// <summary>Sum end by end: both doubts at their worst together.</summary>
    public static Span Add(Span left, Span right) => left + right;

    /// <summary>Times a number of either sign.</summary>
    public Span Times(double factor) => factor >= 0
        ? new(Low * factor, Likely * factor, High * factor)
        : new(High * factor, Likely * factor, Low * factor);

    /// <summary>Sum of quantities whose doubts are independent: half-widths add as squares.</summary>
    public static Span SumOfIndependent(IEnumerable<Span> spans)
    {
        double likely = 0, down = 0, up = 0;
        foreach (var s in spans)
        {
            likely += s.Likely;
            down += (s.Likely - s.Low) * (s.Likely - s.Low);
            up += (s.High - s.Likely) * (s.High - s.Likely);
        }
        return new(likely - Math.Sqrt(down), likely, likely + Math.Sqrt(up));
    }

    /// <inheritdoc/>
    public override string ToString() => Low == High
        ? string.Create(CultureInfo.InvariantCulture, $"{Likely:0.###}")
        : string.Create(CultureInfo.InvariantCulture, $"{Likely:0.###} ({Low:0.###} to {High:0.###})");
}
