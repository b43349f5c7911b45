using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A part's solids as shapes of the geometry, for every room that has to know where a part is.</summary>
public static class PartBody
{
    /// <summary>All of a part's solids as one body.</summary>
    /// <param name="solids">The solids; none gives a body without boxes.</param>
    public static Body Of(IEnumerable<Solid> solids) => Body.Union(solids.Select(Of));

    /// <summary>One solid with its turn and tilt.</summary>
    /// <param name="solid">A solid in vehicle axes [mm].</param>
    /// <exception cref="NotSupportedException">The solid is of a kind that has no shape here.</exception>
    public static Body Of(Solid solid)
    {
        var turn = new Turn(solid.YawDeg, solid.TiltDeg);
        switch (solid)
        {
            case BoxSolid box:
                return Body.BoxBetween(PointOf(box.At), PointOf(box.At + box.Size), turn);
            case CylinderSolid round:
                var along = (int)round.Along;
                var from = Coordinate(round.At, along);
                return Body.Cylinder(along, Across(round.At, along), round.DiameterMm / 2, from, from + round.LengthMm, turn);
            case PrismSolid prism:
                var start = Coordinate(prism.Outline[0], (int)prism.Along);
                return Body.Prism((int)prism.Along, prism.Plane(), start, start + prism.LengthMm, turn);
            default:
                throw new NotSupportedException($"Solids of the kind {solid.GetType().Name} have no shape here.");
        }
    }

    /// <summary>One solid as it is: turned sides slant and round ones are round.</summary>
    /// <param name="solid">A solid in vehicle axes [mm].</param>
    /// <exception cref="NotSupportedException">The solid is of a kind that has no shape here.</exception>
    public static Geometry.Convex Exact(Solid solid)
    {
        var turn = new Turn(solid.YawDeg, solid.TiltDeg);
        switch (solid)
        {
            case BoxSolid box:
                return Geometry.Convex.Box(PointOf(box.At), PointOf(box.At + box.Size), turn);
            case CylinderSolid round:
                var along = (int)round.Along;
                var from = Coordinate(round.At, along);
                return Geometry.Convex.Cylinder(along, Across(round.At, along), round.DiameterMm / 2, from, from + round.LengthMm, turn);
            case PrismSolid prism:
                var start = Coordinate(prism.Outline[0], (int)prism.Along);
                return Geometry.Convex.Drawn((int)prism.Along, prism.Plane(), start, start + prism.LengthMm, turn);
            default:
                throw new NotSupportedException($"Solids of the kind {solid.GetType().Name} have no shape here.");
        }
    }

    internal static Point PointOf(Place place) => new(place.XMm, place.YMm, place.ZMm);

    internal static Place PlaceOf(Point point) => new(point.XMm, point.YMm, point.ZMm);

    /// <summary>The same direction in both vocabularies: their orders agree, and a test holds them to it.</summary>
    internal static Heading HeadingOf(Direction direction) => (Heading)(int)direction;

    /// <summary>The same direction in both vocabularies.</summary>
    internal static Direction DirectionOf(Heading heading) => (Direction)(int)heading;

    private static double Coordinate(Place place, int axis) => axis switch { 0 => place.XMm, 1 => place.YMm, _ => place.ZMm };

    private static (double U, double V) Across(Place place, int axis) => axis switch
    {
        0 => (place.YMm, place.ZMm),
        1 => (place.XMm, place.ZMm),
        _ => (place.XMm, place.YMm),
    };
}
