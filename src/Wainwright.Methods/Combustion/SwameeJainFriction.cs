namespace Wainwright.Methods.Combustion;

/// <summary>Darcy friction factor, explicit form of Swamee and Jain.</summary>
/// <remarks>f = 0.25/[log10((e/D)/3.7 + 5.74/Re^0.9)]². Stated for Re 5·10³ to 10⁸, e/D 10⁻⁶ to 10⁻²; about 1 % from Colebrook there.</remarks>
public static class SwameeJainFriction
{
    /// <summary>Swamee and Jain 1976.</summary>
    public static readonly Basis Basis = new(
        Source: "P. K. Swamee and A. K. Jain, J. Hydraulics Division ASCE 102 (1976) 657",
        Assumes: ["full, steady, turbulent flow in a straight round bore"],
        Caution: "An approximation of Colebrook's form: use that one where it matters.",
        How: Provenance.FromMemory);

    /// <exception cref="ArgumentOutOfRangeException">Reynolds is not above 0, or the roughness is not a finite number of 0 or more.</exception>
    public static ColebrookFriction.Result Of(ColebrookFriction.Input flow)
    {
        double re = Must.BePositive(flow.Reynolds), rough = Must.NotBeNegative(flow.RelativeRoughness);
        List<string> outside = [];
        if (re is < 5e3 or > 1e8) outside.Add("Reynolds number outside 5 000 to 100 000 000");
        if (rough is < 1e-6 or > 1e-2) outside.Add("relative roughness outside 0.000001 to 0.01");
        var log = Math.Log10((rough / 3.7) + (5.74 / Math.Pow(re, 0.9)));
        return new(0.25 / (log * log), outside);
    }
}
