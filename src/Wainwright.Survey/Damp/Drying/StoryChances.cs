namespace Wainwright.Survey.Damp.Drying;

/// <summary>The chance of each story of a patch: how well its courses fit in the mean, held back to what so many courses can bear.</summary>
/// <remarks>
/// The mean weight of a story is an estimate from the courses that count. It is taken to tell no more than a share among so many trials, with what was thought
/// before as one trial more: own rule, no source. Of two courses that count none bears a certainty.
/// </remarks>
internal static class StoryChances
{
    /// <summary>The chances, in the order of the stories, together 1.</summary>
    public static IReadOnlyList<double> Of(IReadOnlyList<PatchStory> stories)
    {
        var logs = stories.Select(s => Math.Log(s.Before) + s.Sampled.LogEvidence).ToList();
        var all = Weights.LogSum(logs);
        var counting = Counting(stories);
        var before = stories.Sum(s => s.Before);
        return [.. stories.Select((s, i) => ((counting * Math.Exp(logs[i] - all)) + (s.Before / before)) / (counting + 1))];
    }

    /// <summary>The highest chance that so many courses bear, for the story that was likeliest before [0–1].</summary>
    public static double Most(IReadOnlyList<PatchStory> stories) => (Counting(stories) + (stories.Max(s => s.Before) / stories.Sum(s => s.Before))) / (Counting(stories) + 1);

    // the story with the fewest tells how little is known of them all
    private static double Counting(IReadOnlyList<PatchStory> stories) => stories.Min(s => s.Sampled.Effective);
}
