using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>What a part weighs on the road, and where: itself, what it holds, its tanks and heaters full.</summary>
/// <param name="Kg">Mass [kg].</param>
/// <param name="CentreMm">Centre of mass [mm].</param>
/// <param name="Assumed">What was taken for granted.</param>
internal sealed record Laden(Span Kg, Vector3D CentreMm, IReadOnlyList<string> Assumed)
{
    private const double WaterKgPerL = 1, FuelKgPerL = 0.84;

    /// <summary>The part laden; absent when its mass or its place is not known.</summary>
    public static Laden? Of(Part part)
    {
        if (part.EmptyKg is not { } empty || Middle(part) is not { } own) return null;
        List<string> assumed = [];
        var kg = Doubt.Mass(empty);
        var moment = kg.Likely * own;
        void Add(Span load, Vector3D at)
        {
            kg += load;
            moment += load.Likely * at;
        }
        foreach (var held in part.Contents) Add(Doubt.Mass(held.MassKg), own);
        if (part.Contents.Count > 0) assumed.Add("what a part holds lies about its middle");
        foreach (var (what, litres, density) in Liquids(part))
        {
            Add(Span.Of(litres.Value, litres.PlusMinus ?? 0.02 * litres.Value).Times(density), own);
            assumed.Add($"{what} full");
        }
        return new(kg, kg.Likely > 0 ? 1 / kg.Likely * moment : own, assumed);
    }

    /// <summary>Middle of its solids, by volume [mm]; absent when it has none.</summary>
    public static Vector3D? Middle(Part part)
    {
        if (part.Solids.Count == 0) return null;
        double volume = 0;
        var sum = default(Vector3D);
        foreach (var solid in part.Solids)
        {
            var (v, (low, high)) = (solid.VolumeMm3(), solid.Bounds());
            sum += v / 2 * new Vector3D(low.XMm + high.XMm, low.YMm + high.YMm, low.ZMm + high.ZMm);
            volume += v;
        }
        return 1 / volume * sum;
    }

    private static IEnumerable<(string What, Measured Litres, double KgPerL)> Liquids(Part part)
    {
        foreach (var device in part.Devices)
            switch (device)
            {
                case Tank tank: yield return ("tank", tank.VolumeL, tank.Holds == Medium.Fuel ? FuelKgPerL : WaterKgPerL); break;
                case WaterHeater { VolumeL: { } litres }: yield return ("water heater", litres, WaterKgPerL); break;
                default: break;
            }
    }
}
