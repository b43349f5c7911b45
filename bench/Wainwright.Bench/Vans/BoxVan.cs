using Wainwright.Geometry;

namespace Wainwright.Bench.Vans;

/// <summary>How a made-up van is filled.</summary>
enum Family
{
    /// <summary>A guillotine packing with 70 % of its leaves kept.</summary>
    Dense,

    /// <summary>55 % kept.</summary>
    Middle,

    /// <summary>40 % kept.</summary>
    Airy,

    /// <summary>Furniture along the walls and an aisle between, floor sheets, lining, ceiling, joints.</summary>
    VanLike,
}

/// <summary>A made-up van of boxes: the same number gives the same van everywhere.</summary>
/// <param name="Name">Family, parts and seed.</param>
/// <param name="LengthMm">Length of the room; it is 2000 wide and 2000 high.</param>
/// <param name="SideDoor">Where the side door is along the right wall, 1700 high; the rear door is 1600 wide and 1800 high.</param>
/// <param name="Parts">What is in it.</param>
/// <param name="Joints">What holds it.</param>
/// <param name="Targets">Parts wanted out.</param>
sealed record BoxVan(
    string Name, int LengthMm, (int FromMm, int ToMm) SideDoor, IReadOnlyList<BoxPart> Parts, IReadOnlyList<BoxJoint> Joints, IReadOnlyList<int> Targets)
{
    public const int AcrossMm = 2000;

    public const int WallMm = 50;

    public Shell Shell => new(
        new(0, 0, 0, LengthMm, AcrossMm, AcrossMm), WallMm,
        [new("rear doors", Heading.PlusX, new(0, 200, 0, 0, 1800, 1800)), new("side door", Heading.PlusY, new(SideDoor.FromMm, 0, 0, SideDoor.ToMm, 0, 1700))], []);

    public static BoxVan Make(Family family, int parts, int seed)
    {
        var name = FormattableString.Invariant($"{family}-{parts}-{seed}");
        // the families share seeds, not vans
        var random = new Random(seed * 1009 + parts * 7 + (int)family);
        return family == Family.VanLike ? new FittedVan(random, parts).Named(name) : Packing.Of(family, parts, random) with { Name = name };
    }
}

/// <summary>What a box part is in the van.</summary>
enum Sort
{
    Box,
    FloorSheet,
    Lining,
    Ceiling,
    Carcass,
    Front,
    Top,
    Fitted,
}

/// <summary>A part.</summary>
/// <param name="Sort">What it is.</param>
/// <param name="Boxes">Its boxes [mm].</param>
/// <param name="Minutes">Minutes to carry it out and back.</param>
/// <param name="StandsOn">Parts it rests on.</param>
sealed record BoxPart(Sort Sort, IReadOnlyList<Box> Boxes, int Minutes, IReadOnlyList<int> StandsOn);

/// <summary>Fixings of a part.</summary>
/// <param name="Part">The part they hold.</param>
/// <param name="To">What it is held to; absent for the van.</param>
/// <param name="Points">Where they are.</param>
/// <param name="From">The side hand and tool come from.</param>
/// <param name="Minutes">Minutes to undo them and do them up again.</param>
sealed record BoxJoint(int Part, int? To, IReadOnlyList<Point> Points, Heading From, int Minutes);
