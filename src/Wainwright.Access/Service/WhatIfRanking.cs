using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Ranks single changes by the minutes they save a year; every number comes from planning the changed van.</summary>
/// <remarks>
/// A change is bounded before it is planned. A plan of the changed van that costs C becomes one of the van as built when what
/// the change stands in for is done as it is today, at U: so a visit saves at most U, and never more than what its plan holds
/// beyond its own needs. Changes are planned from the most promising on, until none of the rest can beat those ranked.
/// </remarks>
public static class WhatIfRanking
{
    private const double WorthALook = 0.5; // min a year: less is no reason to build anything; common practice, no source

    /// <summary>The changes that save most.</summary>
    /// <param name="job">The job.</param>
    /// <param name="upkeep">What service costs as built; of the same job.</param>
    /// <param name="options">What the planner was told for it.</param>
    /// <param name="most">How many to rank, 1 or more.</param>
    /// <param name="looks">How many may be planned through; the rest are reported with their bound.</param>
    /// <param name="progress">Told after each change planned.</param>
    public static WhatIfs Of(Job job, Upkeep upkeep, AccessOptions? options = null, int most = 5, int looks = 20, IProgress<AccessProgress>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(upkeep);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        var van = upkeep.Van ?? throw new ArgumentException("The upkeep was not asked of a van.", nameof(upkeep));
        var told = (options ?? new()) with { AlreadyOut = [], MustStay = [], Bracket = false };
        List<UpkeepVisit> visits = [.. upkeep.Parts.SelectMany(p => p.Visits).Where(v => v.Minutes.Outcome is not null)];
        var thought = new Ideas(job, van, visits).All()
            .Select(idea => (Idea: idea, AtMost: AtMost(van, visits, idea)))
            .Where(x => x.AtMost > WorthALook)
            .OrderByDescending(x => x.AtMost).ThenBy(x => x.Idea.What, StringComparer.Ordinal).ToList();
        var (found, planned) = (new List<WhatIf>(), 0);
        for (; planned < Math.Min(looks, thought.Count) && !told.Stop.IsCancellationRequested; planned++)
        {
            if (Distinct(Ranked(found)).ElementAtOrDefault(most - 1) is { } least && thought[planned].AtMost <= least.SavedMinutesPerYear) break;
            progress?.Report(new(planned, thought.Count, thought[planned].Idea.What));
            var gain = Planned(job, van, visits, thought[planned].Idea, told);
            if (told.Stop.IsCancellationRequested) break; // cut off on the way: it keeps its bound
            if (gain is not null) found.Add(gain);
        }
        // what was not worth a look was dropped unplanned, and may save as much as that
        var rest = Math.Max(WorthALook, planned < thought.Count ? thought[planned].AtMost : 0);
        return new([.. Distinct(Ranked(found)).Take(most).Select((w, i) => w with { Number = i + 1 })], thought.Count, planned, rest, !told.Stop.IsCancellationRequested);
    }

    private static IEnumerable<WhatIf> Ranked(IEnumerable<WhatIf> found) =>
        found.OrderByDescending(w => w.Gains.Count(g => g.WasMinutes is null)).ThenByDescending(w => w.SavedMinutesPerYear).ThenBy(w => w.What, StringComparer.Ordinal);

    /// <summary>Of several sides or places for the same thing the best one.</summary>
    private static IEnumerable<WhatIf> Distinct(IEnumerable<WhatIf> ranked) => ranked.DistinctBy(w => (w.Kind, w.Change.Edits[0].Where));

    /// <summary>No plan of the changed van saves more in a year [min]; a way where there was none is worth any look.</summary>
    private static double AtMost(Inquiry van, List<UpkeepVisit> visits, Idea idea)
    {
        var instead = van.Ask(idea.InsteadOf) is Solved today ? today.Cost / TenthsOfASecond.InAMinute : double.PositiveInfinity;
        return visits.Sum(v => v.TimesPerYear * (v.Minutes.Outcome is Solved plan ? Math.Min(instead, Slack(van, v, plan, idea)) : double.PositiveInfinity));
    }

    /// <summary>What a visit's plan holds beyond its own needs, and of those what the change may make cheaper [min].</summary>
    private static double Slack(Inquiry van, UpkeepVisit visit, Solved plan, Idea idea)
    {
        var target = van.Target(visit.Part, visit.Need.Access)!.Value;
        var own = van.NeededBy(target);
        var kept = own.Where(i => !idea.InsteadOf.Contains(i) && van.Scene.Items[i] is not Spoiled).Sum(i => van.Scene.Puzzle.Costs[i]);
        return (plan.Cost - kept) / TenthsOfASecond.InAMinute;
    }

    private static WhatIf? Planned(Job job, Inquiry van, List<UpkeepVisit> visits, Idea idea, AccessOptions options)
    {
        var change = new Change(idea.What, idea.Edits);
        if (change.On(job).Job is not { } changed) return null; // the van would not be sound so
        var then = new Inquiry(changed, options);
        HandedOn.To(van, then);
        var (gains, proved) = (new List<WhatIfGain>(), true);
        foreach (var group in visits.GroupBy(v => (v.Part, v.Need.Access)))
        {
            var was = group.First().Minutes.Outcome as Solved;
            // a plan that does nothing beyond what every plan must do, none of which the change touches, stays as it is
            if (was is not null && Slack(van, group.First(), was, idea) <= 0) continue;
            if (then.Target(group.Key.Part, group.Key.Access) is not { } target || then.Ask([target]) is not Solved now) continue;
            if (options.Stop.IsCancellationRequested) return null;
            proved &= now.IsProved && was is null or { IsProved: true };
            if (was is null || was.Cost != now.Cost) gains.AddRange(group.Select(v => new WhatIfGain(v, was?.Cost / TenthsOfASecond.InAMinute, now.Cost / TenthsOfASecond.InAMinute)));
        }
        var saved = gains.Sum(g => g.SavedMinutesPerYear);
        if (saved <= WorthALook && gains.TrueForAll(g => g.WasMinutes is not null)) return null;
        return new()
        {
            Number = 0,
            Kind = idea.Kind,
            What = idea.What,
            Change = change,
            SavedMinutesPerYear = saved,
            IsProved = proved,
            Gains = [.. gains.OrderByDescending(g => g.WasMinutes is null).ThenByDescending(g => g.SavedMinutesPerYear).ThenBy(g => g.Visit.Part.Text, StringComparer.Ordinal)],
            Heed = idea.Heed,
        };
    }
}
