namespace Wainwright.Methods.Retention;

/// <summary>A lid held by gas springs: moments about its hinge through the travel, cold and hot.</summary>
/// <remarks>
/// Hinge at the origin, x the way the shut lid reaches, z up; opening turns up. Spring from the fixed end A to the moving end B(θ), its arm
/// |A × B|/|B − A|. Force F1·(1 + (k − 1)·s/S): F1 drawn out at 20 °C, k the force pushed in over F1 (1.2 to 1.4), s pushed in so far, S the
/// stroke; times absolute temperature over 293.15 K: 3.4 % for 10 K. Weight m·g at the turned centre.
/// </remarks>
public static class GasSpringBalance
{
    /// <summary>Static balance.</summary>
    public static readonly Basis Basis = new(
        Source: "moment balance; temperature 3.4 % per 10 °C as a spring maker states it, which is the gas law at fixed volume; progression 1.2 to 1.4 from memory",
        Assumes: ["hinge level across the van, van on level ground", "springs alike, in the plane of turning"],
        Caution: "Springs lose force with years. A lid that falls crushes hands: prop it before touching its springs. Never open a spring: it is charged.",
        How: Provenance.Quoted);

    /// <summary>Absolute temperature at which springs are rated [K].</summary>
    public const double RatedK = 293.15;

    /// <param name="MassKg">Lid [kg], above 0.</param>
    /// <param name="CentreXMm">Its centre when shut, across from the hinge [mm].</param>
    /// <param name="CentreZMm">Its centre when shut, above the hinge [mm].</param>
    /// <param name="FixedXMm">Spring's end on what stays, across [mm].</param>
    /// <param name="FixedZMm">The same, above [mm].</param>
    /// <param name="MovingXMm">Spring's end on the lid when shut, across [mm].</param>
    /// <param name="MovingZMm">The same, above [mm].</param>
    /// <param name="Count">How many springs, 1 or more.</param>
    /// <param name="DrawnOutN">Force of one drawn out at 20 °C, F1 [N], 0 or more.</param>
    /// <param name="DrawnOutMm">Length drawn out, eye to eye [mm], above 0.</param>
    /// <param name="StrokeMm">Stroke [mm], above 0.</param>
    /// <param name="Progression">Force pushed in over force drawn out [-], 1 or more.</param>
    public sealed record Lid(
        double MassKg, double CentreXMm, double CentreZMm, double FixedXMm, double FixedZMm, double MovingXMm, double MovingZMm,
        int Count, double DrawnOutN, double DrawnOutMm, double StrokeMm, double Progression = 1.3);

    /// <param name="OpenDegrees">Opened by [°].</param>
    /// <param name="LengthMm">Length of the spring [mm].</param>
    /// <param name="SpringN">Force of one spring [N].</param>
    /// <param name="LiftNm">Moment of the springs, above 0 opens [N m].</param>
    /// <param name="WeightNm">Moment of the weight, above 0 shuts [N m].</param>
    /// <param name="OutsideRange">Limits of the spring that this place leaves; empty when it is inside.</param>
    public sealed record Place(double OpenDegrees, double LengthMm, double SpringN, double LiftNm, double WeightNm, IReadOnlyList<string> OutsideRange)
    {
        /// <summary>Above 0: rises by itself; below 0: falls unless held [N m].</summary>
        public double BalanceNm => LiftNm - WeightNm;

        /// <summary>Force upward that a hand must add at a distance from the hinge, below 0 when it must pull down [N].</summary>
        /// <param name="handMm">Hand from the hinge, square to the arm [mm], above 0.</param>
        public double HandN(double handMm) => -BalanceNm / (Must.BePositive(handMm) / 1000);
    }

    /// <summary>Balance at one angle.</summary>
    /// <param name="lid">Lid and springs.</param>
    /// <param name="openDegrees">Opened by [°].</param>
    /// <param name="temperatureC">Temperature of the springs [°C], above −50.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range, or both ends of the spring meet.</exception>
    public static Place At(Lid lid, double openDegrees, double temperatureC = 20)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lid.Count, 1);
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(Must.BeFinite(openDegrees)));
        double bx = (lid.MovingXMm * cos) - (lid.MovingZMm * sin), bz = (lid.MovingZMm * cos) + (lid.MovingXMm * sin);
        var length = Must.BePositive(Math.Sqrt(Math.Pow(bx - lid.FixedXMm, 2) + Math.Pow(bz - lid.FixedZMm, 2)));
        var pushedIn = Must.BePositive(lid.DrawnOutMm) - length;
        List<string> outside = [];
        if (pushedIn < -0.5) outside.Add("spring drawn out beyond its length: it stops the lid before");
        if (pushedIn > Must.BePositive(lid.StrokeMm) + 0.5) outside.Add("spring pushed in beyond its stroke: the lid does not shut so far");
        var within = Math.Clamp(pushedIn / lid.StrokeMm, 0, 1);
        var force = Must.NotBeNegative(lid.DrawnOutN) * (1 + ((Must.BeWithin(lid.Progression, 1, 3) - 1) * within)) * TemperatureFactor(temperatureC);
        // a push along B − A turns the lid up when A × B, seen from the side, is above 0
        var arm = ((lid.FixedXMm * bz) - (lid.FixedZMm * bx)) / length;
        var weight = Must.BePositive(lid.MassKg) * Pulse.GravityMPerS2 * ((lid.CentreXMm * cos) - (lid.CentreZMm * sin)) / 1000;
        return new(openDegrees, length, force, lid.Count * force * arm / 1000, weight, outside);
    }

    /// <summary>Force over force at 20 °C [-].</summary>
    /// <param name="temperatureC">Temperature [°C], above −50 and below 120.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature leaves its range.</exception>
    public static double TemperatureFactor(double temperatureC) => (273.15 + Must.BeWithin(temperatureC, -50, 120)) / RatedK;
}
