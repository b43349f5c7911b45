using Wainwright.Methods.Moisture.Diffusion;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>The bell curve where both tails count.</summary>
static class NormalCurve
{
    /// <summary>Chance of being below z.</summary>
    public static double Below(double z) => z < -36 ? 0 : z > 36 ? 1 : 0.5 * ErrorFunction.Erfc(-z / Math.Sqrt(2));

    /// <summary>Logarithm of that chance, sound far below.</summary>
    public static double LogBelow(double z) => z > -30 ? Math.Log(Below(z)) : (-z * z / 2) - Math.Log(-z * Math.Sqrt(2 * Math.PI)) - (1 / (z * z));

    /// <summary>Height of the curve over the chance of being below: the push of a bound.</summary>
    public static double Push(double z) => Math.Exp((-z * z / 2) - (0.5 * Math.Log(2 * Math.PI)) - LogBelow(z));
}
