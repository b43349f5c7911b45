using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;

namespace Wainwright.Survey.Damp;

/// <summary>What the boards would read had no water come: from the air of the day, before any meter.</summary>
/// <param name="WoodPercent">Solid wood [%].</param>
/// <param name="PanelPercent">Board, middle of its range [%].</param>
/// <param name="SigmaPoints">Standard deviation [points].</param>
/// <param name="From">What it rests on, in words.</param>
internal sealed record DryBoard(double WoodPercent, double PanelPercent, double SigmaPoints, string From)
{
    // published tables part by two points; without air nothing but habit is left. Own rule
    private const double WithAirPoints = 2, WithoutAirPoints = 3, UsualPercent = 12;

    public const string WithoutAir = "no air reading: 12 % taken, common practice, no source";

    // air read the day after still speaks for the day
    private const double SameDays = 1;

    public static DryBoard Of(Job job, IReadOnlyList<DampReading> used)
    {
        var air = used.Where(u => u.Reading is { AirC: not null, AirRhPercent: not null }).Select(u => (C: u.Reading.AirC!.Value, Rh: u.Reading.AirRhPercent!.Value)).ToList();
        if (air.Count == 0)
        {
            // no air of a later day: what is foretold of a day knows only what was known on it
            DateTimeOffset? until = used.Count == 0 ? null : used.Max(u => u.Reading.TakenAt).AddDays(SameDays);
            var standing = job.Standing().Where(r => until is null || r.TakenAt <= until).ToList();
            var rh = standing.Where(r => r.Quantity == Quantity.RelativeHumidity && r.Part is null).MaxBy(r => r.TakenAt);
            var warm = standing.Where(r => r.Quantity == Quantity.Temperature && r.Part is null && r.Joint is null).MaxBy(r => r.TakenAt);
            if (rh is not null && warm is not null) air.Add((warm.Value.Value, rh.Value.Value));
        }
        if (air.Count == 0) return new(UsualPercent, UsualPercent, WithoutAirPoints, WithoutAir);
        var (c, h) = (air.Average(a => a.C), Math.Min(95, air.Average(a => a.Rh)));
        var wood = WoodEquilibrium.Of(new(c, h / 100)).MoisturePercent;
        var panel = PanelEquilibrium.Of(new(c, h / 100));
        return new(wood, (panel.LowPercent + panel.HighPercent) / 2, WithAirPoints, string.Create(CultureInfo.InvariantCulture, $"air of {c:0.#} °C and {h:0} %"));
    }
}
