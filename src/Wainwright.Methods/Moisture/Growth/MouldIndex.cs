namespace Wainwright.Methods.Moisture.Growth;

/// <summary>Mould on a surface from 0 (none) to 6 (all of it), from the history of its temperature and humidity.</summary>
/// <remarks>
/// Growth where RH ≥ RHcrit and 0 &lt; T &lt; 50: dM/dt = k1 k2/(7 tm) per day, tm = exp(−0.68 ln T − 13.9 ln RH + 0.14 W − 0.33 SQ + 66.02) weeks,
/// tv = exp(−0.74 ln T − 12.72 ln RH + 0.06 W + 61.50), RHcrit = −0.00267 T³ + 0.160 T² − 3.13 T + 100 but not below the least humidity,
/// k2 = 1 − exp(2.3 (M − Mmax)), Mmax = A + B r − C r², r = (RHcrit − RH)/(RHcrit − 100). Else decline: −0.00133 per h for 6 h, none to 24 h, −0.000667 after.
/// Traps in public programs: + 3.13 T; the daily rate added every hour; Mmax left without a floor.
/// </remarks>
public static class MouldIndex
{
    /// <summary>Hukka and Viitanen, with the classes of Ojanen and others.</summary>
    public static readonly Basis Basis = new(
        Source: "Hukka and Viitanen 1999 (abstract read); Ojanen, Viitanen and others 2010, classes as three open programs carry them, two of which have errors",
        Assumes: ["state of the surface, not of the air of the room", "steps of at most an hour", "no mould before, nothing wiped off"],
        Caution: "A model of growth, not a finding and not a judgement of health. Do not disturb visible mould without protection; people with asthma or weak defences keep away. 3 is where it becomes visible.",
        How: Provenance.Quoted);

    /// <summary>What the index stands for, from 0 to 6.</summary>
    public static readonly IReadOnlyList<string> Meanings =
    [
        "none", "small amounts under the microscope", "colonies under the microscope", "visible, under 10 % (or 50 % under the microscope)", "visible, 10 to 50 %", "visible, over 50 %", "nearly all",
    ];

    /// <summary>The state after a history, and what the next hour needs to know of it.</summary>
    /// <param name="Index">M [-], 0 to 6.</param>
    /// <param name="DryHours">Hours since growth last was possible [h].</param>
    public readonly record struct State(double Index, double DryHours);

    /// <summary>Humidity from which it grows [%]; of the original form 80 above 20 °C.</summary>
    /// <param name="surfaceC">Temperature [°C].</param>
    /// <param name="surface">Class.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not within −60 to 100.</exception>
    public static double CriticalHumidityPercent(double surfaceC, MouldSurface surface)
    {
        var t = Must.BeWithin(surfaceC, -60, 100);
        var curve = (-0.00267 * t * t * t) + (0.160 * t * t) - (3.13 * t) + 100;
        return surface.RateFrom1 is null ? (t <= 20 ? curve : 80) : Math.Max(curve, surface.LeastHumidityPercent);
    }

    /// <summary>Weeks to index 1.</summary>
    /// <param name="surfaceC">Temperature [°C], above 0.</param>
    /// <param name="humidityPercent">Humidity [%], above 0 and up to 100.</param>
    /// <param name="surface">Class.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double WeeksToFirst(double surfaceC, double humidityPercent, MouldSurface surface) =>
        Math.Exp((-0.68 * Math.Log(Must.BePositive(surfaceC))) - (13.9 * Math.Log(Must.BeWithin(Must.BePositive(humidityPercent), 0, 100)))
            + (0.14 * surface.Species) - (0.33 * surface.Surface) + 66.02);

    /// <summary>Weeks to visible growth, index 3, in the original model.</summary>
    /// <param name="surfaceC">Temperature [°C], above 0.</param>
    /// <param name="humidityPercent">Humidity [%], above 0 and up to 100.</param>
    /// <param name="surface">Class.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double WeeksToVisible(double surfaceC, double humidityPercent, MouldSurface surface) =>
        Math.Exp((-0.74 * Math.Log(Must.BePositive(surfaceC))) - (12.72 * Math.Log(Must.BeWithin(Must.BePositive(humidityPercent), 0, 100)))
            + (0.06 * surface.Species) + 61.50);

    /// <summary>Growth against index 0 to 1 on pine [-].</summary>
    /// <param name="index">M so far [-].</param>
    /// <param name="surfaceC">Temperature [°C], above 0.</param>
    /// <param name="humidityPercent">Humidity [%].</param>
    /// <param name="surface">Class.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Rate(double index, double surfaceC, double humidityPercent, MouldSurface surface) =>
        Must.NotBeNegative(index) < 1 ? surface.RateBelow1
            : surface.RateFrom1 ?? (2 / ((WeeksToVisible(surfaceC, humidityPercent, surface) / WeeksToFirst(surfaceC, humidityPercent, surface)) - 1));

    /// <summary>Index that this air can bring at most [-], 0 or more.</summary>
    /// <param name="surfaceC">Temperature [°C].</param>
    /// <param name="humidityPercent">Humidity [%], 0 to 100.</param>
    /// <param name="surface">Class.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Highest(double surfaceC, double humidityPercent, MouldSurface surface)
    {
        var critical = CriticalHumidityPercent(surfaceC, surface);
        if (critical >= 100 || Must.BeWithin(humidityPercent, 0, 100) < critical) return 0;
        var r = (critical - humidityPercent) / (critical - 100);
        return Math.Max(0, surface.A + (surface.B * r) - (surface.C * r * r));
    }

    /// <summary>The state a step later; explicit Euler, as the model is published.</summary>
    /// <param name="before">State before.</param>
    /// <param name="surfaceC">Temperature over the step [°C].</param>
    /// <param name="humidityPercent">Humidity over the step [%], 0 to 100.</param>
    /// <param name="hours">Length of the step [h], above 0 and up to 1.</param>
    /// <param name="surface">Class.</param>
    /// <param name="declineFactor">How fast it declines against pine: 1, 0.5, 0.25 or 0.1 [-]; 0.1 unless shown otherwise is ASHRAE 160's (from memory).</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static State Step(State before, double surfaceC, double humidityPercent, double hours, MouldSurface surface, double declineFactor)
    {
        Must.BeWithin(Must.BePositive(hours), 0, 1);
        Must.BeWithin(humidityPercent, 0, 100);
        Must.BeWithin(declineFactor, 0, 1);
        if (surfaceC is > 0 and < 50 && humidityPercent >= CriticalHumidityPercent(surfaceC, surface))
        {
            var damped = Math.Max(0, 1 - Math.Exp(2.3 * (before.Index - Highest(surfaceC, humidityPercent, surface))));
            return new(before.Index + (hours * Rate(before.Index, surfaceC, humidityPercent, surface) * damped / (168 * WeeksToFirst(surfaceC, humidityPercent, surface))), 0);
        }
        var dry = before.DryHours + hours;
        var decline = dry <= 6 ? 0.00133 : dry <= 24 ? 0 : 0.000667;
        return new(Math.Max(0, before.Index - (declineFactor * decline * hours)), dry);
    }

    /// <summary>The state after steady days.</summary>
    /// <param name="before">State before.</param>
    /// <param name="surfaceC">Temperature [°C].</param>
    /// <param name="humidityPercent">Humidity [%], 0 to 100.</param>
    /// <param name="days">How long [d], 0 or more.</param>
    /// <param name="surface">Class.</param>
    /// <param name="declineFactor">As in <see cref="Step"/>.</param>
    /// <param name="stepHours">Length of a step [h], above 0 and up to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static State Steady(State before, double surfaceC, double humidityPercent, double days, MouldSurface surface, double declineFactor = 1, double stepHours = 1)
    {
        var steps = (long)Math.Round(Must.NotBeNegative(days) * 24 / Must.BePositive(stepHours));
        for (long i = 0; i < steps; i++) before = Step(before, surfaceC, humidityPercent, stepHours, surface, declineFactor);
        return before;
    }
}
