using System.Globalization;

namespace Wainwright.Fitout;

/// <summary>Where things can be.</summary>
internal static class PlaceRules
{
    /// <summary>A tape is good to this [mm]; common practice, no source.</summary>
    private const double TapeMm = 5;

    public static IEnumerable<Issue> Of(Job job)
    {
        var room = job.Vehicle.LoadSpace;
        foreach (var (part, i) in job.Parts.Select((p, i) => (p, i)))
        {
            var at = JobRules.At(i, part.Id);
            foreach (var (solid, k) in part.Solids.Select((s, k) => (s, k)))
                foreach (var issue in Shape(solid, $"{at}.solids[{k}]")) yield return issue;
            foreach (var twice in part.Solids.Where(s => s.Name is not null).GroupBy(s => s.Name).Where(g => g.Count() > 1))
                yield return new($"{at}.solids", $"two solids are named “{twice.Key}”", "give each its own name");
            if (part.FoldsTo is { } fold && !(fold.XMm > 0 && fold.YMm > 0 && fold.ZMm > 0))
                yield return new($"{at}.foldsTo", $"three lengths above 0 mm, are {fold}", "measure it folded or rolled");
            if (!part.Outside && part.Solids.All(Positive) && part.Bounds() is { } box && Out(box, room, part.Solids.Max(s => s.PlusMinusMm) ?? TapeMm) is { } how)
                yield return new(at, how, "mend its place or size, or say \"outside\": true if it hangs outside or goes through the shell");
            if (part is { MassKg: not null, DensityKgPerM3: not null })
                yield return new(at, "has both a mass and a density", "keep the one you measured");
            if (part.CarriedOutWith == part.Id) yield return new($"{at}.carriedOutWith", "is the part itself", "name the part it leaves with, or leave it out");
        }
    }

    private static IEnumerable<Issue> Shape(Solid solid, string at)
    {
        if (solid is BoxSolid box && !Positive(box))
            yield return new($"{at}.size", $"length, width and height are above 0 mm, are {box.Size}", "measure it again; a thin sheet has a thickness too");
        if (solid is PrismSolid prism)
        {
            if (prism.Outline.Count is < 3 or > 64)
                yield return new($"{at}.outline", $"an outline has 3 to 64 corners, has {prism.Outline.Count}", "give its corners in order round it");
            else if (!Convex(prism.Plane()))
                yield return new($"{at}.outline", "is not convex or has no area", "split it into convex pieces, corners in order round each");
            if (prism.Outline.Select(p => prism.Along switch { Axis.X => p.XMm, Axis.Y => p.YMm, _ => p.ZMm }).Distinct().Count() > 1)
                yield return new($"{at}.outline", "its corners do not lie in one plane across the axis", "give them all the same coordinate along the axis");
        }
    }

    private static bool Positive(Solid solid) => solid is not BoxSolid box || box.Size is { XMm: > 0, YMm: > 0, ZMm: > 0 };

    private static bool Convex(IReadOnlyList<(double U, double V)> corners)
    {
        int left = 0, right = 0;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b, c) = (corners[i], corners[(i + 1) % corners.Count], corners[(i + 2) % corners.Count]);
            var turn = (b.U - a.U) * (c.V - b.V) - (b.V - a.V) * (c.U - b.U);
            if (turn > 1e-9) left++;
            if (turn < -1e-9) right++;
        }
        return (left == 0) != (right == 0);
    }

    private static string? Out((Place Low, Place High) box, LoadSpace room, double tolerance)
    {
        var most = new (double Over, string Side)[]
        {
            (-box.Low.XMm, "the front end"), (box.High.XMm - room.LengthMm.High, "the rear doors"),
            (-box.Low.YMm, "the left skin"), (box.High.YMm - room.WidthMm.High, "the right skin"),
            (-box.Low.ZMm, "the metal floor"), (box.High.ZMm - room.HeightMm.High, "the roof skin"),
        }.MaxBy(o => o.Over);
        return most.Over > tolerance ? string.Create(CultureInfo.InvariantCulture, $"reaches {most.Over:0.#} mm beyond {most.Side}") : null;
    }
}
