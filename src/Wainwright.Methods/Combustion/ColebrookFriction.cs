namespace Wainwright.Methods.Combustion;

/// <summary>Darcy friction factor of a round duct or pipe: the reference form.</summary>
/// <remarks>
/// 1/√f = −2·log10((e/D)/3.7 + 2.51/(Re·√f)), solved by fixed point to the last digits; laminar f = 64/Re below Re 2300.
/// Between 2300 and 4000 the flow is neither: the value is interpolated and reported as outside the range.
/// </remarks>
public static class ColebrookFriction
{
    /// <summary>Colebrook 1939.</summary>
    public static readonly Basis Basis = new(
        Source: "C. F. Colebrook, J. Institution of Civil Engineers 11 (1939) 133; laminar: Hagen–Poiseuille",
        Assumes: ["full, steady flow in a straight round bore", "one roughness all along"],
        Caution: "A crushed, ribbed or fluffy duct is rougher than any table.",
        How: Provenance.FromMemory);

    /// <summary>Reynolds number below which flow is laminar [-].</summary>
    public const double Laminar = 2300;

    /// <summary>Reynolds number above which flow is turbulent [-].</summary>
    public const double Turbulent = 4000;

    /// <param name="Reynolds">Reynolds number v·D/ν [-], above 0.</param>
    /// <param name="RelativeRoughness">Roughness over bore, e/D [-], 0 to 0.05.</param>
    public sealed record Input(double Reynolds, double RelativeRoughness);

    /// <param name="Factor">Darcy friction factor [-].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double Factor, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">Reynolds is not above 0, or the roughness is not a finite number of 0 or more.</exception>
    public static Result Of(Input flow)
    {
        double re = Must.BePositive(flow.Reynolds), rough = Must.NotBeNegative(flow.RelativeRoughness);
        List<string> outside = [];
        if (rough > 0.05) outside.Add("relative roughness above 0.05: no friction formula holds");
        if (re < Laminar) return new(64 / re, outside);
        if (re >= Turbulent) return new(InTurbulence(re, rough), outside);
        outside.Add("Reynolds number between 2300 and 4000: neither laminar nor turbulent, interpolated");
        var part = (re - Laminar) / (Turbulent - Laminar);
        return new(((1 - part) * (64 / Laminar)) + (part * InTurbulence(Turbulent, rough)), outside);
    }

    static double InTurbulence(double re, double rough)
    {
        var x = 7.0; // 1/√f of a middling pipe; the map contracts from anywhere sensible
        for (var i = 0; i < 100; i++)
        {
            var next = -2 * Math.Log10((rough / 3.7) + (2.51 * x / re));
            if (Math.Abs(next - x) < 1e-14 * next) break;
            x = next;
        }
        return 1 / (x * x);
    }
}
