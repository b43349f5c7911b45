namespace Wainwright.Methods.Retention;

/// <summary>Metric machine screws and bolts, coarse thread: least breaking load, proof load, shear.</summary>
/// <remarks>Breaking load = stress area × tensile strength; proof load = stress area × proof stress; shear about 0.6 of tensile on the area cut.</remarks>
public static class BoltStrength
{
    /// <summary>ISO 898-1 loads.</summary>
    public static readonly Basis Basis = new(
        Source: "ISO 898-1, tables of minimum tensile and proof loads, as fastener suppliers quote them; 0.6 for shear is common practice, no source",
        Assumes: ["coarse thread, size and class read off the head", "the nut is of a matching class, or the thread goes in by its own diameter"],
        Caution: "Thin body sheet, rivet nut or wood gives long before the bolt does. Classes of stainless and unmarked bolts are others. Hot-dip coated M8 and M10 with undersize thread carry less.",
        How: Provenance.Quoted);

    /// <summary>Property class, as on the head.</summary>
    public enum PropertyClass
    {
        /// <summary>4.6.</summary>
        C46,

        /// <summary>4.8.</summary>
        C48,

        /// <summary>5.6.</summary>
        C56,

        /// <summary>5.8.</summary>
        C58,

        /// <summary>6.8.</summary>
        C68,

        /// <summary>8.8.</summary>
        C88,

        /// <summary>9.8.</summary>
        C98,

        /// <summary>10.9.</summary>
        C109,

        /// <summary>12.9.</summary>
        C129,
    }

    const double ShearToTensile = 0.6; // common practice, no source

    static readonly Dictionary<double, double> AreasMm2 = new()
    {
        [3] = 5.03, [4] = 8.78, [5] = 14.2, [6] = 20.1, [8] = 36.6, [10] = 58.0, [12] = 84.3,
    };

    /// <param name="NominalMm">Size: 3, 4, 5, 6, 8, 10 or 12 mm.</param>
    /// <param name="Class">Property class.</param>
    public sealed record Input(double NominalMm, PropertyClass Class);

    /// <param name="StressAreaMm2">Stress area [mm²].</param>
    /// <param name="BreakingN">Least breaking load [N].</param>
    /// <param name="ProofN">Load it stands without permanent stretch [N].</param>
    /// <param name="ShearN">Breaking load across, thread in the cut [N].</param>
    public sealed record Result(double StressAreaMm2, double BreakingN, double ProofN, double ShearN);

    /// <exception cref="ArgumentOutOfRangeException">A size that is not tabled.</exception>
    public static Result Of(Input bolt)
    {
        if (!AreasMm2.TryGetValue(bolt.NominalMm, out var area))
            throw new ArgumentOutOfRangeException(nameof(bolt), bolt.NominalMm, "NominalMm: must be 3, 4, 5, 6, 8, 10 or 12");
        var (tensile, proof) = StressesMPa(bolt.Class);
        return new(area, area * tensile, area * proof, ShearToTensile * area * tensile);
    }

    /// <summary>Tensile and proof stress up to M16 [MPa].</summary>
    /// <param name="propertyClass">Property class.</param>
    public static (double TensileMPa, double ProofMPa) StressesMPa(PropertyClass propertyClass) => propertyClass switch
    {
        PropertyClass.C46 => (400, 225),
        PropertyClass.C48 => (420, 310),
        PropertyClass.C56 => (500, 280),
        PropertyClass.C58 => (520, 380),
        PropertyClass.C68 => (600, 440),
        PropertyClass.C88 => (800, 580),
        PropertyClass.C98 => (900, 650),
        PropertyClass.C109 => (1040, 830),
        _ => (1220, 970),
    };
}
