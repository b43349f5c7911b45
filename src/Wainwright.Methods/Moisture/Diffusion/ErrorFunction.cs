namespace Wainwright.Methods.Moisture.Diffusion;

/// <summary>The error integral and its complement, to the last places of a double.</summary>
static class ErrorFunction
{
    public static double Erf(double x) => x < 0 ? -Erf(-x) : x < 2.5 ? Series(x) : 1 - Fraction(x);

    public static double Erfc(double x) => x < 0 ? 2 - Erfc(-x) : x < 2.5 ? 1 - Series(x) : Fraction(x);

    // 2/√π · e^(−x²) · Σ 2^n x^(2n+1)/(1·3·…·(2n+1)): all terms of one sign
    static double Series(double x)
    {
        double term = x, sum = x;
        for (var n = 1; term > 1e-18 * sum; n++) sum += term *= 2 * x * x / ((2 * n) + 1);
        return 2 / Math.Sqrt(Math.PI) * Math.Exp(-x * x) * sum;
    }

    static double Fraction(double x)
    {
        var fraction = x;
        for (var n = 80; n >= 1; n--) fraction = x + (n / 2.0 / fraction);
        return Math.Exp(-x * x) / Math.Sqrt(Math.PI) / fraction;
    }
}
