using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>The factor of a chain in each direction, at the low, likely and high end of the doubt.</summary>
internal static class Solved
{
    private readonly record struct One(LoadFactor Factor, Held Held)
    {
        public JointId? Governing => Name(Factor.GoverningFixing);

        public JointId? First => Name(Factor.FirstFixing);

        private JointId? Name(int? fixing) => fixing is { } f ? JointId.Of(Held.Fixings[f].Name) : null;
    }

    public static IReadOnlyList<Thrown> Of(Job job, HeldChain chain, WhoHolds who, JointWorths worth, IReadOnlyList<Vector3D> ways)
    {
        var room = job.Vehicle.LoadSpace;
        // with some of its fixings alone the part holds at least what it holds then, even when what else it hangs on goes first
        List<HeldChain> chains = [chain];
        if (chain.Bodies.Count > 1)
            foreach (var by in (HeldBySome[])[HeldBySome.ShellAndVan, HeldBySome.VanAlone])
                if (who.Chain(chain.Bodies[0].Part, by) is var some && some.Joints.Any(j => j.Body == 0) && some.Joints.Count < chains[^1].Joints.Count) chains.Add(some);

        // the first yield costs more than the limit: asked for where the whole answer is, with likely strengths
        var whole = ways.Count == ThrowDirections.All.Count;

        List<One> At(StrengthEnd end, bool badFromFront = false)
        {
            List<One> Of(HeldChain of)
            {
                var held = Assembled.Of(of, worth, who, room, end, badFromFront);
                return [.. LoadFactor.Of(held, ways, firstYield: whole && end == StrengthEnd.Likely).Select(f => new One(f, held))];
            }
            return chains.Select(Of).Aggregate((best, next) => [.. best.Zip(next, (a, b) => b.Factor.LowG > a.Factor.LowG ? b : a)]);
        }
        var (low, likely, high) = (At(StrengthEnd.Low), At(StrengthEnd.Likely), At(StrengthEnd.High));
        if (FixingPlaces.AreDoubtful(chain)) low = [.. low.Zip(At(StrengthEnd.Low, badFromFront: true), (a, b) => a.Factor.LowG <= b.Factor.LowG ? a : b)];
        List<Thrown> all = [];
        for (var i = 0; i < ways.Count; i++)
        {
            var (l, m, h) = (low[i], likely[i], high[i]);
            // the three were solved apart: a heavy part may stand better than a light one
            var factor = new Span(Math.Min(l.Factor.LowG, m.Factor.LowG), m.Factor.LowG, Math.Max(h.Factor.HighG, m.Factor.LowG));
            // what is fully recorded and does not stay by the record does not stay; with a gap in the record something else may carry it
            Span? found = factor.High < 0 ? (IsRecorded(chain) ? Span.Exactly(0) : null) : new(Math.Max(0, factor.Low), Math.Max(0, factor.Likely), factor.High);
            var motion = m.Factor.Mechanism.Count > 0 ? m.Factor.Mechanism[0] : (Motion?)null;
            all.Add(new(ways[i], HeldDirections.Words(ways[i]), found, double.IsNaN(m.Factor.FirstYieldG) ? null : m.Factor.FirstYieldG, l.Governing ?? m.Governing, m.First, motion));
        }
        return all;
    }

    private static bool IsRecorded(HeldChain chain) => chain.Joints.All(j => j.Joint is { State: not FixingState.NotSeen, Known: Known.Seen or Known.Measured } && j.Joint.Points.Count > 0);
}
