using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>The van as the audit sees it: walls with the outlines of its openings cut out, arches, leaning walls, what stands outside.</summary>
internal sealed class Hull
{
    // the thickness says when a load counts as outside; the planner's is the same, since it is part of the question
    private const double WallMm = 40;
    private const int LeanSteps = 8;

    private readonly LoadSpace space;

    public Hull(Vehicle vehicle)
    {
        space = vehicle.LoadSpace;
        Openings = [.. vehicle.Openings.Where(o => o.Passable)];
        Outside = (new(-WallMm, -WallMm, -WallMm), new(Whole(space.LengthMm) + WallMm, Whole(space.WidthMm) + WallMm, Whole(space.HeightMm) + WallMm));
        Blocks = [.. Enum.GetValues<Direction>().SelectMany(Wall), .. space.WheelArches.Select(Arch), .. Leaning(), .. Openings.SelectMany(Beyond)];
    }

    /// <summary>Openings that parts are carried through.</summary>
    public IReadOnlyList<Opening> Openings { get; }

    /// <summary>The load space, wall to wall.</summary>
    public (Vec Low, Vec High) Room => (Vec.Zero, new(Whole(space.LengthMm), Whole(space.WidthMm), Whole(space.HeightMm)));

    /// <summary>Outer bounds.</summary>
    public (Vec Low, Vec High) Outside { get; }

    /// <summary>All that never moves.</summary>
    public IReadOnlyList<WalkedSolid> Blocks { get; }

    /// <summary>Whether nothing is left within the outer bounds.</summary>
    public bool IsOutside(IReadOnlyList<WalkedSolid> load, double letPassMm) => Enumerable.Range(0, 3).Any(axis =>
        load.Max(s => s.High.Along(axis)) <= Outside.Low.Along(axis) + letPassMm || load.Min(s => s.Low.Along(axis)) >= Outside.High.Along(axis) - letPassMm);

    /// <summary>The direction in which one leaves by an opening.</summary>
    public static Direction LeavesTowards(Opening opening) => opening.Face switch
    {
        Face.Front => Direction.Forward,
        Face.Rear => Direction.Rearward,
        Face.Left => Direction.Left,
        Face.Right => Direction.Right,
        _ => Direction.Up,
    };

    /// <summary>An opening's outline drawn out through its wall, as narrow as its tolerance allows.</summary>
    public (Vec Low, Vec High) Outline(Opening opening)
    {
        var (along, across) = (Clear(opening.FromMm, opening.WidthMm), Clear(opening.SillMm, opening.HeightMm));
        var (low, high) = Slab(LeavesTowards(opening));
        return opening.Face switch
        {
            Face.Front or Face.Rear => (low with { Y = along.From, Z = across.From }, high with { Y = along.To, Z = across.To }),
            Face.Left or Face.Right => (low with { X = along.From, Z = across.From }, high with { X = along.To, Z = across.To }),
            _ => (low with { X = along.From, Y = across.From }, high with { X = along.To, Y = across.To }),
        };
    }

    private static double Whole(Measured mm) => Math.Round(mm.Value, MidpointRounding.AwayFromZero);

    private static (double From, double To) Clear(Measured from, Measured size)
    {
        var less = (size.PlusMinus ?? 0) / 2;
        return (from.Value + less, from.Value + size.Value - less);
    }

    private (Vec Low, Vec High) Slab(Direction towards)
    {
        var (low, high) = Outside;
        return towards switch
        {
            Direction.Forward => (low, high with { X = 0 }),
            Direction.Rearward => (low with { X = high.X - WallMm }, high),
            Direction.Left => (low, high with { Y = 0 }),
            Direction.Right => (low with { Y = high.Y - WallMm }, high),
            Direction.Down => (low, high with { Z = 0 }),
            _ => (low with { Z = high.Z - WallMm }, high),
        };
    }

    private IEnumerable<WalkedSolid> Wall(Direction towards)
    {
        IEnumerable<(Vec Low, Vec High)> left = [Slab(towards)];
        foreach (var opening in Openings.Where(o => LeavesTowards(o) == towards))
        {
            var hole = Outline(opening);
            left = [.. left.SelectMany(block => Without(block, hole, (int)towards / 2))];
        }
        return left.Select(b => WalkedSolid.Box(b.Low, b.High));
    }

    /// <summary>What is left of a wall's block round a hole, as blocks before and after it in each direction of the wall.</summary>
    private static IEnumerable<(Vec Low, Vec High)> Without((Vec Low, Vec High) block, (Vec Low, Vec High) hole, int through)
    {
        foreach (var axis in Enumerable.Range(0, 3).Where(a => a != through))
        {
            var (from, to) = (block.Low.Along(axis), block.High.Along(axis));
            var (h0, h1) = (Math.Clamp(hole.Low.Along(axis), from, to), Math.Clamp(hole.High.Along(axis), from, to));
            if (h1 <= h0)
            {
                yield return block;
                yield break;
            }
            if (h0 > from) yield return (block.Low, With(block.High, axis, h0));
            if (h1 < to) yield return (With(block.Low, axis, h1), block.High);
            block = (With(block.Low, axis, h0), With(block.High, axis, h1));
        }
    }

    private static Vec With(Vec v, int axis, double value) => axis switch { 0 => v with { X = value }, 1 => v with { Y = value }, _ => v with { Z = value } };

    private WalkedSolid Arch(WheelArch arch)
    {
        var width = Whole(space.WidthMm);
        return arch.Side == Direction.Left
            ? WalkedSolid.Box(new(arch.FromXMm, 0, 0), new(arch.ToXMm, arch.WidthMm, arch.HeightMm))
            : WalkedSolid.Box(new(arch.FromXMm, width - arch.WidthMm, 0), new(arch.ToXMm, width, arch.HeightMm));
    }

    /// <summary>Steps within the leaning walls, as the plan takes them.</summary>
    private IEnumerable<WalkedSolid> Leaning()
    {
        if (space.Taper is not { } taper) yield break;
        var (length, width, height) = (Whole(space.LengthMm), Whole(space.WidthMm), Whole(space.HeightMm));
        for (var step = 1; step < LeanSteps; step++)
        {
            var (z0, z1) = (taper.FromZMm + (height - taper.FromZMm) * step / LeanSteps, taper.FromZMm + (height - taper.FromZMm) * (step + 1) / LeanSteps);
            var in_ = Math.Floor(taper.InAtRoofMm * step / LeanSteps);
            if (in_ <= 0) continue;
            yield return WalkedSolid.Box(new(0, 0, Math.Ceiling(z0)), new(length, in_, z1));
            yield return WalkedSolid.Box(new(0, width - in_, Math.Ceiling(z0)), new(length, width, z1));
        }
    }

    /// <summary>What stands where the clear ground outside an opening ends.</summary>
    private IEnumerable<WalkedSolid> Beyond(Opening opening)
    {
        if (opening.LandingMm is not { } clear) yield break;
        var towards = LeavesTowards(opening);
        var (low, high) = Slab(towards);
        var step = Vec.Of(towards.Step());
        yield return WalkedSolid.Box(low + (clear + WallMm) * step, high + (clear + WallMm) * step);
    }
}
