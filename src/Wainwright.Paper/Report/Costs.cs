using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>The estimate lines of one option added up: nothing weighed, nothing left out.</summary>
/// <param name="Option">Name of the option; absent when the job has only one.</param>
/// <param name="Lines">Lines that are certain.</param>
/// <param name="Possible">Lines that may be needed, with their chance.</param>
/// <param name="Rate">Money per hour; absent when the job gives none.</param>
public sealed record Costs(string? Option, IReadOnlyList<EstimateLine> Lines, IReadOnlyList<EstimateLine> Possible, decimal? Rate)
{
    /// <summary>One for each option named in the estimate, each with the lines that belong to all.</summary>
    public static IReadOnlyList<Costs> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var options = job.Estimate.Select(l => l.Option).OfType<string>().Distinct().ToList();
        return [.. (options.Count == 0 && job.Estimate.Count > 0 ? [null] : options.Cast<string?>()).Select(option =>
        {
            var mine = job.Estimate.Where(l => l.Option is null || l.Option == option).ToList();
            return new Costs(option, [.. mine.Where(Certain)], [.. mine.Where(l => !Certain(l))], job.RatePerHour);
        })];
    }

    /// <summary>Hours if all goes well, as expected, and if it goes hard.</summary>
    public (double Easy, double Likely, double Hard) Hours => (Lines.Sum(l => l.EasyHours ?? 0), Lines.Sum(l => l.LikelyHours ?? 0), Lines.Sum(l => l.HardHours ?? 0));

    /// <summary>Hours times the rate, and materials; absent without a rate where there are hours.</summary>
    public (decimal Easy, decimal Likely, decimal Hard)? Money => Sum(Lines);

    /// <summary>The same with everything that may be needed too.</summary>
    public (decimal Easy, decimal Likely, decimal Hard)? MoneyWithPossible => Sum(Lines.Concat(Possible));

    /// <summary>The line with the widest spread: what the range hangs on most.</summary>
    public EstimateLine? Driver => Lines.Where(l => Spread(l) > 0).MaxBy(Spread);

    /// <summary>Money of one line at so many hours.</summary>
    public decimal? Of(EstimateLine line, double? hours)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (hours is null or 0) return line.Materials ?? 0;
        return Rate is { } rate ? (decimal)hours.Value * rate + (line.Materials ?? 0) : null;
    }

    private (decimal, decimal, decimal)? Sum(IEnumerable<EstimateLine> lines)
    {
        decimal easy = 0, likely = 0, hard = 0;
        foreach (var l in lines)
        {
            if ((Of(l, l.EasyHours), Of(l, l.LikelyHours), Of(l, l.HardHours)) is not ({ } e, { } m, { } h)) return null;
            (easy, likely, hard) = (easy + e, likely + m, hard + h);
        }
        return (easy, likely, hard);
    }

    private static double Spread(EstimateLine l) => (l.HardHours ?? 0) - (l.EasyHours ?? 0);

    private static bool Certain(EstimateLine l) => l is { ChanceLow: null, ChanceHigh: null };
}
