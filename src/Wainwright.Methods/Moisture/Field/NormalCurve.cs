namespace Wainwright.Methods.Moisture.Field;

/// <summary>The bell curve where both tails count, quickly: it is asked for each cell of each map.</summary>
static class NormalCurve
{
    const double HalfLogTwoPi = 0.91893853320467274178;

    /// <summary>Height.</summary>
    public static double Height(double z) => Math.Exp((-z * z / 2) - HalfLogTwoPi);

    /// <summary>Logarithm of the height of a curve of a given width.</summary>
    public static double LogHeight(double off, double sigma) => (-off * off / (2 * sigma * sigma)) - Math.Log(sigma) - HalfLogTwoPi;

    /// <summary>Chance of being below z (Hart 1968 in West's form, 2005, from memory; a map's chances are held against a plain sum in the tests).</summary>
    public static double Below(double z)
    {
        var x = Math.Abs(z);
        if (x > 37) return z > 0 ? 1 : 0;
        var height = Math.Exp(-x * x / 2);
        double tail;
        if (x < 7.07106781186547)
        {
            var over = (((((((((((3.52624965998911e-2 * x) + 0.700383064443688) * x) + 6.37396220353165) * x) + 33.912866078383) * x) + 112.079291497871) * x) + 221.213596169931) * x) + 220.206867912376;
            var under = (((((((((((((8.83883476483184e-2 * x) + 1.75566716318264) * x) + 16.064177579207) * x) + 86.7807322029461) * x) + 296.564248779674) * x) + 637.333633378831) * x) + 793.826512519948) * x) + 440.413735824752;
            tail = height * over / under;
        }
        else tail = height / (x + (1 / (x + (2 / (x + (3 / (x + (4 / (x + 0.65))))))))) / 2.506628274631;
        return z > 0 ? 1 - tail : tail;
    }

    /// <summary>Logarithm of that chance, sound far below.</summary>
    public static double LogBelow(double z) => z > -30 ? Math.Log(Below(z)) : (-z * z / 2) - Math.Log(-z) - HalfLogTwoPi - (1 / (z * z));
}
