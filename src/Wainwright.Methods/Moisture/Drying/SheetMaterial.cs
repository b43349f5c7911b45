using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>How a material of a layered sheet holds water and lets it through.</summary>
/// <remarks>
/// Bound water w(h) is a rising curve of humidity up to saturation; above it stands free water, which does not raise the vapour pressure and
/// moves by wicking: flux = D s^n grad(free), s the free part of what the pores hold; what is more than they hold runs along the sheet at 1e-6 m²/s for
/// each time they are filled over again (own rule: it stands for water that finds its way under a sheet). Vapour: (δ/μ) grad p,
/// ln μ straight in humidity between dry and wet.
/// </remarks>
/// <param name="Name">What it is.</param>
/// <param name="DryKgPerM3">Dry density [kg/m³], above 0: what percentages refer to.</param>
/// <param name="BoundKgPerM3">Water held at equally spaced humidities from 0 to 1 [kg/m³]: two or more, the first 0, rising.</param>
/// <param name="FullKgPerM3">Water with every pore full [kg/m³], above the last of the curve.</param>
/// <param name="DryFactor">μ in dry air [-], 1 or more.</param>
/// <param name="WetFactor">μ at saturation [-], 1 or more.</param>
/// <param name="WickingM2PerS">Diffusivity of free water through the thickness with full pores [m²/s], 0 or more.</param>
/// <param name="WickingAlongM2PerS">The same along the sheet, with what creeps in its gaps [m²/s], 0 or more.</param>
/// <param name="WickingPower">n: how fast wicking fades as pores empty [-], 0 to 10.</param>
/// <param name="AlongFactor">Vapour permeability along the sheet against across it [-], 0 or more.</param>
public sealed record SheetMaterial(
    string Name, double DryKgPerM3, IReadOnlyList<double> BoundKgPerM3, double FullKgPerM3, double DryFactor, double WetFactor,
    double WickingM2PerS = 0, double WickingAlongM2PerS = 0, double WickingPower = 1, double AlongFactor = 1)
{
    /// <summary>The model and its figures.</summary>
    public static readonly Basis Basis = new(
        Source: "Vapour diffusion with sorption as in building physics; wicking as a diffusivity of free water: own rule; figures of VapourTable and PanelEquilibrium",
        Assumes: ["one curve for wetting and drying", "temperatures given, heat of evaporation not counted", "no water runs in gaps", "no swelling, no delamination"],
        Caution: "Resistances and wicking are known to a factor of two or three: run low, likely and high, and show a range of days.",
        How: Provenance.OwnRule);

    /// <summary>A wood-based panel with the wood handbook's curve times a factor.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="dryKgPerM3">Dry density [kg/m³], 100 to 1400.</param>
    /// <param name="airC">Temperature of the curve [°C].</param>
    /// <param name="panelFactor">Panel against solid wood [-], above 0 and up to 1.2.</param>
    /// <param name="dryFactor">μ dry [-].</param>
    /// <param name="wetFactor">μ wet [-].</param>
    /// <param name="wickingM2PerS">Diffusivity of free water through the thickness with full pores [m²/s].</param>
    /// <param name="wickingAlongM2PerS">The same along the sheet [m²/s].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static SheetMaterial Panel(string name, double dryKgPerM3, double airC, double panelFactor, double dryFactor, double wetFactor, double wickingM2PerS, double wickingAlongM2PerS)
    {
        Must.BeWithin(dryKgPerM3, 100, 1400);
        Must.BeWithin(Must.BePositive(panelFactor), 0, 1.2);
        var curve = Enumerable.Range(0, 33).Select(i => dryKgPerM3 / 100 * panelFactor * WoodEquilibrium.Of(new(airC, i / 32.0)).MoisturePercent).ToArray();
        // what the cell walls (1 540 kg/m³) leave of the volume
        var full = Math.Max(curve[^1] * 1.01, 1000 * (1 - (dryKgPerM3 / 1540)));
        return new(name, dryKgPerM3, curve, full, dryFactor, wetFactor, wickingM2PerS, wickingAlongM2PerS);
    }

    /// <summary>A material that hardly holds water: foam, vinyl, adhesive, air.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="dryKgPerM3">Density [kg/m³], above 0.</param>
    /// <param name="saturatedKgPerM3">Water at saturation [kg/m³], above 0.</param>
    /// <param name="factor">μ [-].</param>
    public static SheetMaterial Inert(string name, double dryKgPerM3, double saturatedKgPerM3, double factor) =>
        new(name, dryKgPerM3, [0, saturatedKgPerM3], Math.Max(1000, 2 * saturatedKgPerM3), factor, factor);

    /// <summary>Itself, once every figure is within its range.</summary>
    /// <exception cref="ArgumentException">The curve is not one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    internal SheetMaterial Checked()
    {
        Must.BePositive(DryKgPerM3);
        if (BoundKgPerM3.Count < 2 || BoundKgPerM3[0] != 0) throw new ArgumentException($"{Name}: a curve of bound water has two values or more, the first 0");
        for (var i = 1; i < BoundKgPerM3.Count; i++)
            if (!(BoundKgPerM3[i] > BoundKgPerM3[i - 1]) || !double.IsFinite(BoundKgPerM3[i])) throw new ArgumentException($"{Name}: the curve of bound water must rise");
        if (!(FullKgPerM3 > BoundKgPerM3[^1])) throw new ArgumentException($"{Name}: full must be above the end of the curve");
        Must.BeWithin(DryFactor, 1, 1e12);
        Must.BeWithin(WetFactor, 1, 1e12);
        Must.BeWithin(WickingM2PerS, 0, 1e-3);
        Must.BeWithin(WickingAlongM2PerS, 0, 1e-3);
        Must.BeWithin(WickingPower, 0, 10);
        Must.NotBeNegative(AlongFactor);
        return this;
    }

    /// <summary>Permeability [kg/(m·s·Pa)] at a humidity and temperature.</summary>
    internal double Permeability(double humidity, double airC) =>
        VapourResistance.AirPermeability(airC) / (DryFactor * Math.Pow(WetFactor / DryFactor, Math.Clamp(humidity, 0, 1)));
}
