using Wainwright.Fitout;

namespace Wainwright.Survey.Electrics;

/// <summary>Where water is or can come from.</summary>
internal static class WetPlaces
{
    /// <param name="Name">What it is, in words.</param>
    /// <param name="Part">The part it belongs to.</param>
    /// <param name="At">The point that counts alone; absent for the part's solids.</param>
    /// <param name="Field">Where it stands in the job file.</param>
    public sealed record Spot(string Name, Part Part, Place? At, string Field);

    /// <summary>Places one touches water at: those that the distance to an outlet is measured from.</summary>
    public static IEnumerable<Spot> Near(Job job) =>
        job.Having<WetFitting>().Where(w => w.Device.Wet is WetKind.Sink or WetKind.Basin or WetKind.Shower or WetKind.Tap or WetKind.Bath).Select(Spotted).Concat(TankFittings(job));

    /// <summary>Everything that can leak: pumps, traps and water heaters too.</summary>
    public static IEnumerable<Spot> Leaking(Job job) =>
        job.Having<WetFitting>().Select(Spotted).Concat(TankFittings(job))
            .Concat(job.Having<WaterHeater>().Select(h => new Spot(h.Part.Name, h.Part, null, $"parts[{h.Part.Id}].solids")));

    private static Spot Spotted((Part Part, WetFitting Device) wet) =>
        new(wet.Part.Name, wet.Part, wet.Device.At, $"parts[{wet.Part.Id}].wetFitting.at");

    private static IEnumerable<Spot> TankFittings(Job job) =>
        job.Having<Tank>().Where(t => t.Device.Holds is Medium.Water or Medium.Waste)
            .SelectMany(t => t.Device.Fittings, (t, f) => new Spot($"{f.Name} of {t.Part.Name}", t.Part, f.At, $"parts[{t.Part.Id}].tank.fittings"));
}
