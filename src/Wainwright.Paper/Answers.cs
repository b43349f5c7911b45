using Wainwright.Fitout;
using Wainwright.Survey;
using Wainwright.Survey.Findings;
using Wainwright.Survey.Retention;
using Wainwright.Survey.Retention.Fix;

namespace Wainwright.Paper;

/// <summary>What Survey says of a job, gathered once for all pages.</summary>
/// <param name="Today">The day it was judged on and the pages are dated.</param>
/// <param name="Checks">Every check, in order of danger.</param>
/// <param name="Findings">Findings, ranked.</param>
/// <param name="Uses">What is to be said of each use of the van.</param>
public sealed record Answers(DateOnly Today, IReadOnlyList<Check> Checks, IReadOnlyList<RankedFinding> Findings, IReadOnlyList<UseToday> Uses)
{
    /// <summary>Whether what is fitted holds: worked out when the first page asks for it, for it takes longest. Absent to leave it out.</summary>
    public Lazy<JobHolding>? Held { get; init; }

    /// <summary>What would make each part hold that falls short; worked out like <see cref="Held"/>, absent to leave it out.</summary>
    public Lazy<IReadOnlyDictionary<PartId, Mend>>? Mends { get; init; }

    /// <summary>Where water went, where a board was read wet; worked out like <see cref="Held"/>, absent to leave it out.</summary>
    public Lazy<WaterFound?>? Water { get; init; }

    /// <summary>Asks Survey.</summary>
    public static Answers Of(Job job, DateOnly today)
    {
        var checks = Survey.Checks.All(job, today);
        var held = new Lazy<JobHolding>(() => Holding.Of(job));
        return new(today, checks, RankedFindings.Of(job), StopUse.Of(job, checks))
        {
            Held = held,
            Water = new(() => WaterFound.Of(job)),
            Mends = new(() => held.Value.Parts.Where(p => p.Verdict == Verdict.FallsShort).ToDictionary(p => p.Part.Id, p => Mending.Of(job, p.Part.Id))),
        };
    }

    /// <summary>Uses that must stop now; driving loaded is not said again where driving is stopped.</summary>
    internal List<UseToday> Stopped()
    {
        var driving = Uses.Any(u => u is { Use: Use.Drive, MustStop: true });
        return [.. Uses.Where(u => u.MustStop && !(driving && u.Use == Use.DriveLoaded))];
    }

    /// <summary>Uses that nothing stops and nothing shows to be safe.</summary>
    internal List<UseToday> NotShown() => [.. Uses.Where(u => !u.MustStop && u.NotShown.Count > 0)];

    /// <summary>Findings with the numbers they carry on every page and drawing: the judged ones in rank, then those nobody has judged.</summary>
    internal IReadOnlyList<Numbered> Numbers() =>
        [.. Findings.OrderBy(f => f.WorstName is null ? 1 : 0).Select((f, i) => new Numbered(i + 1, f))];
}

/// <summary>A ranked finding and the number of its pin.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Ranked">The finding.</param>
public sealed record Numbered(int Number, RankedFinding Ranked)
{
    /// <summary>The finding.</summary>
    public Finding Finding => Ranked.Finding;
}
