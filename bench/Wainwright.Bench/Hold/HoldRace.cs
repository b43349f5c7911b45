using Wainwright.Methods.Retention;
using Wainwright.Methods.Tests.Retention.Statics;

namespace Wainwright.Bench.Hold;

/// <summary>What holds a part, beside a general linear solver on the same polyhedra, in one run, alternating.</summary>
static class HoldRace
{
    private const int Laps = 7, Corners = 16, Parts = 60;
    private const double Promised = 1e-6;

    /// <returns>1 when two answers differ by more than a millionth or a promise is not kept.</returns>
    public static int Run(int draws)
    {
        var bad = 0;
        foreach (var fixings in (int[])[8, 60]) bad += OnePart(fixings);
        bad += Van(200, 10);
        if (draws > 200) bad += Van(draws, 60);
        return bad == 0 ? 0 : 1;
    }

    private static int OnePart(int fixings)
    {
        var helds = Enumerable.Range(1, 5).Select(n => MadeUpHeld.Cupboard(100 * fixings + n, fixings)).ToList();
        var (limit, yield, same, rival) = (new List<Spent>(), new List<Spent>(), new List<Spent>(), new List<Spent>());
        var worst = 0.0;
        for (var lap = -1; lap < Laps; lap++)
            foreach (var held in helds)
            {
                IReadOnlyList<LoadFactor> ours = [];
                IReadOnlyList<double?> theirs = [];
                Spent l = default, y = default, s = default, r = default;
                Action[] turns =
                [
                    () => (_, l) = Spent.On(() => LoadFactor.Of(held, ThrowDirections.All, firstYield: false)),
                    () => (_, y) = Spent.On(() => LoadFactor.Of(held, ThrowDirections.All)),
                    () => (ours, s) = Spent.On(() => LoadFactor.Of(held, ThrowDirections.All, RegionShape.Inside(Corners), firstYield: false)),
                    () => (theirs, r) = Spent.On(() => ThrowDirections.All.Select(d => GeneralProgram.OfStanding(held, d, RegionShape.Inside(Corners))).ToList()),
                ];
                foreach (var turn in lap % 2 == 0 ? turns : turns.Reverse()) turn();
                if (lap < 0) continue; // compiled before it counts
                limit.Add(l);
                yield.Add(y);
                same.Add(s);
                rival.Add(r);
                worst = Math.Max(worst, ours.Zip(theirs).Max(p => Apart(p.First, p.Second)));
            }
        Tell($"{fixings} fixings, 26 directions: limit", limit, fixings == 60 ? 20 : null);
        Tell($"{fixings} fixings, 26 directions: limit and first yield", yield, null);
        Tell($"{fixings} fixings, 26 directions: limit, {Corners} corners", same, null);
        Tell($"{fixings} fixings, 26 directions: general solver, {Corners} corners", rival, null);
        Console.WriteLine(FormattableString.Invariant($"   general solver / ours on the same polyhedra {Cpu(rival) / Cpu(same):0} times, / ours on the smooth region {Cpu(rival) / Cpu(limit):0} times (cpu); answers differ by {worst:0.0e0} at most"));
        return (worst > Promised ? 1 : 0) + (fixings == 60 && Middle(limit) > 0.020 ? 1 : 0);
    }

    private static int Van(int draws, double limitS)
    {
        var helds = Enumerable.Range(1, Parts).Select(MadeUpHeld.OfVan).ToList();
        Throw[] throws = [.. ThrowDirections.All.Select(d => new Throw(d, 4))];
        HoldingChance.Of(new(helds[0], MadeUpHeld.Doubtful(helds[0]), throws, 50, 1)); // compiled before it counts
        var (answers, spent) = Spent.On(() => helds.Select((h, i) => HoldingChance.Of(new(h, MadeUpHeld.Doubtful(h), throws, draws, i))).ToList());
        var (asked, solved) = (answers.Sum(a => (long)a.Asked), answers.Sum(a => (long)a.Solved));
        // the rival on a sample of the same questions: the whole would take hours
        var sample = helds.Take(12).ToList();
        var (_, rival) = Spent.On(() => sample.Sum(h => ThrowDirections.All.Sum(d => GeneralProgram.OfStanding(h, d, RegionShape.Inside(Corners)) ?? 0)));
        var each = rival.CpuS / (sample.Count * ThrowDirections.All.Count);
        Console.WriteLine(FormattableString.Invariant(
            $"van of {Parts} parts, {helds.Average(h => h.Fixings.Count):0.0} fixings each, 26 directions, {draws} draws: {spent.WallS:0.00} s, {spent.CpuS:0.00} s cpu; {asked} questions, {solved} solved ({100.0 * solved / asked:0.0} %)   promised {limitS:0} s: {(spent.WallS <= limitS ? "kept" : "NOT KEPT")}"));
        Console.WriteLine(FormattableString.Invariant($"   general solver {each * 1e3:0.00} ms a question on a sample: about {each * asked / 60:0} min of cpu for all, {each * asked / spent.CpuS:0} times as much"));
        return spent.WallS <= limitS ? 0 : 1;
    }

    private static double Apart(LoadFactor ours, double? theirs) => theirs switch
    {
        null => ours.CarriesItself ? 1 : 0,
        double.PositiveInfinity => double.IsInfinity(ours.LowG) ? 0 : 1,
        { } g => Math.Abs(g - ours.LowG) / (1 + Math.Abs(g)),
    };

    private static double Middle(List<Spent> laps) => laps.Select(l => l.WallS).Order().ElementAt(laps.Count / 2);

    private static double Cpu(List<Spent> laps) => laps.Select(l => l.CpuS).Order().ElementAt(laps.Count / 2);

    private static void Tell(string what, List<Spent> laps, double? limitMs)
    {
        var promise = limitMs is { } limit ? FormattableString.Invariant($"   promised {limit:0} ms: {(Middle(laps) * 1e3 <= limit ? "kept" : "NOT KEPT")}") : "";
        Console.WriteLine(FormattableString.Invariant($"{what,-62} {Middle(laps) * 1e3,9:0.00} ms, {Cpu(laps) * 1e3,9:0.00} ms cpu{promise}"));
    }
}
