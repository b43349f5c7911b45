namespace Wainwright.Methods.Labour;

/// <summary>The revised NIOSH lifting equation in its own pounds and inches: not an exact conversion of the metric one.</summary>
/// <remarks>RWL = 51·(10/H)·(1 − 0.0075|V − 30|)·(0.82 + 1.8/D)·(1 − 0.0032 A)·FM·CM lb, H at least 10 in, D at least 10 in.</remarks>
public static class LiftingEquationUs
{
    /// <summary>NIOSH 94-110, US units.</summary>
    public static readonly Basis Basis = LiftingEquation.Basis;

    /// <param name="HorizontalIn">Hands in front of the ankles' middle [in], 0 or more.</param>
    /// <param name="VerticalIn">Hands above the floor [in], 0 or more.</param>
    /// <param name="TravelIn">Height difference of the lift [in], 0 or more.</param>
    /// <param name="TwistDegrees">Twist [°], 0 or more.</param>
    /// <param name="FrequencyMultiplier">Multiplier for lifts per minute and duration [0–1].</param>
    /// <param name="Held">Grip.</param>
    public sealed record Input(double HorizontalIn, double VerticalIn, double TravelIn, double TwistDegrees, double FrequencyMultiplier, LiftingEquation.Grip Held);

    /// <param name="RecommendedLb">Recommended weight limit [lb].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double RecommendedLb, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input lift)
    {
        double h = Must.NotBeNegative(lift.HorizontalIn), v = Must.NotBeNegative(lift.VerticalIn), d = Must.NotBeNegative(lift.TravelIn);
        Must.NotBeNegative(lift.TwistDegrees);
        Must.BeWithin(lift.FrequencyMultiplier, 0, 1);
        var horizontal = h > 25 ? 0 : 10 / Math.Max(h, 10);
        var vertical = v > 70 ? 0 : 1 - (0.0075 * Math.Abs(v - 30));
        var travel = d > 70 ? 0 : 0.82 + (1.8 / Math.Max(d, 10));
        var twist = lift.TwistDegrees > 135 ? 0 : 1 - (0.0032 * lift.TwistDegrees);
        var grip = lift.Held switch { LiftingEquation.Grip.Good => 1, LiftingEquation.Grip.Fair => v < 30 ? 0.95 : 1, _ => 0.90 };
        return new(51 * horizontal * vertical * travel * twist * lift.FrequencyMultiplier * grip, []);
    }
}
