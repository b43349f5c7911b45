namespace Wainwright.Methods.Weight;

/// <summary>Standard load of a motor caravan after EN 1646-2: 10 kg per seat besides the driver's, 10 kg per metre, 30 kg in reserve.</summary>
public static class PersonalLoad
{
    /// <summary>The load rule of EN 1646-2.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1646-2, motor caravans, user payload",
        Assumes: ["75 kg for each passenger besides the driver"],
        Caution: "Editions differ; it is not the pay-mass of the EU mass rules: show both.",
        How: Provenance.Quoted);

    const double PassengerKg = 75, PerSeatKg = 10, PerMetreKg = 10, ReserveKg = 30;

    /// <param name="SeatsBesidesDriver">Seats besides the driver's, 0 or more.</param>
    /// <param name="OverallLengthMm">Overall length [mm], above 0.</param>
    public sealed record Input(int SeatsBesidesDriver, double OverallLengthMm);

    /// <param name="PersonalKg">Load without passengers [kg].</param>
    /// <param name="WithPassengersKg">The same with 75 kg on each seat [kg].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double PersonalKg, double WithPassengersKg, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A negative number of seats, or a length that is not above 0.</exception>
    public static Result Of(Input van)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(van.SeatsBesidesDriver);
        var personal = ReserveKg + (PerSeatKg * van.SeatsBesidesDriver) + (PerMetreKg * Must.BePositive(van.OverallLengthMm) / 1000);
        return new(personal, personal + (PassengerKg * van.SeatsBesidesDriver), []);
    }
}
