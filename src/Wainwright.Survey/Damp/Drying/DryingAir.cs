using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>The air that boards dry in.</summary>
/// <param name="C">Temperature [°C].</param>
/// <param name="HumidityFraction">Relative humidity [0–1].</param>
/// <param name="From">Where it is from, in words.</param>
internal sealed record DryingAir(double C, double HumidityFraction, string From)
{
    // a room heated and aired, and a van that nobody read the air of: common practice, no source
    private const double HeatedC = 30, HeatedHumidity = 0.4, UsualC = 18, UsualHumidity = 0.6;

    /// <summary>The room as it was read on the day of the map.</summary>
    public static DryingAir Of(DampMap map)
    {
        var until = map.Newest;
        if (map.Readings.Where(r => r.Reading is { AirC: not null, AirRhPercent: not null }).MaxBy(r => r.Reading.TakenAt) is { } read)
            return Read(read.Reading.AirC!.Value, read.Reading.AirRhPercent!.Value, read.Reading.TakenAt);
        var air = map.Job.Standing().Where(r => r.Part is null && r.Joint is null && r.Line is null && (until is null || r.TakenAt.Date <= until.Value.Date)).ToList();
        var humid = air.Where(r => r.Quantity == Quantity.RelativeHumidity).MaxBy(r => r.TakenAt);
        var warm = air.Where(r => r.Quantity == Quantity.Temperature).MaxBy(r => r.TakenAt);
        return humid is not null && warm is not null
            ? Read(warm.Value.Value, humid.Value.Value, humid.TakenAt)
            : new(UsualC, UsualHumidity, string.Create(CultureInfo.InvariantCulture, $"no air reading: {UsualC} °C and {100 * UsualHumidity:0} % taken, common practice, no source; read air and humidity"));
    }

    /// <summary>The air of a kind of care.</summary>
    public DryingAir Under(DryingCare care) => care != DryingCare.HeatedAndAired ? this
        : new(HeatedC, HeatedHumidity, string.Create(CultureInfo.InvariantCulture, $"heated and aired: {HeatedC} °C and {100 * HeatedHumidity:0} % kept day and night, assumed"));

    private static DryingAir Read(double c, double percent, DateTimeOffset at) =>
        new(Math.Clamp(c, 1, 45), Math.Clamp(percent / 100, 0.05, 0.97), string.Create(CultureInfo.InvariantCulture, $"air of {c:0.#} °C and {percent:0} % as read on {at:yyyy-MM-dd}, taken to stay so"));
}
