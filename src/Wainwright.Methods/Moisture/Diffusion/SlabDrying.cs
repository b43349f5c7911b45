namespace Wainwright.Methods.Moisture.Diffusion;

/// <summary>A sheet that gives its water to the air through both faces, whose surface is at once as dry as the air makes it.</summary>
/// <remarks>
/// Fo = D t/l², l half the thickness (the whole of it when one face is sealed).
/// E = 1 − (8/π²) Σ (2n+1)⁻² exp(−(2n+1)² π² Fo/4), and 2 √(Fo/π) while the middle knows nothing yet (within 1e-4 for Fo below 0.15).
/// </remarks>
public static class SlabDrying
{
    /// <summary>Crank.</summary>
    public static readonly Basis Basis = new(
        Source: "Crank, The Mathematics of Diffusion (1975), pp. 47–48 (equations seen in an open library's documentation, which cites it)",
        Assumes: ["constant diffusivity", "same moisture all through at the start", "bare faces in moving air"],
        Caution: "Diffusivity falls as wood dries: the end comes later than this says. A cover over the face changes everything.",
        How: Provenance.Quoted);

    /// <summary>Fourier number D t/l² [-].</summary>
    /// <param name="diffusivityM2PerS">Diffusivity [m²/s], above 0.</param>
    /// <param name="days">Time [d], 0 or more.</param>
    /// <param name="thicknessMm">Whole thickness [mm], above 0.</param>
    /// <param name="oneFaceSealed">One face lets nothing through: the path is the whole thickness.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Fourier(double diffusivityM2PerS, double days, double thicknessMm, bool oneFaceSealed) =>
        Must.BePositive(diffusivityM2PerS) * Must.NotBeNegative(days) * 86_400 / Math.Pow(Path(thicknessMm, oneFaceSealed), 2);

    /// <summary>Share of the water to lose that is gone [0–1].</summary>
    /// <param name="fourier">Fourier number [-], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static double Gone(double fourier)
    {
        // the series needs ever more terms towards 0; there the other end of it, with its images, is exact
        if (Must.NotBeNegative(fourier) < 0.05) return 2 * Math.Sqrt(fourier / Math.PI);
        double sum = 0;
        for (var n = 0; n < 40; n++)
        {
            var odd = (2 * n) + 1;
            sum += Math.Exp(-odd * odd * Math.PI * Math.PI * fourier / 4) / (odd * odd);
        }
        return 1 - (8 / (Math.PI * Math.PI) * sum);
    }

    /// <summary>Fourier number at which a share is gone [-], by halving.</summary>
    /// <param name="gone">Share [0–1], below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share leaves its range.</exception>
    public static double FourierFor(double gone)
    {
        Must.BeWithin(gone, 0, 1 - 1e-12);
        double low = 0, high = 1;
        while (Gone(high) < gone) high *= 2;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Gone(middle) < gone) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }

    /// <summary>Days until a share is gone [d].</summary>
    /// <param name="gone">Share [0–1], below 1.</param>
    /// <param name="diffusivityM2PerS">Diffusivity [m²/s], above 0.</param>
    /// <param name="thicknessMm">Whole thickness [mm], above 0.</param>
    /// <param name="oneFaceSealed">One face lets nothing through.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double DaysFor(double gone, double diffusivityM2PerS, double thicknessMm, bool oneFaceSealed) =>
        FourierFor(gone) * Math.Pow(Path(thicknessMm, oneFaceSealed), 2) / Must.BePositive(diffusivityM2PerS) / 86_400;

    /// <summary>How far a place has come from where it was to where the face is [0–1].</summary>
    /// <param name="fourier">Fourier number [-], above 0.</param>
    /// <param name="fromMiddle">Place between middle (0) and face (1) [-].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Change(double fourier, double fromMiddle)
    {
        Must.BePositive(fourier);
        Must.BeWithin(fromMiddle, 0, 1);
        if (fourier < 0.05)
        {
            double images = 0;
            for (var n = 0; n < 6; n++)
                images += (n % 2 == 0 ? 1 : -1)
                    * (ErrorFunction.Erfc(((2 * n) + 1 - fromMiddle) / (2 * Math.Sqrt(fourier))) + ErrorFunction.Erfc(((2 * n) + 1 + fromMiddle) / (2 * Math.Sqrt(fourier))));
            return images;
        }
        double sum = 0;
        for (var n = 0; n < 40; n++)
        {
            var odd = (2 * n) + 1;
            sum += (n % 2 == 0 ? 1.0 : -1.0) / odd * Math.Exp(-odd * odd * Math.PI * Math.PI * fourier / 4) * Math.Cos(odd * Math.PI * fromMiddle / 2);
        }
        return 1 - (4 / Math.PI * sum);
    }

    static double Path(double thicknessMm, bool oneFaceSealed) => Must.BePositive(thicknessMm) / (oneFaceSealed ? 1000 : 2000);
}
