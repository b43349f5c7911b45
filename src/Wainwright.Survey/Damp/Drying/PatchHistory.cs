using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>One story of a patch with its courses.</summary>
/// <param name="Story">Leak or condensation.</param>
/// <param name="Source">In words, with its id.</param>
/// <param name="Cells">Pieces that it may come in at.</param>
/// <param name="Sampled">Its courses.</param>
/// <param name="Before">Its chance before any reading [0–1].</param>
internal sealed record PatchStory(WaterStory Story, string Source, IReadOnlyList<int> Cells, WaterStories Sampled, double Before);

/// <summary>The stories of one patch, weighed against each other.</summary>
internal sealed class PatchHistory
{
    // a reading further beyond the ends of the stories than this is told [standard deviations]; a board counts as wetted from so many points on
    private const double FarOff = 1, WettedPoints = 1;

    // ends of ranges lie no further out than this share: own rule
    private const double LeastEnd = 0.02;

    // three values with the mean and the spread of a bell curve of 1
    private static readonly int[] SpreadNodes = [-1, 0, 1];

    private static readonly double SpreadNode = Math.Sqrt(1.5);

    // further off than this in the mean square the stories hardly fit: own rule [standard deviations]
    private const double PoorFit = 1.5;

    // told where the highest chance that can be borne is under this: own rule
    private const double LittleBorne = 0.97;

    private readonly DampMap map;

    // all courses of all stories with their weight
    private readonly List<(WaterCourse Course, double Weight)> courses = [];

    public PatchHistory(DampMap map, AsBuilt built, DampPatch patch, PatchFit fit, IReadOnlyList<PatchStory> stories, double dryPercent, double fewEffective)
    {
        (this.map, Patch) = (map, patch);
        var chances = StoryChances.Of(stories);
        List<double> bare = [];
        List<DampStory> told = [];
        for (var s = 0; s < stories.Count; s++)
        {
            var weights = Weights.Tempered(Weights.Cut(stories[s].Sampled.LogWeights), fewEffective);
            bare.AddRange(Weights.Tempered(stories[s].Sampled.LogWeights, 0).Select(w => w * chances[s]));
            courses.AddRange(stories[s].Sampled.Courses.Zip(weights, (c, w) => (c, w * chances[s])));
            told.Add(Story(built, stories[s], weights, chances[s], fit));
        }
        Effective = Weights.Effective(bare);
        Stories = [.. told.OrderByDescending(t => t.Chance)];
        AtReadings = [.. patch.Readings.Select((r, i) => (r, Ends(courses.Select(c => (c.Course.AtReadings[i], c.Weight)))))];
        Told = [.. Fits(fit, stories, fewEffective), .. Misfits(dryPercent)];
    }

    public DampPatch Patch { get; }

    /// <summary>Likeliest first.</summary>
    public IReadOnlyList<DampStory> Stories { get; }

    /// <summary>Courses that the readings leave.</summary>
    public double Effective { get; }

    public IReadOnlyList<(DampReading Reading, Span Percent)> AtReadings { get; }

    public IReadOnlyList<string> Told { get; }

    /// <summary>Moisture of a piece of the patch on a day [%]; before a course began it is the dry board.</summary>
    public Span Percent(int piece, double day, double dryPercent) => Ends(courses.Where(c => c.Weight > 1e-6).Select(c => (At(c.Course, piece, day, dryPercent), c.Weight)));

    private static double At(WaterCourse course, int piece, double day, double dryPercent)
    {
        if (day <= course.Days[0]) return dryPercent;
        var next = 1;
        while (next < course.Days.Length - 1 && course.Days[next] < day) next++;
        var (from, to) = (course.Days[next - 1], course.Days[next]);
        var share = to > from ? Math.Clamp((day - from) / (to - from), 0, 1) : 1;
        return course.Percent[next - 1][piece] + (share * (course.Percent[next][piece] - course.Percent[next - 1][piece]));
    }

    private DampStory Story(AsBuilt built, PatchStory story, double[] weights, double chance, PatchFit fit)
    {
        var own = story.Sampled.Courses;
        // what the boards hold is told no better than the wet readings' mean: the course is off at each, and its own sum with it
        var wide = SpreadNode * fit.LogSpreadOfWetMean(own.Select((c, i) => weights[i] * fit.MeanOff(c)).Sum());
        var held = Ends(own.SelectMany((c, i) => SpreadNodes.Select(n => (c.LitresHeld * Math.Exp(n * wide), weights[i] / SpreadNodes.Length))));
        Span Of(Func<WaterCourse, double> what) => Ends(own.Select((c, i) => (what(c), weights[i])));
        var wetted = Patch.Cells.Select((cell, i) => (cell, i)).Where(p => Of(c => c.Percent[^1][p.i] - c.Percent[0][p.i]).Likely > WettedPoints).Select(p => map.Net.Cells[p.cell].Sheet).Distinct().Order();
        var at = story.Story == WaterStory.Leak ? story.Sampled.LikelyPlace(weights) : Middle([.. Patch.Cells.Where(built.BacksSkin)]);
        return new(story.Story, story.Source, at, chance, Of(c => c.SinceDays), Of(c => c.Litres), held, [.. wetted.Select(s => map.Net.Sheets[s])]);
    }

    private Place Middle(IReadOnlyList<int> cells) =>
        new(cells.Average(c => map.Net.Cells[c].Middle.XMm), cells.Average(c => map.Net.Cells[c].Middle.YMm), cells.Average(c => map.Net.Cells[c].Middle.ZMm));

    /// <summary>Tells apart stories that do not meet the readings and courses that are too few to say.</summary>
    private IEnumerable<string> Fits(PatchFit fit, IReadOnlyList<PatchStory> stories, double fewEffective)
    {
        var boards = string.Join(", ", Patch.Readings.Where(r => r.Made.Percent >= Patch.Wettest.Made.Percent - 5).Select(r => r.Point));
        var off = courses.Sum(c => c.Weight * fit.MeanOff(c.Course));
        if (off > PoorFit)
            yield return string.Create(CultureInfo.InvariantCulture, $"round {boards}: the stories hardly fit: the courses that count are {off:0.0} times as far from the readings as a course is taken to tell");
        if (Effective < fewEffective)
            yield return string.Create(CultureInfo.InvariantCulture, $"round {boards}: only {Effective:0.0} of {courses.Count} courses count, so that ranges are drawn from softer weights; that is for want of courses, {(off > PoorFit ? "and beside the poor fit" : "the stories fit")}: more of them tell more");
        var most = StoryChances.Most(stories);
        if (Stories.Count > 1 && most < LittleBorne)
            yield return string.Create(CultureInfo.InvariantCulture, $"round {boards}: so few courses of a story count that they bear no chance above {100 * most:0} %, however well one fits");
    }

    private List<string> Misfits(double dryPercent)
    {
        List<string> told = [];
        foreach (var (reading, percent) in AtReadings)
        {
            double tooDry = -PatchWeighing.Off(reading, percent.High, dryPercent), tooWet = PatchWeighing.Off(reading, percent.Low, dryPercent);
            if (tooDry > FarOff || (reading.Made.Bound != MeterReading.Bound.AtLeast && tooWet > FarOff))
                told.Add(string.Create(CultureInfo.InvariantCulture, $"{reading.Point} does not fit: it reads {(reading.Made.Bound == MeterReading.Bound.AtLeast ? "at least " : "")}{reading.Made.Percent:0.#} %, the stories have {percent.Low:0} to {percent.High:0} %; look there for another source or a wrong reading"));
        }
        return told;
    }

    /// <summary>Ends between which one course more would lie in 90 of 100, by the courses that count: few of them reach further out, but not to what hardly counts.</summary>
    private static Span Ends(IEnumerable<(double Value, double Weight)> weighted)
    {
        var sorted = weighted.OrderBy(w => w.Value).ToList();
        var sum = sorted.Sum(w => w.Weight);
        var counting = sum * sum / sorted.Sum(w => w.Weight * w.Weight);
        // the i-th of n stands at i / (n + 1), half of its own weight before it
        var end = Math.Max(LeastEnd, 0.05 - (0.45 / counting));
        double At(double share)
        {
            double passed = 0;
            foreach (var (value, weight) in sorted)
            {
                passed += weight;
                if (passed - (0.5 * weight) >= share * sum) return value;
            }
            return sorted[^1].Value;
        }
        return new(At(end), At(0.5), At(1 - end));
    }
}
