namespace Wainwright.Methods.Labour;

/// <summary>Weight that nearly all healthy workers may lift in a given posture: the revised NIOSH lifting equation, metric.</summary>
/// <remarks>
/// RWL = 23·HM·VM·DM·AM·FM·CM kg;  HM = 25/H, VM = 1 − 0.003|V − 75|, DM = 0.82 + 4.5/D, AM = 1 − 0.0032 A  (H, V, D in cm).
/// H below 25 counts as 25, D below 25 as 25; H above 63, V above 175, D above 175 or A above 135 gives 0. Load index = load/RWL.
/// </remarks>
public static class LiftingEquation
{
    /// <summary>NIOSH 94-110.</summary>
    public static readonly Basis Basis = new(
        Source: "NIOSH Publication 94-110, Applications Manual for the Revised NIOSH Lifting Equation (rev. 9/2021)",
        Assumes: ["two hands, standing, room to move", "level dry floor, 19 to 26 °C", "steady load, smooth lift"],
        Caution: "Inside a van most lifts are cramped, one-handed or kneeling: the method does not cover them. Then take the figure as an upper bound and say so.",
        How: Provenance.Quoted);

    const double LoadConstantKg = 23;

    /// <summary>What the hands have to hold on to.</summary>
    public enum Grip
    {
        /// <summary>Handles or good hand-holds.</summary>
        Good,

        /// <summary>Less than good: fingers flexed under.</summary>
        Fair,

        /// <summary>Bulky, slippery, sagging.</summary>
        Poor,
    }

    /// <param name="HorizontalMm">Hands in front of the ankles' middle [mm], 0 or more.</param>
    /// <param name="VerticalMm">Hands above the floor [mm], 0 or more.</param>
    /// <param name="TravelMm">Height difference of the lift [mm], 0 or more.</param>
    /// <param name="TwistDegrees">Twist out of straight ahead [°], 0 or more.</param>
    /// <param name="FrequencyMultiplier">Multiplier for lifts per minute and duration [0–1]; see <see cref="FrequencyUpToOneHour"/>.</param>
    /// <param name="Held">Grip.</param>
    /// <param name="Cramped">Restricted room, kneeling, sitting or one hand.</param>
    public sealed record Input(
        double HorizontalMm, double VerticalMm, double TravelMm, double TwistDegrees, double FrequencyMultiplier, Grip Held, bool Cramped = false);

    /// <param name="RecommendedKg">Recommended weight limit [kg].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double RecommendedKg, IReadOnlyList<string> OutsideRange)
    {
        /// <summary>Load over the limit [-]; up to 1 is the design goal, above 3 a risk for nearly all.</summary>
        /// <param name="loadKg">Load [kg], 0 or more.</param>
        public double LoadIndex(double loadKg) => Must.NotBeNegative(loadKg) / RecommendedKg;
    }

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input lift)
    {
        double h = Must.NotBeNegative(lift.HorizontalMm) / 10, v = Must.NotBeNegative(lift.VerticalMm) / 10, d = Must.NotBeNegative(lift.TravelMm) / 10;
        Must.NotBeNegative(lift.TwistDegrees);
        Must.BeWithin(lift.FrequencyMultiplier, 0, 1);
        var horizontal = h > 63 ? 0 : 25 / Math.Max(h, 25);
        var vertical = v > 175 ? 0 : 1 - (0.003 * Math.Abs(v - 75));
        var travel = d > 175 ? 0 : 0.82 + (4.5 / Math.Max(d, 25));
        var twist = lift.TwistDegrees > 135 ? 0 : 1 - (0.0032 * lift.TwistDegrees);
        var grip = lift.Held switch { Grip.Good => 1, Grip.Fair => v < 75 ? 0.95 : 1, _ => 0.90 };
        return new(
            LoadConstantKg * horizontal * vertical * travel * twist * lift.FrequencyMultiplier * grip,
            lift.Cramped ? ["restricted room, kneeling, sitting or one hand: the method does not cover it; take the figure as an upper bound"] : []);
    }

    static readonly (double PerMin, double Multiplier)[] OneHour =
    [
        (0.2, 1.00), (0.5, 0.97), (1, 0.94), (2, 0.91), (3, 0.88), (4, 0.84), (5, 0.80), (6, 0.75), (7, 0.70), (8, 0.60), (9, 0.52), (10, 0.45), (11, 0.41), (12, 0.37),
    ];

    /// <summary>Frequency multiplier for up to one hour with hands below 75 cm [-]: the next tabled frequency upward; 0 above 12 a minute.</summary>
    /// <param name="liftsPerMin">Lifts per minute, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative frequency.</exception>
    public static double FrequencyUpToOneHour(double liftsPerMin)
    {
        Must.NotBeNegative(liftsPerMin);
        foreach (var (perMin, multiplier) in OneHour)
            if (liftsPerMin <= perMin) return multiplier;
        return 0;
    }

    /// <summary>Lifts per minute that count for 15-minute stretches with breaks inside.</summary>
    /// <param name="liftsPerMin">While lifting [1/min], 0 or more.</param>
    /// <param name="minutesOfFifteen">Minutes of lifting in each quarter of an hour, 0 to 15.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double SpreadFrequency(double liftsPerMin, double minutesOfFifteen) => Must.NotBeNegative(liftsPerMin) * Must.BeWithin(minutesOfFifteen, 0, 15) / 15;
}
