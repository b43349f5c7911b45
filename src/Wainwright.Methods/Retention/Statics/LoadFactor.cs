using Wainwright.Methods.Retention.Elastic;
using Wainwright.Methods.Retention.Limit;

namespace Wainwright.Methods.Retention;

/// <summary>How hard everything may be thrown in one direction before what is held comes loose, by limit analysis.</summary>
/// <remarks>
/// The largest a for which every fixing can stay inside its strength and every support can only push while all bodies are
/// in equilibrium with 1 g down plus a·g along the direction. Static theorem: any such set of forces proves a lower bound;
/// kinematic theorem: any motion of the bodies proves an upper one. Both are returned.
/// </remarks>
/// <param name="Direction">The way everything is thrown; unit vector.</param>
/// <param name="LowG">Proved to hold up to here [g]. Infinite when thrown against something that only pushes. Below 0 when it does not carry its own weight: −0.6 when 0.4 of the weight is carried.</param>
/// <param name="HighG">Proved to let go here [g]; equal to <paramref name="LowG"/> but for rounding.</param>
/// <param name="CarriesItself">False when it cannot stand at rest without friction; both bounds then speak of the share of its weight and are the same in all directions.</param>
/// <param name="FirstYieldG">Elastic, supports one-sided: the first fixing reaches its strength here [g]. Never above <paramref name="LowG"/>; not a number when it was not asked for.</param>
/// <param name="GoverningFixing">The fixing that does most of the resisting when all lets go; absent when none resists.</param>
/// <param name="FirstFixing">The fixing that reaches its strength first; absent when none does.</param>
/// <param name="Mechanism">How each body begins to move; empty when nothing can.</param>
/// <param name="Forces">What each fixing carries at <paramref name="LowG"/> (at rest, when that is infinite or negative).</param>
/// <param name="ContactN">What each contact pushes with then [N], 0 or more.</param>
public sealed record LoadFactor(
    Vector3D Direction, double LowG, double HighG, bool CarriesItself, double FirstYieldG, int? GoverningFixing, int? FirstFixing,
    IReadOnlyList<Motion> Mechanism, IReadOnlyList<FixingForce> Forces, IReadOnlyList<double> ContactN)
{
    /// <summary>Limit theorems.</summary>
    public static readonly Basis Basis = new(
        Source: "Limit theorems of plasticity: Drucker, Prager, Greenberg, Quarterly of Applied Mathematics 9 (1952); as a linear program: Charnes, Greenberg (1951)",
        Assumes: ["fixings give way without losing strength while others take up load", "bodies are rigid", "supports push without friction", "all bodies are accelerated at once", "the load is steady"],
        Caution: "Screws in board and thin sheet tear after a few millimetres: look at first yield too. A crash is short and dynamic. Not for seats, belts, child restraints, gas containers or structure: defer to the regulation and a licensed engineer.",
        How: Provenance.FromMemory);

    /// <param name="held">Bodies, fixings and contacts.</param>
    /// <param name="direction">The way everything is thrown; any length above 0.</param>
    /// <exception cref="ArgumentException">No body, or a fixing or contact names a body that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, a mass, strength or stiffness is below 0, or an axis has no direction.</exception>
    public static LoadFactor Of(Held held, Vector3D direction) => Of(held, [direction])[0];

    /// <summary>Several directions at once: cheaper than one by one, for what was learnt in one serves the next.</summary>
    /// <param name="held">Bodies, fixings and contacts.</param>
    /// <param name="directions">The ways everything is thrown; each of any length above 0.</param>
    /// <param name="shape">The strength region, as it is or as a polyhedron.</param>
    /// <param name="firstYield">Whether first yield is asked for too, which costs far more than the limit; without it <see cref="FirstYieldG"/> is not a number.</param>
    /// <inheritdoc cref="Of(Held, Vector3D)"/>
    public static IReadOnlyList<LoadFactor> Of(Held held, IReadOnlyList<Vector3D> directions, RegionShape shape = default, bool firstYield = true)
    {
        var rig = new Rig(held);
        var solver = new LimitSolver(rig, shape);
        var springs = firstYield ? new FirstYield(rig) : null;
        return [.. directions.Select(d => Answer.Of(rig, solver, springs, d.Unit()))];
    }
}
