namespace Wainwright.Survey.Damp.Drying;

/// <summary>How far materials and airing are from what is likely, in standard deviations of their logarithm.</summary>
/// <param name="Resistance">Resistance against vapour: above 0 stops more, dries slower [-].</param>
/// <param name="Wicking">Wicking of free water: above 0 wicks faster [-].</param>
/// <param name="Airing">Airing of hollows: above 0 airs more [-].</param>
internal readonly record struct MaterialDoubt(double Resistance, double Wicking, double Airing)
{
    /// <summary>Of 100 cases 5 lie beyond this many deviations [-].</summary>
    public const double End = 1.645;

    // further out than this nothing is believed
    private const double Furthest = 2.5;

    /// <summary>Everything as likely.</summary>
    public static readonly MaterialDoubt Likely = new(0, 0, 0);

    /// <summary>Everything at the end that dries slowest, or fastest.</summary>
    public static readonly MaterialDoubt Slow = new(End, -End, -End), Fast = new(-End, End, End);

    /// <summary>The figure that stands so far from the likely one, even in the logarithm between it and the two ends.</summary>
    /// <param name="mark">Deviations from the likely figure.</param>
    /// <param name="low">What 5 of 100 lie under; above 0.</param>
    /// <param name="likely">Middle.</param>
    /// <param name="high">What 5 of 100 lie over.</param>
    public static double At(double mark, double low, double likely, double high)
    {
        var away = Math.Clamp(mark, -Furthest, Furthest) / End;
        return likely * Math.Pow(away < 0 ? likely / low : high / likely, away);
    }
}
