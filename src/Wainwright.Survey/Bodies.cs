using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Survey;

/// <summary>A part's solids as the boxes that hold them and the boxes that lie within them.</summary>
internal static class Bodies
{
    public static Body Of(Part part) => Body.Union(part.Solids.Select(Of));

    public static Body Of(Solid solid)
    {
        var turn = new Turn(solid.YawDeg, solid.TiltDeg);
        return solid switch
        {
            BoxSolid box => Body.BoxBetween(Point(box.At), Point(box.At + box.Size), turn),
            PrismSolid prism => Body.Prism((int)prism.Along, prism.Plane(), From(prism.Outline[0], prism.Along), From(prism.Outline[0], prism.Along) + prism.LengthMm, turn),
            CylinderSolid bar => Body.Cylinder((int)bar.Along, Across(bar.At, bar.Along), bar.DiameterMm / 2, From(bar.At, bar.Along), From(bar.At, bar.Along) + bar.LengthMm, turn),
            _ => throw new ArgumentOutOfRangeException(nameof(solid), solid.GetType().Name, "no such solid"),
        };
    }

    private static Point Point(Place p) => new(p.XMm, p.YMm, p.ZMm);

    private static double From(Place p, Axis along) => along switch { Axis.X => p.XMm, Axis.Y => p.YMm, _ => p.ZMm };

    private static (double U, double V) Across(Place p, Axis along) => along switch { Axis.X => (p.YMm, p.ZMm), Axis.Y => (p.XMm, p.ZMm), _ => (p.XMm, p.YMm) };
}
