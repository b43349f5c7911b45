using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Changes made to a board itself: a hatch cut into it, or a strip cut off it.</summary>
internal static class BoardIdea
{
    private const double ThickestMm = 45, RimMm = 40, HatchMm = 300, LeastHatchMm = 120, FarthestMm = 300; // a hand with a tool needs 100 mm; common practice, no source
    private const double BoardKgPerM3 = 600; // plywood; common practice, no source

    /// <summary>A service hatch opposite something, in each board of a part that covers it within an arm's length.</summary>
    public static IEnumerable<Idea> Hatches(Job job, Part part, Part behind, int partOut)
    {
        if (behind.Bounds() is not var (low, high)) yield break;
        var middle = new[] { (low.XMm + high.XMm) / 2, (low.YMm + high.YMm) / 2, (low.ZMm + high.ZMm) / 2 };
        foreach (var board in part.Solids.OfType<BoxSolid>().Where(b => b is { YawDeg: 0, TiltDeg: 0 }))
        {
            double[] at = [board.At.XMm, board.At.YMm, board.At.ZMm], size = [board.Size.XMm, board.Size.YMm, board.Size.ZMm];
            var thin = Array.IndexOf(size, size.Min());
            if (size[thin] > ThickestMm || middle[thin] > at[thin] && middle[thin] < at[thin] + size[thin]) continue;
            var (from, to) = ((double[])[.. at], (double[])[at[0] + size[0], at[1] + size[1], at[2] + size[2]]);
            var (near, far) = (Of(low, thin), Of(high, thin));
            var fits = Math.Max(near - (at[thin] + size[thin]), at[thin] - far) <= FarthestMm;
            for (var axis = 0; axis < 3; axis++)
            {
                if (axis == thin) continue;
                var most = Math.Min(HatchMm, size[axis] - 2 * RimMm);
                fits &= most >= LeastHatchMm && middle[axis] > at[axis] && middle[axis] < at[axis] + size[axis];
                if (!fits) break;
                from[axis] = Math.Clamp(middle[axis] - most / 2, at[axis] + RimMm, at[axis] + size[axis] - RimMm - most);
                to[axis] = from[axis] + most;
            }
            if (fits) yield return Hatch(job, part, board, behind, thin, from, to, outwards: middle[thin] < at[thin] ? +1 : -1, partOut);
        }
    }

    /// <summary>A part cut back on one side so that something passes it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="part">The part that is cut.</param>
    /// <param name="side">The side that is cut off.</param>
    /// <param name="byMm">How much.</param>
    /// <param name="passing">What is to pass.</param>
    /// <param name="partOut">What is done today: the part goes out.</param>
    public static Idea? CutBack(Job job, Part part, Direction side, int byMm, Part passing, int partOut)
    {
        if (part.Bounds() is not var (low, high)) return null;
        var (axis, up) = ((int)side / 2, side is Direction.Rearward or Direction.Right or Direction.Up);
        var edge = up ? Of(high, axis) - byMm : Of(low, axis) + byMm;
        var solids = new List<Solid>();
        foreach (var solid in part.Solids)
        {
            var (from, to) = (Of(solid.Bounds().Low, axis), Of(solid.Bounds().High, axis));
            if (up ? to <= edge : from >= edge) solids.Add(solid);
            else if (solid is BoxSolid { YawDeg: 0, TiltDeg: 0 } box && (up ? edge - from : to - edge) >= RimMm)
                solids.Add(up ? box with { Size = With(box.Size, axis, edge - from) } : box with { At = With(box.At, axis, edge), Size = With(box.Size, axis, to - edge) });
            else return null; // nothing would be left of it there
        }
        return new(
            WhatIfKind.CutBack,
            FormattableString.Invariant($"Cut {Wording.Name(part)} back by {byMm} mm {Idea.Side(side) switch { "above" => "at its top", "below" => "at its foot", var s => $"on {s[4..]}" }}, so that {Wording.Name(passing)} passes"),
            [Edit.Put(job, "parts", part.Id.Text, part with { Solids = solids })],
            "Look what is fixed there, and what the edge carried.",
            [partOut]);
    }

    private static Idea Hatch(Job job, Part part, BoxSolid board, Part behind, int thin, double[] from, double[] to, int outwards, int partOut)
    {
        double[] at = [board.At.XMm, board.At.YMm, board.At.ZMm], end = [at[0] + board.Size.XMm, at[1] + board.Size.YMm, at[2] + board.Size.ZMm];
        var (u, v) = thin switch { 0 => (1, 2), 1 => (0, 2), _ => (0, 1) };
        // the rim: a full strip at either end, and two between them
        (string Where, double[] From, double[] To)[] rims =
        [
            ("one end", at, Put(end, u, from[u])), ("other end", Put(at, u, to[u]), end),
            ("one edge", Put(at, u, from[u]), Put(Put(end, u, to[u]), v, from[v])), ("other edge", Put(Put(at, u, from[u]), v, to[v]), Put(end, u, to[u])),
        ];
        var cut = rims.Select((r, i) => board with { Name = i == 0 || board.Name is null ? board.Name : $"{board.Name}, {r.Where} of the hatch", At = Place(r.From), Size = Place(r.To) - Place(r.From) }).ToList();
        var names = cut.Select(c => c.Name).OfType<string>().ToList();
        var size = Place(to) - Place(from);
        var lid = new Part
        {
            Id = new(Idea.Free(job.Parts.Select(p => p.Id.Text), $"{part.Id}-hatch")),
            Name = $"service hatch in {part.Name}",
            Kind = "service hatch",
            System = part.System,
            Known = Known.Inferred,
            Solids = [new BoxSolid { At = Place(from), Size = size }],
            MassKg = Math.Round(size.XMm * size.YMm * size.ZMm * 1e-9 * BoardKgPerM3, 2),
            CarriedOutWith = part.Id,
            LooseGoods = true,
        };
        var side = (Direction)(2 * thin + (outwards > 0 ? 1 : 0));
        var face = outwards > 0 ? to[thin] : from[thin];
        var knobs = new Joint
        {
            Id = new(Idea.Free(job.Joints.Select(j => j.Id.Text), $"{lid.Id}-knobs")),
            Part = lid.Id,
            To = part.Id,
            Type = FixingType.HandKnob,
            Count = 2,
            Points = [Place(Put(Put(from, thin, face), v, (from[v] + to[v]) / 2)), Place(Put(Put(to, thin, face), v, (from[v] + to[v]) / 2))],
            Known = Known.Inferred,
            Release = new() { Way = ReleaseWay.ByHand, From = side },
        };
        var whole = part with
        {
            Solids = [.. part.Solids.SelectMany(s => s == board ? cut : (IEnumerable<Solid>)[s])],
            ComesApartInto = [.. part.ComesApartInto.Select(p => board.Name is { } n && p.Solids.Contains(n) ? p with { Solids = [.. p.Solids, .. names.Where(x => x != n)] } : p)],
        };
        return new(
            WhatIfKind.Hatch,
            FormattableString.Invariant($"Cut a service hatch {to[u] - from[u]:0} × {to[v] - from[v]:0} mm into {(board.Name is { } name ? $"the {name} of " : "")}{Wording.Name(part)}, in front of {Wording.Name(behind)}, its middle at x {(from[0] + to[0]) / 2:0}, y {(from[1] + to[1]) / 2:0}, z {(from[2] + to[2]) / 2:0}"),
            [Edit.Put(job, "parts", part.Id.Text, whole), Edit.Put(job, "parts", lid.Id.Text, lid), Edit.Put(job, "joints", knobs.Id.Text, knobs)],
            "Look for cables and pipes behind the board and for what the board carries; in wet rooms the hatch must be tight.",
            [partOut]);
    }

    private static double Of(Place place, int axis) => axis switch { 0 => place.XMm, 1 => place.YMm, _ => place.ZMm };

    private static Place With(Place place, int axis, double to) => axis switch { 0 => place with { XMm = to }, 1 => place with { YMm = to }, _ => place with { ZMm = to } };

    private static Place Place(double[] p) => new(p[0], p[1], p[2]);

    private static double[] Put(double[] p, int axis, double to)
    {
        double[] q = [.. p];
        q[axis] = to;
        return q;
    }
}
