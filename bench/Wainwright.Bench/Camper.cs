using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Bench;

/// <summary>What a plan of the demo camper takes in a fresh process, and again when everything is compiled and loaded.</summary>
static class Camper
{
    public static int Run(string part)
    {
        var upS = Environment.CpuUsage.TotalTime.TotalSeconds;
        var (job, read) = Spent.On(() => JobFile.Read(File.ReadAllBytes(Demo.File("touring-camper.wain.json"))).Job!);
        var (plan, first) = Spent.On(() => RemovalPlanner.Remove(job, [new(part)]));
        var (_, again) = Spent.On(() => RemovalPlanner.Remove(job, [new(part)]));
        Console.WriteLine(FormattableString.Invariant(
            $"{part}: {plan.TotalMinutes:0.0} min {plan.Proof}, {plan.Effort.Questions} questions; cpu: runtime up {upS:0.00} s, job read {read.CpuS:0.00} s, first plan {first.CpuS:0.00} s ({first.WallS:0.00} by the clock), again {again.CpuS:0.00} s"));
        Replans.Tell(job, [new(part)], glued: new(part));
        return 0;
    }
}
