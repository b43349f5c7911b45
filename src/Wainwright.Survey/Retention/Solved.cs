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
        // on its straight fixings alone the part holds at least what it holds there, even when what else it hangs on goes first
        var alone = chain.Bodies.Count > 1 ? who.Chain(chain.Bodies[0].Part, alone: true) : null;
        if (alone is not null && !alone.Joints.Any(j => j.Body == 0)) alone = null;

        List<One> At(StrengthEnd end, bool badFromFront = false)
        {
            List<One> Of(HeldChain of)
            {
                var held = Assembled.Of(of, worth, who, room, end, badFromFront);
                return [.. LoadFactor.Of(held, ways, firstYield: false).Select(f => new One(f, held))];
            }
            var whole = Of(chain);
            return alone is null ? whole : [.. whole.Zip(Of(alone), (w, o) => o.Factor.LowG > w.Factor.LowG ? o : w)];
        }
        var (low, likely, high) = (At(StrengthEnd.Low), At(StrengthEnd.Likely), At(StrengthEnd.High));
        if (FixingPlaces.AreDoubtful(chain)) low = [.. low.Zip(At(StrengthEnd.Low, badFromFront: true), (a, b) => a.Factor.LowG <= b.Factor.LowG ? a : b)];
        List<Thrown> all = [];
        for (var i = 0; i < ways.Count; i++)
        {
            var (l, m, h) = (low[i], likely[i], high[i]);
            // the three were solved apart: a heavy part may stand better than a light one
            var factor = new Span(Math.Min(l.Factor.LowG, m.Factor.LowG), m.Factor.LowG, Math.Max(h.Factor.HighG, m.Factor.LowG));
            var motion = m.Factor.Mechanism.Count > 0 ? m.Factor.Mechanism[0] : (Motion?)null;
            all.Add(new(ways[i], HeldDirections.Words(ways[i]), factor, double.IsNaN(m.Factor.FirstYieldG) ? null : m.Factor.FirstYieldG, l.Governing ?? m.Governing, m.First, motion));
        }
        return all;
    }
}
