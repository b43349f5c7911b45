namespace Wainwright.Methods.Retention;

/// <summary>The ways in which everything in a van may be thrown.</summary>
public static class ThrowDirections
{
    /// <summary>Own rule.</summary>
    public static readonly Basis Basis = new(
        Source: "own rule: the 26 unit vectors from the middle of a cube to its faces, edges and corners",
        Assumes: ["a throw in between is close to one of them: no direction is more than 27.4° from the nearest"],
        Caution: "A direction between two of the 26 may be a little worse than both.",
        How: Provenance.OwnRule);

    /// <summary>The 26, faces first, then edges, then corners; unit vectors.</summary>
    public static IReadOnlyList<Vector3D> All { get; } =
    [
        .. from x in (int[])[-1, 0, 1]
           from y in (int[])[-1, 0, 1]
           from z in (int[])[-1, 0, 1]
           let sides = Math.Abs(x) + Math.Abs(y) + Math.Abs(z)
           where sides > 0
           orderby sides
           select new Vector3D(x, y, z).Unit(),
    ];
}
