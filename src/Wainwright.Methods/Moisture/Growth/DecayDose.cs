namespace Wainwright.Methods.Moisture.Growth;

/// <summary>Whether wood has been wet and warm long enough for rot to begin, and how fast it then loses mass.</summary>
/// <remarks>
/// Months to the start: (2.3 T + 0.035 RH − 0.024 T RH)/(−42.9 + 0.14 T + 0.45 RH), T &gt; 0, RH &gt; 95 %; the dose rises by dt over that time and
/// falls by dt/17520 h otherwise. From dose 1 on: −5.96e-2 + 1.96e-4 T + 6.25e-4 RH % of mass an hour.
/// Traps in a public program: months of 34 days; humidity in percent compared with 0.95.
/// </remarks>
public static class DecayDose
{
    /// <summary>Viitanen and others 2010.</summary>
    public static readonly Basis Basis = new(
        Source: "Viitanen and others 2010, form as an open damage model carries it",
        Assumes: ["pine sapwood, brown rot", "humidity at the wood"],
        Caution: "A model. Judge wood with a point and by pulling a screw: soft wood is gone, whatever the dose says.",
        How: Provenance.Quoted);

    const double MonthDays = 30, FallHours = 17_520, LeastHumidityPercent = 95;

    /// <param name="Dose">0 to 1; at 1 rot has begun.</param>
    /// <param name="MassLostPercent">Mass lost [%].</param>
    public readonly record struct State(double Dose, double MassLostPercent);

    /// <summary>Days to the start of rot [d]; positive infinity where it cannot start.</summary>
    /// <param name="woodC">Temperature [°C], −40 to 50.</param>
    /// <param name="humidityPercent">Humidity [%], 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double DaysToStart(double woodC, double humidityPercent)
    {
        double t = Must.BeWithin(woodC, -40, 50), rh = Must.BeWithin(humidityPercent, 0, 100);
        if (t <= 0 || rh <= LeastHumidityPercent) return double.PositiveInfinity;
        var days = MonthDays * ((2.3 * t) + (0.035 * rh) - (0.024 * t * rh)) / (-42.9 + (0.14 * t) + (0.45 * rh));
        // near 50 °C the printed plane falls below 0: at once
        return Math.Max(days, 0);
    }

    /// <summary>Mass that rotting wood loses in an hour [%/h], 0 or more.</summary>
    /// <param name="woodC">Temperature [°C], −40 to 50.</param>
    /// <param name="humidityPercent">Humidity [%], 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double PercentPerHour(double woodC, double humidityPercent) =>
        double.IsInfinity(DaysToStart(woodC, humidityPercent)) ? 0 : Math.Max(0, -5.96e-2 + (1.96e-4 * woodC) + (6.25e-4 * humidityPercent));

    /// <summary>The state a step later.</summary>
    /// <param name="before">State before.</param>
    /// <param name="woodC">Temperature over the step [°C], −40 to 50.</param>
    /// <param name="humidityPercent">Humidity over the step [%], 0 to 100.</param>
    /// <param name="hours">Length of the step [h], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static State Step(State before, double woodC, double humidityPercent, double hours)
    {
        var startHours = 24 * DaysToStart(woodC, humidityPercent);
        if (before.Dose >= 1) return before with { MassLostPercent = Math.Min(100, before.MassLostPercent + (Must.BePositive(hours) * PercentPerHour(woodC, humidityPercent))) };
        var change = double.IsInfinity(startHours) ? -Must.BePositive(hours) / FallHours : Must.BePositive(hours) / Math.Max(startHours, 1e-9);
        return before with { Dose = Math.Clamp(before.Dose + change, 0, 1) };
    }
}
