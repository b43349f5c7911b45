using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Weight;

namespace Wainwright.Survey.Weight;

/// <summary>One thing that weighs.</summary>
/// <param name="What">What it is.</param>
/// <param name="Part">The part it is or lies in.</param>
/// <param name="Kg">Its mass [kg].</param>
/// <param name="At">Its middle; absent when nobody has placed it.</param>
public sealed record MassRow(string What, PartId Part, Span Kg, Place? At);

/// <summary>Everything fitted and carried, with its mass and place, and what is not known of it.</summary>
/// <param name="Rows">What is known to weigh something.</param>
/// <param name="Missing">What is not known: parts without mass, things without place, tanks not read.</param>
public sealed record MassSheet(IReadOnlyList<MassRow> Rows, IReadOnlyList<string> Missing)
{
    /// <summary>Density of fresh and waste water [kg/l].</summary>
    public const double WaterKgPerL = 1.0;

    /// <summary>Density of vehicle fuel, the upper limit of EN 590 diesel [kg/l].</summary>
    public const double FuelKgPerL = 0.845;

    /// <summary>All rows [kg], doubts taken as independent.</summary>
    public Span TotalKg => Span.SumOfIndependent(Rows.Select(r => r.Kg));

    /// <summary>Load that the rows lay on the axles [kg], doubts taken as independent; rows without place are left out.</summary>
    /// <param name="frontXMm">Place of the front axle along the van [mm].</param>
    /// <param name="rearXMm">Place of the rear axle along the van [mm], behind the front one.</param>
    public (Span FrontKg, Span RearKg) OnAxles(double frontXMm, double rearXMm)
    {
        var placed = Rows.Where(r => r.At is not null)
            .Select(r => (r.Kg, Front: AxleMoments.FrontShare(rearXMm - frontXMm, r.At!.Value.XMm - frontXMm))).ToList();
        return (Span.SumOfIndependent(placed.Select(r => r.Kg.Times(r.Front))), Span.SumOfIndependent(placed.Select(r => r.Kg.Times(1 - r.Front))));
    }

    /// <summary>The sheet of a job: parts, their contents, what tanks hold.</summary>
    public static MassSheet Of(Job job)
    {
        List<MassRow> rows = [];
        List<string> missing = [];
        foreach (var part in job.Parts)
        {
            var at = Middle(part);
            if (part.EmptyKg is { } empty) rows.Add(new(part.Name, part.Id, Doubt.Mass(empty), at));
            else missing.Add($"mass of {part.Name} ({part.Id})");
            foreach (var held in part.Contents) rows.Add(new($"{held.What} in {part.Name}", part.Id, Doubt.Mass(held.MassKg), at));
            foreach (var tank in part.Devices.OfType<Tank>())
            {
                if (KgPerL(tank) is not { } density) continue;
                if (tank.FilledL is { } litres) rows.Add(new($"{Named(tank.Holds)} in {part.Name}", part.Id, Span.Of(litres.Value, litres.PlusMinus ?? 0.1 * litres.Value).Times(density), at));
                else missing.Add($"fill of {part.Name} ({part.Id})");
            }
            if (at is null && (part.EmptyKg is not null || part.Contents.Count > 0)) missing.Add($"place of {part.Name} ({part.Id})");
        }
        return new(rows, missing);
    }

    /// <summary>Middle of a part's solids by volume; absent when it has none.</summary>
    internal static Place? Middle(Part part)
    {
        double volume = 0, x = 0, y = 0, z = 0;
        foreach (var solid in part.Solids)
        {
            var (low, high) = solid.Bounds();
            var v = solid.VolumeMm3();
            volume += v;
            x += v * (low.XMm + high.XMm) / 2;
            y += v * (low.YMm + high.YMm) / 2;
            z += v * (low.ZMm + high.ZMm) / 2;
        }
        return volume > 0 ? new(x / volume, y / volume, z / volume) : null;
    }

    /// <summary>What a litre of a tank's content weighs [kg/l]; absent for what is not a liquid.</summary>
    internal static double? KgPerL(Tank tank) => tank.Holds switch { Medium.Water or Medium.Waste => WaterKgPerL, Medium.Fuel => FuelKgPerL, _ => null };

    /// <summary>The first few things missing, for a sentence.</summary>
    internal IReadOnlyList<string> MissingInShort(int most = 12) => Missing.Count <= most
        ? Missing
        : [.. Missing.Take(most), string.Create(CultureInfo.InvariantCulture, $"and {Missing.Count - most} more: see the mass sheet")];

    private static string Named(Medium medium) => medium switch { Medium.Water => "water", Medium.Waste => "waste water", _ => "fuel" };
}
