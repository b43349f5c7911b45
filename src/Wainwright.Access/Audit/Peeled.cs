using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Whether a soft thing comes off its place as a whole before it is folded: straight, else by a plain walk step by step.</summary>
internal static class Peeled
{
    private const double AwayMm = 50; // common practice, no source
    private const int StepMm = 5;

    public static bool ComesOff(IReadOnlyList<WalkedSolid> own, Carried carried)
    {
        bool Free(Vec from, Vec slide) => carried.Hit([.. own.Select(s => s.Placed(WalkedTurn.AsFound, Vec.Zero, from))], slide, own, isTurned: false) is null;
        if (Enum.GetValues<Direction>().Any(d => Free(Vec.Zero, AwayMm * Vec.Of(d.Step())))) return true;
        var (seen, open) = (new HashSet<Vec> { Vec.Zero }, new Queue<Vec>([Vec.Zero]));
        while (open.TryDequeue(out var at))
        {
            if (Enumerable.Range(0, 3).Any(axis => Math.Abs(at.Along(axis)) >= AwayMm)) return true;
            foreach (var step in Enum.GetValues<Direction>().Select(d => StepMm * Vec.Of(d.Step())))
                if (!seen.Contains(at + step) && Free(at, step) && seen.Add(at + step)) open.Enqueue(at + step);
        }
        return false;
    }
}
