namespace Wainwright.Methods.Retention;

/// <summary>First guess of a gas spring for a level lid, as makers' pages have it; then check the travel with <see cref="GasSpringBalance"/>.</summary>
/// <remarks>F1 = m·g·LG/(n·LS), times a margin of 1.1 to 1.2; force at the front edge to shut it F2 = n·F1·LS/L.</remarks>
public static class GasSpringSizing
{
    /// <summary>Handbook form.</summary>
    public static readonly Basis Basis = new(
        Source: "a component maker's guide (eurekaknowledge.co.uk) and a spring maker's sizing page; margins 1.1 and 1.2 on two makers' pages",
        Assumes: ["LS is the arm of the spring about the hinge in the worst place", "two springs, one each side"],
        Caution: "One case of the guide prints forces that its own formula does not give: it is not used. The travel decides, not this guess.",
        How: Provenance.Read);

    /// <summary>Force of one spring [N].</summary>
    /// <param name="massKg">Lid [kg], above 0.</param>
    /// <param name="centreMm">Centre from the hinge, LG [mm], above 0.</param>
    /// <param name="springArmMm">Arm of the spring about the hinge, LS [mm], above 0.</param>
    /// <param name="count">Springs, 1 or more.</param>
    /// <param name="margin">Margin [-], 1 to 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double SpringN(double massKg, double centreMm, double springArmMm, int count, double margin = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return Must.BePositive(massKg) * Pulse.GravityMPerS2 * Must.BePositive(centreMm) / (count * Must.BePositive(springArmMm)) * Must.BeWithin(margin, 1, 2);
    }

    /// <summary>Pull at the front edge that the springs alone set against shutting [N].</summary>
    /// <param name="springN">Force of one spring [N], 0 or more.</param>
    /// <param name="springArmMm">Arm of the spring about the hinge [mm], above 0.</param>
    /// <param name="count">Springs, 1 or more.</param>
    /// <param name="frontMm">Front edge from the hinge, L [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double ShuttingN(double springN, double springArmMm, int count, double frontMm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return count * Must.NotBeNegative(springN) * Must.BePositive(springArmMm) / Must.BePositive(frontMm);
    }
}
