using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Survey.Damp.Drying;
using Wainwright.Survey.Retention;

namespace Wainwright.Paper;

/// <summary>Sheets for the wall, the owner's hand and the bench, each a page that needs nothing from outside.</summary>
public static class Sheets
{
    /// <summary>What must not be used now, use by use, with every reason, to be signed.</summary>
    public static Task<string> StopUse(Job job, Answers answers)
    {
        ArgumentNullException.ThrowIfNull(job);
        return PaperPage.Html<StopUsePage>($"Stop-use notice: {job.Title}", new Dictionary<string, object?>
        {
            [nameof(StopUsePage.Job)] = job,
            [nameof(StopUsePage.Answers)] = answers,
        });
    }

    /// <summary>What was made safe, what stays live, what is still to isolate.</summary>
    public static Task<string> Isolation(Job job, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(job);
        return PaperPage.Html<IsolationPage>($"Isolation: {job.Title}", new Dictionary<string, object?>
        {
            [nameof(IsolationPage.Job)] = job,
            [nameof(IsolationPage.On)] = on,
        });
    }

    /// <summary>A removal plan as a work sheet: steps to tick, minutes, why, tools, bags and labels.</summary>
    public static Task<string> Removal(Job job, RemovalPlan plan, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(job);
        return PaperPage.Html<RemovalPage>($"Work sheet: {job.Title}", new Dictionary<string, object?>
        {
            [nameof(RemovalPage.Job)] = job,
            [nameof(RemovalPage.Plan)] = plan,
            [nameof(RemovalPage.On)] = on,
        });
    }

    /// <summary>What servicing costs as built: hours a year, visit by visit, and which single change would save most.</summary>
    /// <param name="job">The job.</param>
    /// <param name="upkeep">What it costs; see <see cref="UpkeepRound.Of"/>.</param>
    /// <param name="changes">Changes ranked; absent to leave them out.</param>
    /// <param name="on">The day on the page.</param>
    public static Task<string> Servicing(Job job, Upkeep upkeep, WhatIfs? changes, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(job);
        return PaperPage.Html<UpkeepPage>($"What servicing costs: {job.Title}", new Dictionary<string, object?>
        {
            [nameof(UpkeepPage.Job)] = job,
            [nameof(UpkeepPage.Upkeep)] = upkeep,
            [nameof(UpkeepPage.Changes)] = changes,
            [nameof(UpkeepPage.On)] = on,
        });
    }

    /// <summary>Will it hold: every part in g, what decides and which look would tell.</summary>
    /// <param name="job">The job.</param>
    /// <param name="held">What was worked out; see <see cref="Holding.Of(Job, IReadOnlyList{LoadCase})"/>.</param>
    /// <param name="on">The day on the page.</param>
    public static Task<string> Hold(Job job, JobHolding held, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(job);
        return PaperPage.Html<HoldPage>($"Will it hold: {job.Title}", new Dictionary<string, object?>
        {
            [nameof(HoldPage.Job)] = job,
            [nameof(HoldPage.Held)] = held,
            [nameof(HoldPage.On)] = on,
        });
    }

    /// <summary>The drying log for the bench: points, targets, visits so far, empty columns for the next, and the rule for covering.</summary>
    /// <param name="job">The job.</param>
    /// <param name="log">The log; see <see cref="DryingLogs.Of"/>.</param>
    /// <param name="on">The day on the page.</param>
    public static Task<string> Drying(Job job, DryingLog log, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(job);
        return PaperPage.Html<DryingPage>($"Drying log: {job.Title}", new Dictionary<string, object?>
        {
            [nameof(DryingPage.Job)] = job,
            [nameof(DryingPage.Log)] = log,
            [nameof(DryingPage.On)] = on,
        });
    }
}
