namespace Wainwright.Methods.Reach;

/// <summary>How hard a screw can be turned by hand with a straight screwdriver.</summary>
/// <remarks>Means of twelve men turning as hard as they could. Half again is asked for one hand, blind or overhead (our rule).</remarks>
public static class HandTorque
{
    /// <summary>Screwdriver torque.</summary>
    public static readonly Basis Basis = new(
        Source: "handle design in a maximum screwdriving torque task, Ergonomics 2007 (stacks.cdc.gov/view/cdc/186467), abstract",
        Assumes: ["straight screwdriver, full grip", "means of twelve men: half of them are weaker", "women some 40 % of it (Proc. Human Factors Society 27, 1983, abstract)"],
        Caution: "Rust and paint decide more than the hand. Above 4 N m plan a ratchet, a long key or power.",
        How: Provenance.Quoted);

    /// <summary>Where the screw is.</summary>
    public enum Work
    {
        /// <summary>In a vertical surface: the driver lies level.</summary>
        Vertical,

        /// <summary>In a horizontal surface: the driver stands.</summary>
        Horizontal,
    }

    /// <summary>Mean greatest torque on a surface [N m].</summary>
    /// <param name="work">Which surface.</param>
    public static double MeanNm(Work work) => work == Work.Vertical ? 5.9 : 4.69;

    /// <summary>Mean greatest torque with a handle of rubber or of plastic [N m].</summary>
    /// <param name="isRubber">Whether it is of rubber.</param>
    public static double WithHandleNm(bool isRubber) => isRubber ? 5.73 : 4.86;

    const double PlanPowerAboveNm = 4, AwkwardFactor = 1.5; // our rules

    /// <summary>Whether a straight screwdriver should be planned for a breakaway torque.</summary>
    /// <param name="torqueNm">Torque to start it [N m], 0 or more.</param>
    /// <param name="isAwkward">One hand, blind or overhead.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative torque.</exception>
    public static bool ScrewdriverWillDo(double torqueNm, bool isAwkward = false) =>
        Must.NotBeNegative(torqueNm) * (isAwkward ? AwkwardFactor : 1) <= PlanPowerAboveNm;
}
