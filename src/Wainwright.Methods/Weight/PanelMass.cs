namespace Wainwright.Methods.Weight;

/// <summary>Mass of a flat sheet from its size and density.</summary>
public static class PanelMass
{
    /// <summary>Volume times density.</summary>
    public static readonly Basis Basis = new(
        Source: "Definition of density; sheet suppliers' weight tables agree",
        Assumes: ["the density is that of the sheet in hand", "the sheet is whole: cut-outs are taken off by the caller"],
        Caution: "Densities of one name vary by a tenth and more, and a wet sheet is heavier: weigh a cut-off.",
        How: Provenance.Quoted);

    /// <param name="LengthMm">Length [mm], above 0.</param>
    /// <param name="WidthMm">Width [mm], above 0.</param>
    /// <param name="ThicknessMm">Thickness [mm], above 0.</param>
    /// <param name="DensityKgPerM3">Dry density [kg/m³], above 0.</param>
    /// <param name="MoistureFraction">Water as part of the dry mass [0–2]; 0 when the density is that of the sheet as found.</param>
    public sealed record Input(double LengthMm, double WidthMm, double ThicknessMm, double DensityKgPerM3, double MoistureFraction = 0);

    /// <param name="MassKg">Mass of the sheet [kg].</param>
    /// <param name="KgPerM2">Mass per square metre [kg/m²].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double MassKg, double KgPerM2, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input sheet)
    {
        var areal = Must.BePositive(sheet.ThicknessMm) / 1000 * Must.BePositive(sheet.DensityKgPerM3) * (1 + Must.BeWithin(sheet.MoistureFraction, 0, 2));
        return new(areal * Must.BePositive(sheet.LengthMm) * Must.BePositive(sheet.WidthMm) / 1e6, areal, []);
    }
}
