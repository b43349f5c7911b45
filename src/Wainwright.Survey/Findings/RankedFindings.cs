using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Methods.Risk;

namespace Wainwright.Survey.Findings;

/// <summary>A finding with its risk as a range. Urgency stands apart: damage that grows can make a low risk urgent.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Worst">Level at the worst credible harm and its greatest likelihood; absent when nobody has judged it.</param>
/// <param name="Mildest">Level at the mildest harm and its least likelihood; absent when nobody has judged it.</param>
/// <param name="FromMemory">Whether one of the two cells of the matrix comes from memory.</param>
public sealed record RankedFinding(Finding Finding, MilStd882.Level? Worst, MilStd882.Level? Mildest, bool FromMemory)
{
    /// <summary>The worst level by name; absent when nobody has judged it.</summary>
    public string? WorstName => Worst?.ToString();

    /// <summary>The mildest level by name; absent when nobody has judged it.</summary>
    public string? MildestName => Mildest?.ToString();
}

/// <summary>Findings by risk.</summary>
public static class RankedFindings
{
    /// <summary>The open matrix.</summary>
    public static readonly Basis Basis = MilStd882.Basis;

    /// <summary>Where the matrix is published.</summary>
    public static string Source => Basis.Source;

    /// <summary>What a level does not say.</summary>
    public static string Caution => Basis.Caution;

    /// <summary>
    /// Highest worst level first, then the more urgent, then in the order of the file. What nobody has judged comes after High:
    /// not judged is not harmless.
    /// </summary>
    public static IReadOnlyList<RankedFinding> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. job.Findings.Select(Ranked).OrderByDescending(Rank).ThenBy(r => r.Finding.Urgency ?? Urgency.U0)];
    }

    private static RankedFinding Ranked(Finding finding)
    {
        if (finding is not { Severity: { } severity, Likelihood: { } likelihood }) return new(finding, null, null, false);
        var worst = Cell(severity, likelihood);
        var mildest = Cell(finding.SeverityAtBest ?? severity, finding.LikelihoodAtLeast ?? likelihood);
        return new(finding, worst.Risk, mildest.Risk, worst.How == Provenance.FromMemory || mildest.How == Provenance.FromMemory);
    }

    private static double Rank(RankedFinding r) => r.Worst is { } level ? (double)level : (double)MilStd882.Level.High - 0.5;

    private static MilStd882.Cell Cell(Severity severity, Likelihood likelihood) => MilStd882.Of(
        (MilStd882.Severity)severity,
        likelihood switch
        {
            Likelihood.Frequent => MilStd882.Probability.Frequent,
            Likelihood.Probable => MilStd882.Probability.Probable,
            Likelihood.Occasional => MilStd882.Probability.Occasional,
            Likelihood.Remote => MilStd882.Probability.Remote,
            Likelihood.Improbable => MilStd882.Probability.Improbable,
            Likelihood.Eliminated => MilStd882.Probability.Eliminated,
            _ => throw new ArgumentOutOfRangeException(nameof(likelihood)),
        });
}
