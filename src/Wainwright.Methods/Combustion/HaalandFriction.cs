namespace Wainwright.Methods.Combustion;

/// <summary>Darcy friction factor, explicit form of Haaland.</summary>
/// <remarks>1/√f = −1.8·log10[((e/D)/3.7)^1.11 + 6.9/Re]; −1.4 to +0.9 % from Colebrook.</remarks>
public static class HaalandFriction
{
    /// <summary>Haaland 1983.</summary>
    public static readonly Basis Basis = new(
        Source: "S. E. Haaland, J. Fluids Engineering 105 (1983) 89",
        Assumes: ["full, steady, turbulent flow in a straight round bore"],
        Caution: "An approximation of Colebrook's form: use that one where it matters.",
        How: Provenance.FromMemory);

    /// <exception cref="ArgumentOutOfRangeException">Reynolds is not above 0, or the roughness is not a finite number of 0 or more.</exception>
    public static ColebrookFriction.Result Of(ColebrookFriction.Input flow)
    {
        double re = Must.BePositive(flow.Reynolds), rough = Must.NotBeNegative(flow.RelativeRoughness);
        List<string> outside = [];
        if (re < ColebrookFriction.Turbulent) outside.Add("Reynolds number below 4 000");
        if (rough > 0.05) outside.Add("relative roughness above 0.05");
        var x = -1.8 * Math.Log10(Math.Pow(rough / 3.7, 1.11) + (6.9 / re));
        return new(1 / (x * x), outside);
    }
}
