using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>The base vehicle as a shell with gaps.</summary>
internal static class VanShell
{
    private const int WallMm = 40; // skin, rib and door thickness; how thick a wall is decides nothing, a gap's edge does
    private const int LeanSteps = 8;

    /// <summary>What parts leave by: openings a part can be carried through, as narrow as their tolerance allows.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="moreLandingMm">Clear ground outside beyond what is given.</param>
    public static Shell ForParts(Vehicle vehicle, int moreLandingMm = 0) =>
        Of(vehicle, vehicle.Openings.Where(o => o.Passable).Select(o => o with { LandingMm = o.LandingMm + moreLandingMm }));

    /// <summary>What hands and tools come in by: every opening, the cab front among them.</summary>
    public static Shell ForHands(Vehicle vehicle) => Of(vehicle, vehicle.Openings);

    /// <summary>What parts leave by if the load space and every opening are as large as their tolerance allows: for proofs that nothing passes.</summary>
    public static Shell AtMost(Vehicle vehicle) => Of(vehicle, vehicle.Openings.Where(o => o.Passable), wide: true);

    private static Shell Of(Vehicle vehicle, IEnumerable<Opening> openings, bool wide = false)
    {
        var space = vehicle.LoadSpace;
        int Extent(Measured mm) => Whole(wide ? mm.High : mm.Value);
        var room = new Box(0, 0, 0, Extent(space.LengthMm), Extent(space.WidthMm), Extent(space.HeightMm));
        return new(room, WallMm, [.. openings.Select(o => GapOf(o, wide))], [.. space.WheelArches.Select(a => ArchOf(a, room)), .. Leaning(space.Taper, room)]);
    }

    private static int Whole(double mm) => (int)Math.Round(mm, MidpointRounding.AwayFromZero);

    private static Gap GapOf(Opening opening, bool wide)
    {
        // where only the size is doubtful, the opening is taken small about its middle
        var (from, to) = wide ? Wide(opening.FromMm, opening.WidthMm) : Narrow(opening.FromMm, opening.WidthMm);
        var (low, high) = wide ? Wide(opening.SillMm, opening.HeightMm) : Narrow(opening.SillMm, opening.HeightMm);
        var landing = opening.LandingMm is { } mm ? Whole(mm) : (int?)null;
        return opening.Face switch
        {
            Face.Front => new(opening.Name, Heading.MinusX, new(0, from, low, 0, to, high), landing),
            Face.Rear => new(opening.Name, Heading.PlusX, new(0, from, low, 0, to, high), landing),
            Face.Left => new(opening.Name, Heading.MinusY, new(from, 0, low, to, 0, high), landing),
            Face.Right => new(opening.Name, Heading.PlusY, new(from, 0, low, to, 0, high), landing),
            Face.Roof => new(opening.Name, Heading.PlusZ, new(from, low, 0, to, high, 0), landing),
            _ => throw new ArgumentOutOfRangeException(nameof(opening), opening.Face, "an unknown wall"),
        };
    }

    private static (int From, int To) Narrow(Measured from, Measured size)
    {
        var less = size.PlusMinus ?? 0;
        return ((int)Math.Ceiling(from.Value + less / 2), (int)Math.Floor(from.Value + size.Value - less / 2));
    }

    private static (int From, int To) Wide(Measured from, Measured size)
    {
        var (more, aside) = ((size.PlusMinus ?? 0) / 2, from.PlusMinus ?? 0);
        return ((int)Math.Floor(from.Value - more - aside), (int)Math.Ceiling(from.Value + size.Value + more + aside));
    }

    private static Box ArchOf(WheelArch arch, Box room)
    {
        var (from, to) = (Whole(arch.FromXMm), Whole(arch.ToXMm));
        return arch.Side == Direction.Left
            ? new(from, 0, 0, to, Whole(arch.WidthMm), Whole(arch.HeightMm))
            : new(from, room.Y1 - Whole(arch.WidthMm), 0, to, room.Y1, Whole(arch.HeightMm));
    }

    /// <summary>
    /// Steps that lie within the leaning walls, so that nothing that hangs against them as found is put into the steel.
    /// </summary>
    private static IEnumerable<Box> Leaning(WallTaper? taper, Box room)
    {
        if (taper is null) yield break;
        var rise = room.Z1 - taper.FromZMm;
        for (var step = 0; step < LeanSteps; step++)
        {
            var (z0, z1) = (Whole(taper.FromZMm + rise * step / LeanSteps), Whole(taper.FromZMm + rise * (step + 1) / LeanSteps));
            var inMm = (int)Math.Floor(taper.InAtRoofMm * step / LeanSteps);
            if (inMm <= 0) continue;
            yield return new(room.X0, room.Y0, z0, room.X1, room.Y0 + inMm, z1);
            yield return new(room.X0, room.Y1 - inMm, z0, room.X1, room.Y1, z1);
        }
    }
}
