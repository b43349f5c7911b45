using System.Globalization;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Methods.Tests.Moisture.Field;

/// <summary>How honest the map is on leaks it was not made for. The figures stand in docs/damp.md.</summary>
public sealed class SyntheticLeakTests(ITestOutputHelper said)
{
    const int Leaks = 200, Trials = 60;

    /// <summary>What the survey thinks beforehand too, its dry board from the air of the day.</summary>
    static readonly FieldPriors Priors = new() { DryPercent = [12], DrySigmaPoints = 2 };

    static readonly SurfaceNet Net = Sheets.Flat(SyntheticLeak.Across, SyntheticLeak.Along);

    [Fact]
    public void How_often_the_truth_lies_inside_on_two_hundred_leaks_of_another_law()
    {
        int areas = 0, regions = 0;
        double regionArea = 0, wetArea = 0;
        var unread = 0;
        var perLeak = new List<double>();
        for (var leak = 0; leak < Leaks; leak++)
        {
            var truth = new SyntheticLeak(1000 + leak);
            var seen = truth.Pricked(14, 10);
            if (WetPatchWithoutReading(truth.Truth, [.. seen.Select(s => s.Cell)])) unread++;
            var score = MapScore.Of(Fit(seen), truth.Truth, leak);
            perLeak.Add(score.Cells);
            if (score.Area) areas++;
            if (score.Region) regions++;
            regionArea += score.RegionCells / 100.0;
            wetArea += score.WetCells / 100.0;
        }
        var share = perLeak.Average();
        said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"cells inside their 90 % interval {100 * share:0.0} %; wet area inside its own on {areas} of {Leaks} leaks; worst leak {100 * perLeak.Min():0} %, median {100 * perLeak.Order().ElementAt(Leaks / 2):0} %; all that is wet inside the 90 % region on {regions} of {Leaks}, region {regionArea / Leaks:0.00} m², wet {wetArea / Leaks:0.00} m² on average; a wet patch that no reading touches on {unread}"));
        // measured 98.0 %, 181 and 193 of 200: the area as wanted, cells and region too wide; docs/damp.md says so. Pinned so that it gets no worse
        Assert.InRange(share, 0.85, 0.985);
        Assert.InRange((double)areas / Leaks, 0.85, 0.95);
        Assert.InRange((double)regions / Leaks, 0.90, 1);
    }

    /// <summary>Whether cells over 16 % that hang together by their sides hold no reading.</summary>
    static bool WetPatchWithoutReading(double[] truth, HashSet<int> read)
    {
        var met = new bool[truth.Length];
        for (var start = 0; start < truth.Length; start++)
        {
            if (met[start] || truth[start] <= 16) continue;
            var (touched, left) = (false, new Stack<int>([start]));
            met[start] = true;
            while (left.TryPop(out var cell))
            {
                touched |= read.Contains(cell);
                foreach (var link in Net.Links.Where(l => l.A == cell || l.B == cell))
                {
                    var other = link.A == cell ? link.B : link.A;
                    if (met[other] || truth[other] <= 16) continue;
                    met[other] = true;
                    left.Push(other);
                }
            }
            if (!touched) return true;
        }
        return false;
    }

    static DampPosterior Fit(IReadOnlyList<FieldObservation> seen) => DampField.Fit(Net, seen, Priors);

    [Fact]
    public void The_next_three_places_judge_better_than_three_at_random()
    {
        double chosen = 0, random = 0, before = 0;
        int better = 0, worse = 0;
        var stakes = new ReadingWorth.Stakes(20, 600, 200, 1);
        IReadOnlyList<ReadingWorth.Candidate> all = [.. Enumerable.Range(0, Net.Cells.Count).Where(i => i % 2 == (i / SyntheticLeak.Across) % 2).Select(i => new ReadingWorth.Candidate(i, 0))];
        for (var leak = 0; leak < Trials; leak++)
        {
            var truth = new SyntheticLeak(5000 + leak);
            var seen = truth.Pricked(8, 2);
            var map = Fit(seen);
            var best = ReadingWorth.Best(map, stakes, all, 3).Select(p => truth.Read(all[p.Candidate].Cell)).ToList();
            var any = Enumerable.Range(0, 3).Select(_ => truth.Read(truth.AnyCell())).ToList();
            var (a, b) = (Cost(Fit([.. seen, .. best]), truth, stakes), Cost(Fit([.. seen, .. any]), truth, stakes));
            chosen += a;
            random += b;
            before += Cost(map, truth, stakes);
            if (a < b) better++;
            if (a > b) worse++;
        }
        said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"cost of wrong decisions: before {before / Trials:0.0}, after three chosen {chosen / Trials:0.0}, after three at random {random / Trials:0.0} min; chosen better {better}, worse {worse} of {Trials}"));
        Assert.True(chosen < random);
        Assert.True(better > worse);
    }

    static double Cost(DampPosterior map, SyntheticLeak truth, ReadingWorth.Stakes stakes)
    {
        double cost = 0;
        for (var i = 0; i < truth.Truth.Length; i++)
        {
            var p = map.ProbabilityOver(i, stakes.ThresholdPercent);
            var keep = p * stakes.KeptWetPerM2 < (1 - p) * stakes.CutDryPerM2;
            var wet = truth.Truth[i] > stakes.ThresholdPercent;
            cost += Net.Cells[i].AreaMm2 * 1e-6 * (keep && wet ? stakes.KeptWetPerM2 : !keep && !wet ? stakes.CutDryPerM2 : 0);
        }
        return cost;
    }
}
