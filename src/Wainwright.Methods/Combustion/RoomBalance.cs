namespace Wainwright.Methods.Combustion;

/// <summary>How a gas builds up in a well-mixed space with a steady source and steady air change.</summary>
/// <remarks>
/// C(t) = Cs + (C0 − Cs)·e^(−λt);  Cs = (n·Cout + G/V)/λ;  λ = n + k. Concentrations in any one unit; G in that unit times volume per hour.
/// </remarks>
public static class RoomBalance
{
    /// <summary>Mass balance of one zone.</summary>
    public static readonly Basis Basis = new(
        Source: "Single-zone mass balance, as in indoor-air textbooks and university exercises",
        Assumes: ["the air is mixed at all times", "source and air change are steady"],
        Caution: "Real cabins are layered: the reading at a sleeper's face may be far from the mean.",
        How: Provenance.Quoted);

    /// <param name="VolumeM3">Volume of the space [m³], above 0.</param>
    /// <param name="AirChangesPerH">Air changes [1/h], above 0.</param>
    /// <param name="SourcePerH">Source [concentration unit × m³ per h], 0 or more: for ppm, 10⁶ times the gas in m³/h.</param>
    /// <param name="OutdoorConcentration">Concentration outside, 0 or more.</param>
    /// <param name="StartConcentration">Concentration at the start, 0 or more.</param>
    /// <param name="SinkPerH">Further removal: deposition, decay, filter [1/h], 0 or more.</param>
    public sealed record Input(
        double VolumeM3, double AirChangesPerH, double SourcePerH, double OutdoorConcentration = 0, double StartConcentration = 0, double SinkPerH = 0);

    /// <param name="SteadyConcentration">Concentration that the space tends to.</param>
    /// <param name="RatePerH">How fast it tends there [1/h].</param>
    /// <param name="StartConcentration">Concentration at the start.</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double SteadyConcentration, double RatePerH, double StartConcentration, IReadOnlyList<string> OutsideRange)
    {
        /// <summary>Concentration after a time.</summary>
        /// <param name="hours">Time since the start [h], 0 or more.</param>
        public double After(double hours) =>
            SteadyConcentration + ((StartConcentration - SteadyConcentration) * Math.Exp(-RatePerH * Must.NotBeNegative(hours)));

        /// <summary>Time until a concentration is reached [h]; positive infinity when it never is.</summary>
        /// <param name="concentration">The concentration asked for, 0 or more.</param>
        public double HoursUntil(double concentration)
        {
            var left = (Must.NotBeNegative(concentration) - SteadyConcentration) / (StartConcentration - SteadyConcentration);
            return left is > 0 and <= 1 ? -Math.Log(left) / RatePerH : double.PositiveInfinity;
        }
    }

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input room)
    {
        var rate = Must.BePositive(room.AirChangesPerH) + Must.NotBeNegative(room.SinkPerH);
        var steady = ((room.AirChangesPerH * Must.NotBeNegative(room.OutdoorConcentration)) + (Must.NotBeNegative(room.SourcePerH) / Must.BePositive(room.VolumeM3))) / rate;
        return new(steady, rate, Must.NotBeNegative(room.StartConcentration), []);
    }
}
