namespace Wainwright.Methods.Retention;

/// <summary>From a characteristic strength to a design one, and how pull and shear share it, after Eurocode 5.</summary>
/// <remarks>Rd = kmod·Rk/γM with γM 1.3; kmod short 0.9, instantaneous 1.1 in dry service, 0.7 and 0.9 outdoors. Screws (N/Nd)² + (V/Vd)² to 1, smooth nails straight.</remarks>
public static class Ec5Design
{
    /// <summary>Factors and interaction.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1995-1-1, tables 2.3 and 3.1 (from memory), equations 8.27 and 8.28 (as a public notebook has them)",
        Assumes: ["service class 1 or 2 inside a van that is dry, 3 where it is wet"],
        Caution: "A design value is meant for buildings whose loads carry factors too.",
        How: Provenance.FromMemory);

    /// <summary>Partial factor for joints [-].</summary>
    public const double PartialFactor = 1.3;

    /// <summary>Design value over characteristic value [-].</summary>
    /// <param name="isInstantaneous">A blow, not a load of minutes to days.</param>
    /// <param name="isWetService">Service class 3.</param>
    public static double Factor(bool isInstantaneous, bool isWetService = false) => (isWetService, isInstantaneous) switch
    {
        (false, true) => 1.1,
        (true, false) => 0.7,
        _ => 0.9,
    } / PartialFactor;

    /// <summary>Part of the strength that is used [-]; 1 is the limit.</summary>
    /// <param name="fixing">What it is.</param>
    /// <param name="pullShare">Pull over pull strength [-], 0 or more.</param>
    /// <param name="shearShare">Shear over shear strength [-], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is negative.</exception>
    public static double Used(WoodFixing fixing, double pullShare, double shearShare) => fixing == WoodFixing.SmoothNail
        ? Must.NotBeNegative(pullShare) + Must.NotBeNegative(shearShare)
        : (Must.NotBeNegative(pullShare) * pullShare) + (Must.NotBeNegative(shearShare) * shearShare);
}
