namespace Wainwright.Methods.Combustion;

/// <summary>Carboxyhaemoglobin that builds up in a person breathing carbon monoxide: Coburn, Forster and Kane.</summary>
/// <remarks>
/// dc/dt = Vco/Vb + [PI − c·PcO2/((O2max − c)·M)]/(Vb·B),  B = 1/DL + PL/VA,  PI = ppm/1316 mmHg, c in ml CO per ml blood.
/// Linear form (O2Hb held at its maximum): c = ceq + (c0 − ceq)·e^(−A·t/(Vb·B)),  A = PcO2/(M·O2max),  ceq = (B·Vco + PI)/A.
/// </remarks>
public static class BloodUptake
{
    const double EndogenousMlPerMin = 0.007, BloodMl = 5500, Haldane = 218, CapillaryO2MmHg = 100, CapacityMlPerMl = 0.20;
    const double DryPressureMmHg = 713, PpmPerMmHg = 1316;

    /// <summary>The equation and the constants of its usual form.</summary>
    public static readonly Basis Basis = new(
        Source: "Coburn, Forster and Kane, J. Clin. Invest. 44 (1965) 1899; constants as in public calculators and Peterson and Stewart",
        Assumes: ["steady concentration and breathing", "an average adult: 5.5 l of blood", "no first-minute lag"],
        Caution: "An estimate with its inputs, no medical statement about a person. At rest it is an upper estimate. Anyone with symptoms: out, fresh air, doctor.",
        How: Provenance.Quoted);

    /// <summary>How a person breathes.</summary>
    /// <param name="VentilationMlPerMin">Alveolar ventilation [ml/min]: 6 000 rest, 18 000 light work, 30 000 heavy.</param>
    /// <param name="DiffusivityMlPerMinMmHg">Diffusivity of the lung [ml/(min·mmHg)]: 30 rest, 40 light, 60 heavy.</param>
    public readonly record struct Breathing(double VentilationMlPerMin, double DiffusivityMlPerMinMmHg)
    {
        /// <summary>At rest (figures from memory of NIOSH 1972).</summary>
        public static readonly Breathing Rest = new(6_000, 30);

        /// <summary>Light work (figures from memory of NIOSH 1972).</summary>
        public static readonly Breathing Light = new(18_000, 40);

        /// <summary>Heavy work (figures from memory of NIOSH 1972).</summary>
        public static readonly Breathing Heavy = new(30_000, 60);

        /// <summary>Resistance to uptake B [mmHg·min/ml].</summary>
        public double Resistance => (1 / Must.BePositive(DiffusivityMlPerMinMmHg)) + (DryPressureMmHg / Must.BePositive(VentilationMlPerMin));
    }

    /// <param name="Ppm">Carbon monoxide breathed [ppm], 0 or more.</param>
    /// <param name="Minutes">For how long [min], 0 or more.</param>
    /// <param name="Breath">How the person breathes.</param>
    /// <param name="StartPercent">Carboxyhaemoglobin at the start [%], 0 to below 100; a non-smoker has about 0.8.</param>
    public sealed record Input(double Ppm, double Minutes, Breathing Breath, double StartPercent = 0.8);

    /// <param name="Percent">Carboxyhaemoglobin at the end [% of capacity].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double Percent, IReadOnlyList<string> OutsideRange);

    /// <summary>Nonlinear form, integrated: the one to use.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input exposure)
    {
        var (inspired, c, b) = Read(exposure);
        double Rate(double now)
        {
            var bound = Math.Min(now, CapacityMlPerMl * (1 - 1e-9));
            return (EndogenousMlPerMin / BloodMl) + ((inspired - (bound * CapillaryO2MmHg / ((CapacityMlPerMl - bound) * Haldane))) / (BloodMl * b));
        }

        // classical Runge–Kutta; a quarter of a minute is far below the fastest time constant of the equation below 99 %
        var steps = (int)Math.Ceiling(exposure.Minutes / 0.25);
        for (var i = 0; i < steps; i++)
        {
            var dt = exposure.Minutes / steps;
            var k1 = Rate(c);
            var k2 = Rate(c + (dt / 2 * k1));
            var k3 = Rate(c + (dt / 2 * k2));
            var k4 = Rate(c + (dt * k3));
            c += dt / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
        }
        return new(100 * c / CapacityMlPerMl, Limits(exposure, []));
    }

    /// <summary>Linear form: quick, and high above about 15 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result OfLinear(Input exposure)
    {
        var (inspired, c0, b) = Read(exposure);
        const double a = CapillaryO2MmHg / (Haldane * CapacityMlPerMl);
        var end = ((b * EndogenousMlPerMin) + inspired) / a;
        var percent = 100 / CapacityMlPerMl * (end + ((c0 - end) * Math.Exp(-a * exposure.Minutes / (BloodMl * b))));
        return new(percent, Limits(exposure, percent > 15 ? ["above 15 %: the linear form reads high, use the nonlinear one"] : []));
    }

    static (double InspiredMmHg, double BoundMlPerMl, double Resistance) Read(Input exposure)
    {
        Must.NotBeNegative(exposure.Minutes);
        return (Must.NotBeNegative(exposure.Ppm) / PpmPerMmHg, Must.BeWithin(exposure.StartPercent, 0, 99) / 100 * CapacityMlPerMl, exposure.Breath.Resistance);
    }

    static List<string> Limits(Input exposure, List<string> outside)
    {
        if (exposure.Ppm > 5_000 && exposure.Minutes < 10) outside.Add("very high concentration for minutes: the blood's lag is left out");
        return outside;
    }
}
