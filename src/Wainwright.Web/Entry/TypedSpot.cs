using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>
/// Where a thing of known size stands along one axis, as one says it in the van. Along: <c>350</c> from the front, <c>rear 120</c>,
/// <c>behind A20</c>, <c>ahead of A20</c>. Across: <c>40</c> from the left, <c>right 35</c>, <c>middle</c>. Up: <c>32</c> from the floor,
/// <c>on A20</c>, <c>under A20</c>, <c>roof 0</c>. A part may be followed by a gap: <c>on A20 15</c>.
/// </summary>
public static class TypedSpot
{
    /// <summary>The smaller coordinate [mm], or why it cannot be read. Nothing typed gives neither.</summary>
    /// <param name="axis">Axis asked for.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="sizeMm">Size of the thing along the axis [mm]; absent when not measured.</param>
    /// <param name="job">The van and what stands in it.</param>
    /// <param name="bare">Unit of a bare number.</param>
    public static (double? Mm, string? Fault) Of(Axis axis, string? text, double? sizeMm, Job job, Measures bare)
    {
        var typed = (text ?? "").Trim();
        if (typed.Length == 0) return (null, null);
        if (Figures.Mm(typed, bare) is { } plain) return (plain, null);
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var room = job.Vehicle.LoadSpace;
        var end = axis switch { Axis.X => room.LengthMm.Value, Axis.Y => room.WidthMm.Value, _ => room.HeightMm.Value };
        return (axis, words[0].ToLowerInvariant()) switch
        {
            (Axis.X, "front") or (Axis.Y, "left") or (Axis.Z, "floor") => Gap(words[1..], bare, gap => gap),
            (Axis.X, "rear") or (Axis.Y, "right") or (Axis.Z, "roof") => Sized(sizeMm, size => Gap(words[1..], bare, gap => end - gap - size)),
            (Axis.Y, "middle") => Sized(sizeMm, size => ((end - size) / 2, null)),
            (Axis.X, "behind") or (Axis.Z, "on") => Beside(axis, words[1..], job, bare, (box, gap) => Along(box.High, axis) + gap),
            (Axis.X, "ahead") or (Axis.Z, "under") => Sized(sizeMm, size => Beside(axis, words[1..], job, bare, (box, gap) => Along(box.Low, axis) - gap - size)),
            _ => (null, $"“{typed}” is not understood; type {Hint(axis, bare)}"),
        };
    }

    /// <summary>What may be typed.</summary>
    public static string Hint(Axis axis, Measures bare)
    {
        var (a, b) = bare == Measures.Us ? ("14 1/2", "4 3/4") : ("350", "120");
        return axis switch
        {
            Axis.X => $"{a} from the front, rear {b}, behind A20, or ahead of A20",
            Axis.Y => $"{a} from the left, right {b}, or middle",
            _ => $"{a} from the floor, on A20, under A20, or roof {b}",
        };
    }

    /// <summary>The part that <c>on …</c> names; it then also rests there.</summary>
    public static PartId? RestsOn(string? text, Job job) =>
        (text ?? "").Trim().Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var on, var id, ..] && on.Equals("on", StringComparison.OrdinalIgnoreCase) ? Find(job, id)?.Id : null;

    private static (double?, string?) Sized(double? size, Func<double, (double?, string?)> then) =>
        size is { } s ? then(s) : (null, "needs the size first: it is measured from the other end");

    private static (double?, string?) Gap(string[] words, Measures bare, Func<double, double> then)
    {
        if (words is ["wall"] or ["doors"] or ["skin"]) words = [];
        if (words.Length == 0) return (then(0), null);
        var text = string.Join(' ', words);
        return Figures.Mm(text, bare) is { } gap ? (then(gap), null) : (null, $"“{text}” is not a measure");
    }

    private static (double?, string?) Beside(Axis axis, string[] words, Job job, Measures bare, Func<(Place Low, Place High), double, double> then)
    {
        if (words is ["of" or "top", ..]) words = words[1..];
        if (words is ["of", ..]) words = words[1..];
        if (words.Length == 0) return (null, "name the part");
        if (Find(job, words[0]) is not { } part) return (null, $"there is no part {words[0]}");
        if (part.Bounds() is not { } box) return (null, $"{part.Id} has no measured place yet");
        return Gap(words[1..], bare, gap => then(box, gap));
    }

    private static Part? Find(Job job, string id) => job.Parts.FirstOrDefault(p => p.Id.Text.Equals(id, StringComparison.OrdinalIgnoreCase));

    private static double Along(Place p, Axis axis) => axis switch { Axis.X => p.XMm, Axis.Y => p.YMm, _ => p.ZMm };
}
