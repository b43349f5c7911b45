using Wainwright.Methods.Moisture;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>What is taken of dry boards and room for a patch, and how far a course is from a reading.</summary>
internal static class PatchWeighing
{
    /// <summary>A course is taken to tell what is over the dry board within a factor of two: one standard deviation of its logarithm, own rule [-].</summary>
    public const double CourseFactor = 0.7;

    // and nothing within so many points of dry: own rule
    private const double NearDryPoints = 2;

    /// <summary>The dry board of a job [%]: the mean of its dry references, else the driest of its materials.</summary>
    public static double DryPercent(DampMap map)
    {
        var references = map.Readings.Where(r => r.IsReference && r.Made.Bound == MeterReading.Bound.About).Select(r => r.Made.Percent).ToList();
        var driest = map.DryBoards.Min(d => d.Percent);
        return references.Count > 0 ? Math.Min(references.Average(), driest + DampPatch.WetPoints) : driest;
    }

    /// <summary>Panel against solid wood, by the dry references in the air of the day: what this meter shows on these boards, 0.8 to 1.2; the usual where nobody read both [-].</summary>
    public static double PanelFactor(DampMap map)
    {
        var references = map.Readings.Where(r => r.IsReference && r.Made.Bound == MeterReading.Bound.About && r.Reading is { AirC: not null, AirRhPercent: not null } && BoardMaterial.IsPanel(map.Net.Sheets[map.Net.Cells[r.Cell].Sheet].Material)).ToList();
        return references.Count == 0 ? BoardStuff.PanelFactor
            : Math.Clamp(references.Average(r => r.Made.Percent / WoodEquilibrium.Of(new(r.Reading.AirC!.Value, Math.Min(0.95, r.Reading.AirRhPercent!.Value / 100))).MoisturePercent), 0.8, 1.2);
    }

    /// <summary>The room over the time of the wetting: as warm as read, as humid as the dry boards have it.</summary>
    public static DryingAir Room(DampMap map, double dryPercent, double panelFactor)
    {
        var air = DryingAir.Of(map);
        return air with { HumidityFraction = Math.Clamp(PanelEquilibrium.HumidityFraction(dryPercent, air.C, panelFactor), 0.2, 0.9) };
    }

    /// <summary>How far a course is from a reading, in standard deviations: positive when the course is wetter.</summary>
    /// <remarks>On the logarithm of what is over the dry board, as water in a van runs where no course can know: a factor counts, not points.</remarks>
    public static double Off(DampReading reading, double coursePercent, double dryPercent)
    {
        double Excess(double percent) => Math.Max(0, percent - dryPercent) + NearDryPoints;
        var read = Excess(reading.Made.Percent);
        var meter = reading.SigmaPoints / read;
        return Math.Log(Excess(coursePercent) / read) / Math.Sqrt((meter * meter) + (CourseFactor * CourseFactor));
    }
}
