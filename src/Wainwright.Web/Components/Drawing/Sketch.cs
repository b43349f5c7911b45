using System.Globalization;
using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Survey;
using Wainwright.Survey.Retention;
using Wainwright.Web.Entry;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Components.Drawing;

/// <summary>The job as the drawing board in the browser wants it: places as three numbers, solids as flat records.</summary>
public static class Sketch
{
    // more figures than these lie over one another
    private const int MostFigures = 10;

    /// <summary>The whole van.</summary>
    public static object Of(Job job, Measures measures) => new
    {
        van = Van(job.Vehicle),
        parts = job.Parts.Select(p => new { id = p.Id.Text, name = p.Name, system = Word(p.System), solids = p.Solids.Select(Solid) }),
        lines = job.Lines.Where(l => l.Route.Count > 1).Select(l => new { id = l.Id.Text, medium = Word(l.Medium), route = l.Route.Select(At) }),
        ticks = Ticks(job.Vehicle.LoadSpace.LengthMm.Value, measures),
    };

    /// <summary>One solid.</summary>
    public static object Solid(Solid solid) => solid switch
    {
        BoxSolid b => new { kind = "box", at = At(b.At), size = At(b.Size), yaw = b.YawDeg, tilt = b.TiltDeg },
        CylinderSolid c => new { kind = "cylinder", at = At(c.At), along = (int)c.Along, diameter = c.DiameterMm, length = c.LengthMm, yaw = c.YawDeg, tilt = c.TiltDeg },
        PrismSolid p => new { kind = "prism", along = (int)p.Along, outline = p.Outline.Select(At), length = p.LengthMm, yaw = p.YawDeg, tilt = p.TiltDeg },
        _ => throw new ArgumentOutOfRangeException(nameof(solid)),
    };

    /// <summary>One step of a way out.</summary>
    /// <param name="job">The job.</param>
    /// <param name="step">The step; absent before the first.</param>
    /// <param name="gone">Parts that are out by then.</param>
    /// <param name="about">Parts to mark.</param>
    public static object Move(Job job, RemovalStep? step, IEnumerable<PartId> gone, IEnumerable<PartId> about)
    {
        var carried = step is { Kind: StepKind.TakeOut } ? step : null;
        return new
        {
            gone = gone.Select(p => p.Text).Distinct().ToList(),
            moving = carried is null ? [] : WrittenDown.Load(carried).Select(p => p.Text).ToList(),
            path = carried?.Path.Select(p => new { shift = At(p.ShiftMm), turns = p.QuarterTurnsAbout.Select(a => (int)a), turned = p.Turned is { } q ? (double[])[q.X, q.Y, q.Z, q.W] : null }).ToList() ?? [],
            folded = carried?.FoldedMm is { } size ? At(size) : null,
            fixings = step?.Joint is { } joint && job.Joints.FirstOrDefault(j => j.Id == joint) is { } held ? held.Points.Select(At).ToList() : [],
            about = about.Concat(step?.Part is { } part ? [part] : []).Select(p => p.Text).ToList(),
        };
    }

    /// <summary>The parts by how they hold, and the push that breaks one of them.</summary>
    /// <param name="held">What was worked out.</param>
    /// <param name="about">The part whose push is drawn.</param>
    /// <param name="added">Places where something would be added; absent to mark the fixings that decide.</param>
    public static object Judged(JobHolding held, PartHolding? about, IReadOnlyList<Place>? added = null)
    {
        var lettered = held.Parts.Where(p => p.Verdict != Verdict.Holds).Take(MostFigures).Append(about).OfType<PartHolding>().Select(p => p.Part.Id).ToHashSet();
        var push = about is null ? null : HoldWords.Worst(about);
        return new
        {
            parts = held.Parts.Select(p => new
            {
                id = p.Part.Id.Text,
                verdict = p.Verdict switch { Verdict.FallsShort => "short", Verdict.CannotTell => "unknown", _ => "holds" },
                text = lettered.Contains(p.Part.Id) ? $"{p.Verdict switch { Verdict.FallsShort => "✕", Verdict.CannotTell => "?", _ => "✓" }} {p.Part.Id}{(HoldWords.Telling(p)?.FactorG is { } g ? $" {HoldWords.Unit(g.Likely)}" : "")}" : null,
            }),
            push = push is { FactorG: { } factor } && about!.Part.Bounds() is var (low, high)
                ? new { at = (double[])[(low.XMm + high.XMm) / 2, (low.YMm + high.YMm) / 2, (low.ZMm + high.ZMm) / 2], along = (double[])[push.Way.X, push.Way.Y, push.Way.Z], text = $"{HoldWords.Unit(factor.Likely)} {push.Words}" } : null,
            fixings = added is not null ? [.. added.Select(At)] : about?.Weakest is { } joint && held.Job.Joints.FirstOrDefault(j => j.Id == joint) is { } weakest ? weakest.Points.Select(At).ToList() : [],
        };
    }

    /// <summary>Three numbers.</summary>
    public static double[] At(Place p) => [p.XMm, p.YMm, p.ZMm];

    private static object Van(Vehicle v)
    {
        var room = v.LoadSpace;
        return new
        {
            size = (double[])[room.LengthMm.Value, room.WidthMm.Value, room.HeightMm.Value],
            taper = room.Taper is { } t ? new { fromZ = t.FromZMm, inAtRoof = t.InAtRoofMm } : null,
            arches = room.WheelArches.Select(a => Arch(a, room.WidthMm.Value)),
            openings = v.Openings.Select(o => new { name = o.Name, face = Word(o.Face), from = o.FromMm.Value, width = o.WidthMm.Value, sill = o.SillMm.Value, height = o.HeightMm.Value, passable = o.Passable }),
            frames = v.Frames.Select(f => new { kind = Word(f.Kind), side = f.Side is { } s ? Word(s) : null, x = f.XMm, toX = f.ToXMm, z = f.ZMm }),
            axles = v.Axles.Select(a => a.XMm.Value),
        };
    }

    private static object Arch(WheelArch a, double width)
    {
        var (low, high) = a.Side == Direction.Left ? (0d, a.WidthMm) : (width - a.WidthMm, width);
        return new { low = (double[])[a.FromXMm, low, 0], high = (double[])[a.ToXMm, high, a.HeightMm] };
    }

    /// <summary>Figures of the tape along the floor: every half metre, or every two feet.</summary>
    private static IEnumerable<object> Ticks(double lengthMm, Measures measures)
    {
        var step = measures == Measures.Us ? 24 * 25.4 : 500;
        for (var i = 0; i * step <= lengthMm; i++)
            yield return new { at = i * step, text = measures == Measures.Us ? string.Create(CultureInfo.InvariantCulture, $"{i * 24}″") : string.Create(CultureInfo.InvariantCulture, $"{i * 500}") };
    }

    private static string Word(Enum value)
    {
        var name = value.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
