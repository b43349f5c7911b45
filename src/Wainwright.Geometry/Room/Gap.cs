namespace Wainwright.Geometry;

/// <summary>A gap in one wall of a shell.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Wall">The wall it is in, as the direction one leaves by.</param>
/// <param name="Where">Where it is; its extent along the leaving direction is of no account [mm].</param>
/// <param name="LandingMm">Clear ground outside, square to the wall; absent when nothing stands there.</param>
public sealed record Gap(string Name, Heading Wall, Box Where, int? LandingMm = null)
{
    /// <summary>How much a box is too large to pass, turned by quarters as suits it best [mm]; 0 when it passes.</summary>
    public int ShortFor(Box box)
    {
        var across = Enumerable.Range(0, 3).Where(a => a != Wall.Axis()).Select(Where.Length).ToArray();
        int[] sides = [box.Length(0), box.Length(1), box.Length(2)];
        return Enumerable.Range(0, 3).SelectMany(i => Enumerable.Range(0, 3).Where(j => j != i).Select(j => Math.Max(sides[i] - across[0], sides[j] - across[1])))
            .Min(s => Math.Max(0, s));
    }

    /// <summary>The part of the gap that lies in the wall of a room.</summary>
    internal Box In(Box slab) => Wall.Axis() switch
    {
        0 => Where with { X0 = slab.X0, X1 = slab.X1 },
        1 => Where with { Y0 = slab.Y0, Y1 = slab.Y1 },
        _ => Where with { Z0 = slab.Z0, Z1 = slab.Z1 },
    };
}
