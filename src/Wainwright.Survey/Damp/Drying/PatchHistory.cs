using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>One story of a patch with its courses.</summary>
internal sealed record PatchStory(WaterStory Story, string Source, IReadOnlyList<int> Cells, WaterStories Sampled, double LogFit);

/// <summary>The stories of one patch, weighed against each other.</summary>
internal sealed class PatchHistory
{
    // a reading further beyond the ends of the stories than this is told [standard deviations]; a board counts as wetted from so many points on
    private const double FarOff = 1, WettedPoints = 1;

    private readonly DampMap map;

    // all courses of all stories with their weight
    private readonly List<(WaterCourse Course, double Weight)> courses = [];

    public PatchHistory(DampMap map, AsBuilt built, DampPatch patch, IReadOnlyList<PatchStory> stories, double dryPercent, double fewEffective)
    {
        (this.map, Patch) = (map, patch);
        var all = WaterStories.LogSum([.. stories.Select(s => s.LogFit)]);
        var chances = stories.Select(s => Math.Exp(s.LogFit - all)).ToList();
        List<double> bare = [];
        List<DampStory> told = [];
        for (var s = 0; s < stories.Count; s++)
        {
            var weights = WaterStories.Tempered(stories[s].Sampled.LogWeights, fewEffective);
            bare.AddRange(WaterStories.Tempered(stories[s].Sampled.LogWeights, 0).Select(w => w * chances[s]));
            courses.AddRange(stories[s].Sampled.Courses.Zip(weights, (c, w) => (c, w * chances[s])));
            told.Add(Story(built, stories[s], weights, chances[s]));
        }
        Effective = WaterStories.Effective(bare);
        Stories = [.. told.OrderByDescending(t => t.Chance)];
        AtReadings = [.. patch.Readings.Select((r, i) => (r, Ends(courses.Select(c => (c.Course.AtReadings[i], c.Weight)))))];
        Told = Misfits(dryPercent, fewEffective);
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

    private DampStory Story(AsBuilt built, PatchStory story, double[] weights, double chance)
    {
        var own = story.Sampled.Courses;
        Span Of(Func<WaterCourse, double> what) => Ends(own.Select((c, i) => (what(c), weights[i])));
        var wetted = Patch.Cells.Select((cell, i) => (cell, i)).Where(p => Of(c => c.Percent[^1][p.i] - c.Percent[0][p.i]).Likely > WettedPoints).Select(p => map.Net.Cells[p.cell].Sheet).Distinct().Order();
        var at = story.Story == WaterStory.Leak ? story.Sampled.LikelyPlace(weights) : Middle([.. Patch.Cells.Where(built.BacksSkin)]);
        return new(story.Story, story.Source, at, chance, Of(c => c.SinceDays), Of(c => c.Litres), Of(c => c.LitresHeld), [.. wetted.Select(s => map.Net.Sheets[s])]);
    }

    private Place Middle(IReadOnlyList<int> cells) =>
        new(cells.Average(c => map.Net.Cells[c].Middle.XMm), cells.Average(c => map.Net.Cells[c].Middle.YMm), cells.Average(c => map.Net.Cells[c].Middle.ZMm));

    private List<string> Misfits(double dryPercent, double fewEffective)
    {
        List<string> told = [];
        var boards = string.Join(", ", Patch.Readings.Where(r => r.Made.Percent >= Patch.Wettest.Made.Percent - 5).Select(r => r.Point));
        if (Effective < fewEffective)
            told.Add(string.Create(CultureInfo.InvariantCulture, $"round {boards}: only {Effective:0.0} courses count; the stories hardly fit, or more courses are needed, and ranges are drawn from softer weights"));
        foreach (var (reading, percent) in AtReadings)
        {
            double tooDry = -PatchWeighing.Off(reading, percent.High, dryPercent), tooWet = PatchWeighing.Off(reading, percent.Low, dryPercent);
            if (tooDry > FarOff || (reading.Made.Bound != MeterReading.Bound.AtLeast && tooWet > FarOff))
                told.Add(string.Create(CultureInfo.InvariantCulture, $"{reading.Point} does not fit: it reads {(reading.Made.Bound == MeterReading.Bound.AtLeast ? "at least " : "")}{reading.Made.Percent:0.#} %, the stories have {percent.Low:0} to {percent.High:0} %; look there for another source or a wrong reading"));
        }
        return told;
    }

    private static Span Ends(IEnumerable<(double Value, double Weight)> weighted)
    {
        var sorted = weighted.OrderBy(w => w.Value).ToList();
        var sum = sorted.Sum(w => w.Weight);
        double At(double share)
        {
            double passed = 0;
            foreach (var (value, weight) in sorted)
                if ((passed += weight) >= share * sum) return value;
            return sorted[^1].Value;
        }
        return new(At(0.05), At(0.5), At(0.95));
    }
}
