using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Survey.Retention.Fix;

/// <summary>Latches for what opens by itself, lips for what slides off; the cheapest that does. Strengths, times and prices: common practice, no source.</summary>
internal static class LatchesAndLips
{
    private static readonly (string Words, double HoldsN, double PlusMinusN, double Minutes, double Material)[] Latches =
    [
        ("turn button", 150, 50, 6, 3), ("push-button latch with a tongue", 250, 50, 12, 9), ("two push-button latches with a tongue", 500, 100, 24, 18), ("slam latch with a steel keeper", 900, 150, 30, 26),
    ];

    private const double LipMinutes = 25, LipMaterial = 8, LipAboveMm = 15;

    public static Mend On(Mend mend, IReadOnlyList<LoadCase> cases)
    {
        var job = mend.Mended!;
        var part = job.Parts.First(p => p.Id == mend.Part);
        if (Own(job, part).All(c => c.Verdict == Verdict.Holds)) return mend;
        List<MendStep> steps = [.. mend.Steps];
        foreach (var thing in part.Moving.Where(m => Short(job, part, m.Name)))
            foreach (var latch in Latches)
            {
                var tried = part with { Moving = [.. part.Moving.Select(m => m.Name == thing.Name ? m with { KeptShutBy = latch.Words, HoldsN = new Measured(latch.HoldsN, latch.PlusMinusN) } : m)] };
                if (Short(With(job, tried), tried, thing.Name)) continue;
                (part, job) = (tried, With(job, tried));
                steps.Add(new($"{latch.Words} on the {thing.Name}", 1, [], latch.Minutes, latch.Material));
                break;
            }
        foreach (var shelf in part.Shelves.Where(s => s.CentreMm is not null && Short(job, part, s.Name)))
        {
            var lip = Math.Ceiling((shelf.CentreMm!.Value.Value + (shelf.CentreMm.Value.PlusMinus ?? 5) + LipAboveMm) / 5) * 5;
            part = part with { Shelves = [.. part.Shelves.Select(s => s.Name == shelf.Name ? s with { LipMm = new Measured(lip, 2) } : s)] };
            job = With(job, part);
            steps.Add(new(string.Create(CultureInfo.InvariantCulture, $"a lip or bar {lip:0} mm high on the open sides of the {shelf.Name}"), shelf.OpenSides.Count, [], LipMinutes * shelf.OpenSides.Count, LipMaterial * shelf.OpenSides.Count));
        }
        var added = steps.Skip(mend.Steps.Count).Sum(s => (double)(job.RatePerHour ?? 60) * s.Minutes / 60 + s.Material);
        return mend with { Steps = steps, Price = mend.Price + added, Mended = job, After = Holding.Anew(job, part.Id, cases), ChecksAfter = [.. Own(job, part)] };
    }

    private static Job With(Job job, Part part) => job with { Parts = [.. job.Parts.Select(p => p.Id == part.Id ? part : p)] };

    private static IEnumerable<Check> Own(Job job, Part part) => MovingThingsStayShut.Of(job).Concat(ShelfGoodsStay.Of(job)).Where(c => c.Subject.Id == part.Id.Text);

    private static bool Short(Job job, Part part, string name) => Own(job, part).Any(c => c.Verdict != Verdict.Holds && c.Claim.Contains(name, StringComparison.Ordinal));
}
