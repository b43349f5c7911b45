namespace Wainwright.Methods.Moisture.Diffusion;

/// <summary>A plane of water let into a piece with two sealed ends, by two independent ways that must agree.</summary>
/// <remarks>Images at ±x₀ + 2nL, or (1/L)(1 + 2 Σ cos(nπx/L) cos(nπx₀/L) exp(−(nπ/L)² D t)).</remarks>
public static class SealedStrip
{
    /// <summary>Crank, chapter 2.</summary>
    public static readonly Basis Basis = new(
        Source: "Crank, The Mathematics of Diffusion (1975), chapter 2 (from memory)",
        Assumes: ["constant diffusivity", "ends that let nothing through"],
        Caution: "A real end is a cut edge that drinks and dries fastest of all.",
        How: Provenance.FromMemory);

    /// <param name="LengthM">Between the sealed ends [m], above 0.</param>
    /// <param name="SourceM">Where the water was let in, from one end [m], 0 to the length.</param>
    /// <param name="SpreadM2">D·t [m²], above 0.</param>
    /// <param name="AtM">Where it is asked, from the same end [m], 0 to the length.</param>
    public sealed record Input(double LengthM, double SourceM, double SpreadM2, double AtM);

    /// <summary>Water per metre for 1 let in [1/m], by images in the ends: quick while little has spread.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double ByImages(Input piece)
    {
        var (length, source, spread, at) = Checked(piece);
        double Free(double distance) => Math.Exp(-distance * distance / (4 * spread)) / (2 * Math.Sqrt(Math.PI * spread));
        var reach = (int)Math.Ceiling(Math.Sqrt(4 * spread * 40) / (2 * length)) + 1;
        double sum = 0;
        for (var n = -reach; n <= reach; n++) sum += Free(at - source - (2 * n * length)) + Free(at + source - (2 * n * length));
        return sum;
    }

    /// <summary>Water per metre for 1 let in [1/m], by cosines: quick once much has spread.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double ByCosines(Input piece)
    {
        var (length, source, spread, at) = Checked(piece);
        var terms = (int)Math.Ceiling(Math.Sqrt(40 / spread) * length / Math.PI) + 1;
        double sum = 0;
        for (var n = 1; n <= terms; n++)
        {
            var k = n * Math.PI / length;
            sum += Math.Cos(k * at) * Math.Cos(k * source) * Math.Exp(-k * k * spread);
        }
        return (1 + (2 * sum)) / length;
    }

    static (double Length, double Source, double Spread, double At) Checked(Input p) =>
        (Must.BePositive(p.LengthM), Must.BeWithin(p.SourceM, 0, p.LengthM), Must.BePositive(p.SpreadM2), Must.BeWithin(p.AtM, 0, p.LengthM));
}
