namespace Wainwright.Methods.Combustion;

/// <summary>Pressure-decay test of a gas installation with air.</summary>
/// <remarks>
/// Leak rate q = V·Δp/t [mbar·l/s]. EN 1949: 150 mbar, 5 min to settle, then at most 10 mbar lost in 5 min with at least 700 cm³.
/// A sealed volume that cools loses p_abs/T per kelvin: 2.5 K fake the whole allowance, so both temperatures are asked for.
/// </remarks>
public static class GasTightness
{
    /// <summary>The tightness clause.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1949:2011+A1:2013, tightness test with air at 150 mbar",
        Assumes: ["appliance taps closed, shut-off valves open", "parts above working pressure are tested with leak fluid"],
        Caution: "A test for licensed or registered gas people. Local codes rule. A pass today says nothing of a hose that is past its date.",
        How: Provenance.Quoted);

    /// <summary>Largest drop allowed [mbar].</summary>
    public const double MostDropMbar = 10;

    /// <summary>Time over which the drop is read [min].</summary>
    public const double ReadingMin = 5;

    /// <summary>Least test volume [cm³].</summary>
    public const double LeastVolumeCm3 = 700;

    /// <summary>Test pressure [mbar above air].</summary>
    public const double TestMbar = 150;

    const double AirMbar = 1013.25, KelvinAt0C = 273.15;

    /// <param name="VolumeCm3">Volume under test [cm³], above 0.</param>
    /// <param name="StartMbar">Gauge pressure after settling [mbar], above 0.</param>
    /// <param name="EndMbar">Gauge pressure at the end [mbar], 0 or more.</param>
    /// <param name="Minutes">Time between the readings [min], above 0.</param>
    /// <param name="StartC">Pipe temperature at the first reading [°C].</param>
    /// <param name="EndC">Pipe temperature at the second reading [°C].</param>
    public sealed record Input(double VolumeCm3, double StartMbar, double EndMbar, double Minutes, double StartC, double EndC);

    /// <param name="DropMbar">Pressure lost as read [mbar].</param>
    /// <param name="LeakDropMbar">Pressure lost beyond what cooling explains [mbar].</param>
    /// <param name="LeakMbarLPerS">Leak rate [mbar·l/s].</param>
    /// <param name="LeakStandardCm3PerMin">The same at one atmosphere [cm³/min].</param>
    /// <param name="OutsideRange">Where the test left the clause; empty when it followed it.</param>
    public sealed record Result(double DropMbar, double LeakDropMbar, double LeakMbarLPerS, double LeakStandardCm3PerMin, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input test)
    {
        double start = Must.BePositive(test.StartMbar), end = Must.NotBeNegative(test.EndMbar), minutes = Must.BePositive(test.Minutes);
        var expected = ((AirMbar + start) * Kelvin(test.EndC) / Kelvin(test.StartC)) - AirMbar;
        var leakDrop = expected - end;
        var rate = Must.BePositive(test.VolumeCm3) / 1000 * leakDrop / (minutes * 60);
        List<string> outside = [];
        if (test.VolumeCm3 < LeastVolumeCm3) outside.Add("test volume below 700 cm³");
        if (Math.Abs(start - TestMbar) > 5) outside.Add("test pressure not 150 mbar");
        if (minutes < ReadingMin) outside.Add("read for less than 5 min");
        return new(start - end, leakDrop, rate, rate / AirMbar * 1000 * 60, outside);
    }

    /// <summary>What one kelvin of temperature change does to a sealed volume [mbar/K].</summary>
    /// <param name="gaugeMbar">Pressure above air [mbar], 0 or more.</param>
    /// <param name="airC">Temperature [°C].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static double DriftMbarPerK(double gaugeMbar, double airC) => (AirMbar + Must.NotBeNegative(gaugeMbar)) / Kelvin(airC);

    static double Kelvin(double c) => Must.BeWithin(c, -50, 100) + KelvinAt0C;
}
