namespace Wainwright.Methods.Reach;

/// <summary>The normal law, for one measure and for two that go together.</summary>
static class Normal
{
    const int Steps = 600;
    const double Widest = 9; // beyond so many standard deviations there is nobody

    public static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

    /// <summary>Share below z: the continued fraction of Lentz for the tail, the power series near the middle.</summary>
    public static double Share(double z)
    {
        if (z < 0) return 1 - Share(-z);
        if (z > Widest) return 1;
        if (z < 3)
        {
            double term = z, sum = z;
            for (var n = 1; Math.Abs(term) > 1e-17 * Math.Abs(sum); n++) sum += term *= z * z / ((2 * n) + 1);
            return 0.5 + (sum * Density(z));
        }
        var fraction = z;
        for (var n = 60; n >= 1; n--) fraction = z + (n / fraction);
        return 1 - (Density(z) / fraction);
    }

    /// <summary>The z below which a share lies, by halving.</summary>
    public static double Quantile(double share)
    {
        if (share is not (> 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(share), share, "share: must be above 0 and below 1");
        var (low, high) = (-Widest, Widest);
        for (var i = 0; i < 80; i++)
        {
            var middle = (low + high) / 2;
            if (Share(middle) < share) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }

    /// <summary>Share with the first not above one limit and the second not below another, by Simpson's rule over the first.</summary>
    public static double UpToAndFrom(double upTo, double from, double correlation)
    {
        if (upTo <= -Widest) return 0;
        upTo = Math.Min(upTo, Widest);
        var spread = Math.Sqrt(1 - (correlation * correlation));
        double At(double x) => Density(x) * (1 - Share((from - (correlation * x)) / spread));
        var step = (upTo + Widest) / Steps;
        var sum = At(-Widest) + At(upTo);
        for (var i = 1; i < Steps; i++) sum += At(-Widest + (i * step)) * (i % 2 == 0 ? 2 : 4);
        return Math.Clamp(sum * step / 3, 0, 1);
    }
}
