namespace Wainwright.Methods.Retention;

/// <summary>What a catch must hold when a drawer, door or lid is thrown open.</summary>
/// <remarks>F = (m + load that leans on it)·a·(arm of the centre over arm of the catch, from the hinge; 1 for a drawer), less friction of the slide.</remarks>
public static class LatchDemand
{
    /// <summary>Force at a catch.</summary>
    public static readonly Basis Basis = new(
        Source: "moment balance about the hinge; push latches and magnets hold 20 to 60 N: common practice, no source",
        Assumes: ["the catch is pulled the way the door opens", "the drawer is level; on a slope its weight adds"],
        Caution: "Rattling opens catches that a steady pull does not. Measure a catch with a hand gauge.",
        How: Provenance.CommonPractice);

    /// <summary>Usual push latches and magnets [N].</summary>
    public static Spread UsualCatchN => new(20, 40, 60);

    /// <param name="MassKg">What moves, contents of a drawer with it [kg], 0 or more.</param>
    /// <param name="LeaningKg">Share of loose load that leans on the door [kg], 0 or more.</param>
    /// <param name="CentreArmMm">From the hinge to the centre [mm], above 0; the same as the catch's for what slides.</param>
    /// <param name="CatchArmMm">From the hinge to the catch [mm], above 0.</param>
    /// <param name="FrictionN">Drag of the slide or hinge at the catch [N], 0 or more.</param>
    public sealed record Input(double MassKg, double LeaningKg = 0, double CentreArmMm = 1, double CatchArmMm = 1, double FrictionN = 0);

    /// <summary>Force at the catch [N], 0 or more.</summary>
    /// <param name="moving">What moves.</param>
    /// <param name="accelerationG">Acceleration the way it opens [g], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double ForceN(Input moving, double accelerationG) =>
        Math.Max(0, (NewtonPerG(moving) * Must.NotBeNegative(accelerationG)) - Must.NotBeNegative(moving.FrictionN));

    /// <summary>Acceleration at which it opens [g]; infinite when nothing moves.</summary>
    /// <param name="moving">What moves.</param>
    /// <param name="catchN">What the catch holds [N], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double HoldsToG(Input moving, double catchN) => NewtonPerG(moving) is > 0 and var perG
        ? (Must.NotBeNegative(catchN) + Must.NotBeNegative(moving.FrictionN)) / perG
        : double.PositiveInfinity;

    static double NewtonPerG(Input moving) => (Must.NotBeNegative(moving.MassKg) + Must.NotBeNegative(moving.LeaningKg)) * Pulse.GravityMPerS2
        * Must.BePositive(moving.CentreArmMm) / Must.BePositive(moving.CatchArmMm);
}
