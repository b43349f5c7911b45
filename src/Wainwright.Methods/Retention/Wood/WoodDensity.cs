namespace Wainwright.Methods.Retention;

/// <summary>How heavy the wood is: the one figure that every withdrawal and bearing strength hangs on.</summary>
/// <remarks>
/// Low, likely and high of oven-dry specific gravity for a kind of wood; better is an offcut: mass over volume. Screws hold as the
/// square of it, so light and heavy furniture plywood part by a factor of two.
/// </remarks>
public static class WoodDensity
{
    /// <summary>Usual specific gravities.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS table 12.3.3A (spruce-pine-fir 0.42 quoted, others from memory); plywood and boards from trade sheets (from memory)",
        Assumes: ["sound wood", "board density over 1000 stands for specific gravity"],
        Caution: "Furniture boards vary most: measure mass and size of an offcut before a narrow answer is believed.",
        How: Provenance.FromMemory);

    /// <summary>Kinds met in vans.</summary>
    public enum Wood
    {
        /// <summary>Spruce, fir or soft pine battens.</summary>
        Softwood,

        /// <summary>Southern or other hard pine.</summary>
        HardPine,

        /// <summary>Oak.</summary>
        Oak,

        /// <summary>Beech.</summary>
        Beech,

        /// <summary>Birch plywood.</summary>
        BirchPlywood,

        /// <summary>Poplar plywood, the usual light furniture board.</summary>
        PoplarPlywood,

        /// <summary>Okoume plywood.</summary>
        OkoumePlywood,

        /// <summary>Plywood of which nothing is known.</summary>
        PlywoodUnknown,

        /// <summary>Oriented strand board.</summary>
        Osb,

        /// <summary>Particleboard (chipboard).</summary>
        Particleboard,

        /// <summary>Medium-density fibreboard.</summary>
        Mdf,
    }

    /// <summary>Low, likely and high of specific gravity [-].</summary>
    /// <param name="wood">Which.</param>
    public static Spread SpecificGravity(Wood wood) => wood switch
    {
        Wood.Softwood => new(0.36, 0.42, 0.50),
        Wood.HardPine => new(0.49, 0.55, 0.60),
        Wood.Oak => new(0.60, 0.67, 0.73),
        Wood.Beech => new(0.62, 0.68, 0.72),
        Wood.BirchPlywood => new(0.60, 0.64, 0.68),
        Wood.PoplarPlywood => new(0.38, 0.42, 0.46),
        Wood.OkoumePlywood => new(0.37, 0.40, 0.45),
        Wood.Osb => new(0.55, 0.60, 0.65),
        Wood.Particleboard => new(0.60, 0.65, 0.72),
        Wood.Mdf => new(0.65, 0.72, 0.80),
        _ => new(0.38, 0.45, 0.60),
    };

    /// <summary>Oven-dry specific gravity of an offcut [-].</summary>
    /// <param name="massKg">Mass as found [kg], above 0.</param>
    /// <param name="lengthMm">Length [mm], above 0.</param>
    /// <param name="widthMm">Width [mm], above 0.</param>
    /// <param name="thicknessMm">Thickness [mm], above 0.</param>
    /// <param name="moistureFraction">Water as part of the dry mass [0–2]: 0.10 in a heated room.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double OfOffcut(double massKg, double lengthMm, double widthMm, double thicknessMm, double moistureFraction)
    {
        var litres = Must.BePositive(lengthMm) * Must.BePositive(widthMm) * Must.BePositive(thicknessMm) / 1e6;
        return Must.BePositive(massKg) / (1 + Must.BeWithin(moistureFraction, 0, 2)) / litres;
    }

    /// <summary>Density that nineteen of twenty pieces reach, for Eurocode 5 [kg/m³]: 350 of 420 as in strength class C24; our rule.</summary>
    /// <param name="specificGravity">Specific gravity [-], above 0.</param>
    public static double CharacteristicKgPerM3(double specificGravity) => 350.0 / 420 * 1000 * Must.BePositive(specificGravity);
}
