namespace Wainwright.Methods.Retention;

/// <summary>Least distances of nails and screws after Eurocode 5, wood to 420 kg/m³, not bored.</summary>
/// <remarks>
/// α between load and grain, in diameters: along the grain 5 + 5·cos α (7·cos α from 5 mm), across 5, loaded end 10 + 5·cos α, other end 10,
/// loaded edge 5 + 2·sin α (5·sin α from 5 mm), other edge 5. Panel to timber: spacings times 0.85. Plywood's own edge: 3 unloaded, 3 + 4·sin α loaded.
/// </remarks>
public static class Ec5Distances
{
    /// <summary>Spacing and distances.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1995-1-1, table 8.2 and 8.3.1.3",
        Assumes: ["no bored hole", "characteristic density up to 420 kg/m³"],
        Caution: "From memory: check before it decides.",
        How: Provenance.FromMemory);

    /// <param name="AlongGrainMm">Between fixings along the grain, a1 [mm].</param>
    /// <param name="AcrossGrainMm">Between fixings across, a2 [mm].</param>
    /// <param name="LoadedEndMm">Loaded end, a3t [mm].</param>
    /// <param name="OtherEndMm">Unloaded end, a3c [mm].</param>
    /// <param name="LoadedEdgeMm">Loaded edge, a4t [mm].</param>
    /// <param name="OtherEdgeMm">Unloaded edge, a4c [mm].</param>
    public sealed record Distances(double AlongGrainMm, double AcrossGrainMm, double LoadedEndMm, double OtherEndMm, double LoadedEdgeMm, double OtherEdgeMm);

    /// <summary>Least distances in timber.</summary>
    /// <param name="diameterMm">Diameter [mm], above 0.</param>
    /// <param name="degreesToGrain">Angle between load and grain [°], 0 to 90.</param>
    /// <param name="isPanelToTimber">A panel is fixed on it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Distances Of(double diameterMm, double degreesToGrain, bool isPanelToTimber = false)
    {
        var d = Must.BePositive(diameterMm);
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(Must.BeWithin(degreesToGrain, 0, 90)));
        var (along, edge, spacing) = (d < 5 ? 5 : 7, d < 5 ? 2 : 5, isPanelToTimber ? 0.85 : 1);
        return new((5 + (along * cos)) * d * spacing, 5 * d * spacing, (10 + (5 * cos)) * d, 10 * d, (5 + (edge * sin)) * d, 5 * d);
    }

    /// <summary>Least distance from a plywood's own edge [mm].</summary>
    /// <param name="diameterMm">Diameter [mm], above 0.</param>
    /// <param name="loadsTowardsEdge">The load pushes towards that edge.</param>
    public static double PlywoodEdgeMm(double diameterMm, bool loadsTowardsEdge) => (loadsTowardsEdge ? 7 : 3) * Must.BePositive(diameterMm);
}
