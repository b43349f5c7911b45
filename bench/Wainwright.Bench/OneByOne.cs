using System.Diagnostics;
using Wainwright.Access;
using Wainwright.Bench.Vans;
using Wainwright.Fitout;

namespace Wainwright.Bench;

/// <summary>One line for each made-up van: what the planner spent and what it proved.</summary>
static class OneByOne
{
    /// <summary>The search alone, over boxes; called off after so many seconds of processor time, when they are given.</summary>
    public static int Boxes(Family family, int parts, int seeds, int seconds)
    {
        foreach (var van in Vans(family, parts, seeds))
        {
            var puzzle = new VanPuzzle(van);
            using var allowance = seconds > 0 ? new Allowance(seconds) : null;
            // a search with a time for it ends when that is spent, not before
            var budget = seconds > 0 ? new(int.MaxValue, int.MaxValue / 100) : SearchBudget.Usual;
            var (outcome, spent) = Spent.On(() => new Planner(puzzle.Puzzle).Plan(van.Targets, null, budget, allowance?.Over ?? CancellationToken.None));
            var found = outcome is Solved plan
                ? FormattableString.Invariant($"price {plan.Cost} bound {plan.LowerBound} gap {100.0 * (plan.Cost - plan.LowerBound) / plan.Cost:0.0} % items {plan.Order.Count} cuts {plan.Proof.Cuts.Count}")
                : "unreachable";
            Console.WriteLine(FormattableString.Invariant($"{van.Name,-16} {spent.WallS,8:0.000} s {spent.CpuS,8:0.000} cpu  tests {puzzle.Tests,6} masters {outcome.MasterSolves,4}  {found}"));
        }
        TellMemory();
        return 0;
    }

    /// <summary>The whole plan of a job, as <c>wain plan</c> makes it: tools and hands, turns, bracket, reasons.</summary>
    public static int Jobs(Family family, int parts, int seeds)
    {
        foreach (var van in Vans(family, parts, seeds))
        {
            var job = JobFile.Read(JobFile.Write(VanJob.Of(van))).Job!;
            var (plan, spent) = Spent.On(() => RemovalPlanner.Remove(job, [.. van.Targets.Select(VanJob.IdOf)]));
            Console.WriteLine(FormattableString.Invariant(
                $"{van.Name,-16} {spent.WallS,8:0.000} s {spent.CpuS,8:0.000} cpu  tests {plan.Effort.Questions,6} masters {plan.Effort.MasterSolves,4}  {plan.Proof} {plan.TotalMinutes:0.0} min, {plan.PartsOut.Count()} parts out"));
        }
        TellMemory();
        return 0;
    }

    private static void TellMemory()
    {
        using var process = Process.GetCurrentProcess();
        Console.WriteLine(FormattableString.Invariant($"most memory held, with everything loaded: {process.PeakWorkingSet64 / 1e6:0} MB"));
    }

    private static IEnumerable<BoxVan> Vans(Family family, int parts, int seeds) => Enumerable.Range(1, seeds).Select(seed => BoxVan.Make(family, parts, seed));
}
