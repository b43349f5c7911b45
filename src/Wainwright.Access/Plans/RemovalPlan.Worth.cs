using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What a plan may be called: unknown is never a pass.</summary>
public sealed partial record RemovalPlan
{
    /// <summary>Why nothing is told where a trial fit has to.</summary>
    internal const string TrialFitTells = "no way with the usual clearance, but one if round and slanting parts are as small as they can be and nothing needs clearance: a trial fit tells";

    /// <summary>Wanted parts of which nobody measured size and place, in words: whatever was planned for them is no answer about room.</summary>
    public IReadOnlyList<string> Unmeasured => Proved is not { } known ? [] :
        [.. known.Job.Parts.Where(p => Targets.Contains(p.Id) && p.Solids.Count == 0 && !p.Outside && !known.Options.AlreadyOut.Contains(p.Id)).Select(p => $"{Wording.Name(p)} has no size and place: measure it")];

    /// <summary>No way for the outer shapes with their clearance, but one if every measure is as kind as it can be: a trial fit tells, a model cannot.</summary>
    public bool IsTooCloseToTell => this is { Proof: Proof.ProvedUnreachable, Bracket.LowMinutes: not null };

    /// <summary>Whether it is not known if there is a way; <see cref="WhyNotTold"/> names what to measure.</summary>
    public bool CannotTell => Proof == Proof.CannotTell || IsTooCloseToTell || Unmeasured.Count > 0;

    /// <summary>Whether it is proved: that no plan has less of what is sought, or that there is no way.</summary>
    public bool IsProved => !CannotTell && Proof != Proof.BestFound;

    /// <summary>Why nobody can tell, each reason in words without a capital; empty where it can be told.</summary>
    public IReadOnlyList<string> WhyNotTold =>
    [
        .. Unmeasured,
        .. Proof == Proof.CannotTell ? (string[])["no way was found, but the measures contradict one another: measure first what is named"] : [],
        .. IsTooCloseToTell ? (string[])[TrialFitTells] : [],
    ];

    /// <summary>What is proved of every other plan made of these moves: the end of a sentence that begins “no plan made of these moves …”.</summary>
    /// <param name="minutes">How labour [min] is written.</param>
    public string NoOther(Func<double, string> minutes)
    {
        ArgumentNullException.ThrowIfNull(minutes);
        return Sought switch
        {
            { Objective: Objective.FewestPartsOut } sought => $"takes out fewer than {Parts(sought.Value)}, and none that takes out as few costs less",
            { Objective: Objective.LeastDestroyed } sought => $"spoils less than {minutes(sought.Value)} to put right, and none that spoils as little costs less",
            _ => "costs less",
        };
    }

    /// <summary>What no plan made of these moves goes below, where only the best found is known: the end of a sentence.</summary>
    /// <param name="minutes">How labour [min] is written.</param>
    public string NoneBelow(Func<double, string> minutes)
    {
        ArgumentNullException.ThrowIfNull(minutes);
        return Sought switch
        {
            { Objective: Objective.FewestPartsOut } sought => $"none takes out fewer than {Parts(sought.NoPlanBelow)}",
            { Objective: Objective.LeastDestroyed } sought => $"none spoils less than {minutes(sought.NoPlanBelow)} to put right",
            _ => $"none costs less than {minutes(LowerBoundMinutes)}",
        };
    }

    private static string Parts(double count) => string.Create(CultureInfo.InvariantCulture, $"{count:0.#} {(Math.Abs(count - 1) < 0.05 ? "part" : "parts")}");
}
