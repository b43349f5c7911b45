using Wainwright.Fitout;

namespace Wainwright.Access.Tests.Plans;

/// <summary>Everything rests on it: taking away never gets in the way.</summary>
public class MonotoneTests
{
    [Theory]
    [InlineData(11), InlineData(12), InlineData(13), InlineData(14), InlineData(15), InlineData(16), InlineData(17), InlineData(18)]
    public void A_part_that_comes_out_still_does_and_costs_no_more_when_others_are_out(int seed)
    {
        var job = SeededVan.Of(seed, 7);
        var random = new Random(seed);
        for (var n = 0; n < 12; n++)
        {
            var target = new PartId($"P{random.Next(7)}");
            var fewer = job.Parts.Select(p => p.Id).Where(p => p != target && random.Next(3) == 0).ToList();
            List<PartId> more = [.. fewer, .. job.Parts.Select(p => p.Id).Where(p => p != target && !fewer.Contains(p) && random.Next(3) == 0)];
            // what stands on a part that is out was out before it
            fewer = Closed(job, fewer);
            more = Closed(job, more);
            if (fewer.Contains(target) || more.Contains(target)) continue;
            var (before, after) = (RemovalPlanner.Remove(job, [target], new() { AlreadyOut = fewer }), RemovalPlanner.Remove(job, [target], new() { AlreadyOut = more }));

            if (before.Steps.Count == 0) continue;
            Assert.NotEmpty(after.Steps);
            Assert.True(after.TotalMinutes <= before.TotalMinutes + 0.01, $"{target}: {before.TotalMinutes} {after.TotalMinutes}");
        }
    }

    private static List<PartId> Closed(Job job, List<PartId> out_)
    {
        for (var before = -1; before != out_.Count;)
        {
            before = out_.Count;
            out_.AddRange(job.Parts.Where(p => p.StandsOn.Any(out_.Contains)).Select(p => p.Id).Except(out_).ToList());
        }
        return out_;
    }
}
