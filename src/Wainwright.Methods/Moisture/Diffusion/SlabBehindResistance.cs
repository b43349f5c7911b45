namespace Wainwright.Methods.Moisture.Diffusion;

/// <summary>A sheet whose faces give their water to the air through something: still air, carpet, vinyl.</summary>
/// <remarks>L = α l/D; β tan β = L;  E = 1 − Σ 2 L² exp(−β² Fo)/(β² (β² + L² + L)).</remarks>
public static class SlabBehindResistance
{
    /// <summary>Crank, chapter 4.</summary>
    public static readonly Basis Basis = new(
        Source: "Crank, The Mathematics of Diffusion (1975), chapter 4 and table 4.2 (from memory)",
        Assumes: ["constant diffusivity and slope of the sorption curve", "both faces alike, or one sealed and the path the whole thickness"],
        Caution: "The resistance of covers is known to a factor of two at best.",
        How: Provenance.FromMemory);

    /// <summary>The first roots of β tan β = L.</summary>
    /// <param name="ratio">L = α l/D [-], above 0.</param>
    /// <param name="count">How many, 1 to 500.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static IReadOnlyList<double> Roots(double ratio, int count)
    {
        Must.BePositive(ratio);
        var roots = new double[(int)Must.BeWithin(count, 1, 500)];
        for (var n = 0; n < roots.Length; n++)
        {
            // β sin β − L cos β changes sign once between n π and n π + π/2
            double low = n * Math.PI, high = low + (Math.PI / 2);
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                if (((middle * Math.Sin(middle)) - (ratio * Math.Cos(middle))) * (n % 2 == 0 ? 1 : -1) < 0) low = middle;
                else high = middle;
            }
            roots[n] = (low + high) / 2;
        }
        return roots;
    }

    /// <summary>Share of the water to lose that is gone [0–1].</summary>
    /// <param name="ratio">L = α l/D [-], above 0.</param>
    /// <param name="fourier">Fourier number D t/l² [-], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Gone(double ratio, double fourier)
    {
        Must.NotBeNegative(fourier);
        double sum = 0;
        foreach (var beta in Roots(ratio, 200))
            sum += 2 * ratio * ratio * Math.Exp(-beta * beta * fourier) / (beta * beta * ((beta * beta) + (ratio * ratio) + ratio));
        return Math.Clamp(1 - sum, 0, 1);
    }

    /// <summary>L of a face behind a vapour resistance [-].</summary>
    /// <param name="saturationPa">Saturation pressure [Pa], above 0.</param>
    /// <param name="resistance">Resistance Z of what covers the face [m²·s·Pa/kg], above 0.</param>
    /// <param name="slopeKgPerM3">Slope of the sorption curve, water per cubic metre for the whole step of humidity [kg/m³], above 0.</param>
    /// <param name="pathMm">Half the thickness, or the whole of it with one face sealed [mm], above 0.</param>
    /// <param name="diffusivityM2PerS">Diffusivity [m²/s], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Ratio(double saturationPa, double resistance, double slopeKgPerM3, double pathMm, double diffusivityM2PerS) =>
        Must.BePositive(saturationPa) / (Must.BePositive(resistance) * Must.BePositive(slopeKgPerM3)) * Must.BePositive(pathMm) / 1000 / Must.BePositive(diffusivityM2PerS);

    /// <summary>Time constant of a sheet that can leave by one covered face only [d]: τ = l (dw/dh) Z/psat.</summary>
    /// <param name="saturationPa">Saturation pressure [Pa], above 0.</param>
    /// <param name="resistance">Resistance Z of the cover [m²·s·Pa/kg], above 0.</param>
    /// <param name="slopeKgPerM3">Slope of the sorption curve [kg/m³], above 0.</param>
    /// <param name="thicknessMm">Thickness [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double TimeConstantDays(double saturationPa, double resistance, double slopeKgPerM3, double thicknessMm) =>
        Must.BePositive(thicknessMm) / 1000 * Must.BePositive(slopeKgPerM3) * Must.BePositive(resistance) / Must.BePositive(saturationPa) / 86_400;
}
