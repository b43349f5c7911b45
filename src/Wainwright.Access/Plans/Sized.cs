using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Parts made larger or smaller than recorded, to try what a measure decides.</summary>
internal static class Sized
{
    private const double LeastMm = 1;

    /// <summary>A part with its whole extent along an axis less by so much: every solid is squeezed towards its lower end.</summary>
    public static Part Narrower(Part part, Axis axis, double byMm)
    {
        var (low, high) = part.Bounds()!.Value;
        var (from, length) = (Along(low, axis), Along(high - low, axis));
        var share = (length - byMm) / length;
        return part with { Solids = [.. part.Solids.Select(s => Mapped(s, axis, at => from + (at - from) * share, share))] };
    }

    /// <summary>A part with every face of its solids moved inwards, or outwards when negative, at least 1 mm left.</summary>
    public static Part Shaved(Part part, Func<Solid, double> byMm) =>
        part with { Solids = [.. part.Solids.Select(s => Enum.GetValues<Axis>().Aggregate(s, (solid, axis) => Moved(solid, axis, byMm(s))))] };

    public static double Along(Place place, Axis axis) => axis switch { Axis.X => place.XMm, Axis.Y => place.YMm, _ => place.ZMm };

    /// <summary>How an extent along an axis is called.</summary>
    public static string Word(Axis axis) => axis switch { Axis.X => "long (front to rear)", Axis.Y => "wide (left to right)", _ => "high" };

    /// <summary>The measure along an axis.</summary>
    public static string Measure(Axis axis) => axis switch { Axis.X => "length (front to rear)", Axis.Y => "width (left to right)", _ => "height" };

    private static Solid Moved(Solid solid, Axis axis, double byMm)
    {
        var (low, high) = Upright(solid);
        var (from, length) = (Along(low, axis), Along(high - low, axis));
        if (length <= 0) return solid;
        var less = Math.Min(2 * byMm, Math.Max(0, length - LeastMm));
        var (share, middle) = ((length - less) / length, from + length / 2);
        return Mapped(solid, axis, at => middle + (at - middle) * share, share);
    }

    private static (Place Low, Place High) Upright(Solid solid) => (solid with { YawDeg = 0, TiltDeg = 0 }).Bounds();

    private static Solid Mapped(Solid solid, Axis axis, Func<double, double> placed, double share)
    {
        Place At(Place p) => axis switch { Axis.X => p with { XMm = placed(p.XMm) }, Axis.Y => p with { YMm = placed(p.YMm) }, _ => p with { ZMm = placed(p.ZMm) } };
        return solid switch
        {
            BoxSolid box => box with { At = At(box.At), Size = At(box.At + box.Size) - At(box.At) },
            PrismSolid prism => prism with { Outline = [.. prism.Outline.Select(At)], LengthMm = axis == prism.Along ? prism.LengthMm * share : prism.LengthMm },
            // round stays round: across its axis the diameter follows
            CylinderSolid round => axis == round.Along
                ? round with { At = At(round.At), LengthMm = round.LengthMm * share }
                : round with { At = At(round.At), DiameterMm = round.DiameterMm * share },
            _ => solid,
        };
    }
}
