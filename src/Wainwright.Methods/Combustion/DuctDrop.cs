namespace Wainwright.Methods.Combustion;

/// <summary>Pressure that a run of round duct takes from a fan, or of pipe from a pump: friction and fittings.</summary>
/// <remarks>Δp = (f·L/D + ΣK)·ρ·v²/2 (Darcy–Weisbach), f after Colebrook.</remarks>
public static class DuctDrop
{
    /// <summary>Darcy–Weisbach.</summary>
    public static readonly Basis Basis = new(
        Source: "Darcy–Weisbach equation; friction factor after Colebrook; loss coefficients from a published table",
        Assumes: ["one bore all along", "fittings far enough apart not to disturb each other"],
        Caution: "Soft duct crushed to an oval takes far more than its name size.",
        How: Provenance.Quoted);

    /// <summary>Air at 20 °C: density [kg/m³].</summary>
    public const double AirKgPerM3 = 1.204;

    /// <summary>Air at 20 °C: kinematic viscosity [m²/s].</summary>
    public const double AirM2PerS = 1.516e-5;

    /// <param name="BoreMm">Bore [mm], above 0.</param>
    /// <param name="LengthMm">Straight length [mm], 0 or more.</param>
    /// <param name="RoughnessMm">Wall roughness [mm], 0 or more: galvanised 0.09–0.15, compressed flexible duct 0.9–4.6.</param>
    /// <param name="FlowM3PerH">Flow [m³/h], above 0.</param>
    /// <param name="FittingsK">Loss coefficient of each fitting [-].</param>
    /// <param name="DensityKgPerM3">Density of the fluid [kg/m³].</param>
    /// <param name="ViscosityM2PerS">Kinematic viscosity [m²/s].</param>
    public sealed record Input(
        double BoreMm, double LengthMm, double RoughnessMm, double FlowM3PerH, IReadOnlyList<double> FittingsK,
        double DensityKgPerM3 = AirKgPerM3, double ViscosityM2PerS = AirM2PerS);

    /// <param name="DropPa">Friction and fittings together [Pa].</param>
    /// <param name="FrictionPa">Friction alone [Pa].</param>
    /// <param name="SpeedMPerS">Mean speed [m/s].</param>
    /// <param name="Reynolds">Reynolds number [-].</param>
    /// <param name="Factor">Darcy friction factor [-].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double DropPa, double FrictionPa, double SpeedMPerS, double Reynolds, double Factor, IReadOnlyList<string> OutsideRange)
    {
        /// <summary>The drop as metres of a fluid of that density, given what one metre weighs [m].</summary>
        /// <param name="densityKgPerM3">Density [kg/m³], above 0.</param>
        public double HeadM(double densityKgPerM3) => DropPa / (Must.BePositive(densityKgPerM3) * 9.80665);
    }

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input run)
    {
        var boreM = Must.BePositive(run.BoreMm) / 1000;
        var speed = Must.BePositive(run.FlowM3PerH) / 3600 / (Math.PI / 4 * boreM * boreM);
        var re = speed * boreM / Must.BePositive(run.ViscosityM2PerS);
        var f = ColebrookFriction.Of(new(re, Must.NotBeNegative(run.RoughnessMm) / run.BoreMm));
        var dynamicPa = Must.BePositive(run.DensityKgPerM3) * speed * speed / 2;
        var friction = f.Factor * Must.NotBeNegative(run.LengthMm) / run.BoreMm * dynamicPa;
        var fittings = 0.0;
        foreach (var k in run.FittingsK) fittings += Must.NotBeNegative(k);
        return new(friction + (fittings * dynamicPa), friction, speed, re, f.Factor, f.OutsideRange);
    }
}
