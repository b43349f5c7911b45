using Wainwright.Fitout;

namespace Wainwright.Survey.Damp;

/// <summary>A floor that nobody drew as parts, made from the build-up that the vehicle is said to have: whole between the skins, round the wheel arches.</summary>
internal static class FloorAsSaid
{
    /// <summary>What is told of it.</summary>
    public const string Told = "no floor board is drawn as a part: the floor is taken from the vehicle's layers, whole between the skins; draw it, with its joints";

    // a layer without a thickness: common practice, no source [mm]
    private const double UsualMm = 12;

    /// <summary>The job with the floor's layers as parts; null when a floor board is drawn, or no layer is of wood.</summary>
    public static Job? In(Job job)
    {
        var floor = job.Vehicle.Floor;
        if (floor.All(l => BoardMaterial.Named(l.Material) is null)) return null;
        if (job.Parts.Any(p => p.System == PartSystem.Floor && p.Solids.Count > 0 && BoardMaterial.Of(p, job.Points) is not null)) return null;
        List<Part> made = [];
        double z = 0;
        for (var i = 0; i < floor.Count; i++)
        {
            // the metal lies under the floor, its thickness is not counted from it
            if (i == 0 && Drying.BoardStuff.IsMetal(floor[i].Material)) continue;
            var thick = floor[i].ThicknessMm?.Value ?? UsualMm;
            PartId id = new($"floor-{i + 1}");
            if (job.Parts.Any(p => p.Id == id)) return null;
            made.Add(new()
            {
                Id = id, Name = $"floor as said: {floor[i].Material}", System = PartSystem.Floor, Known = Known.Inferred, Made = [floor[i]],
                Solids = [.. Between(job.Vehicle.LoadSpace).Select((s, n) => new BoxSolid { Name = $"field {n + 1}", At = new(s.X, s.Y, z), Size = new(s.Long, s.Wide, thick) })],
            });
            z += thick;
        }
        return job with { Parts = [.. job.Parts, .. made] };
    }

    /// <summary>The floor cut where an arch begins and ends.</summary>
    private static IEnumerable<(double X, double Y, double Long, double Wide)> Between(LoadSpace space)
    {
        var length = space.LengthMm.Value;
        double[] cuts = [.. space.WheelArches.SelectMany(a => new[] { a.FromXMm, a.ToXMm }).Append(0).Append(length).Where(x => x >= 0 && x <= length).Distinct().Order()];
        for (var i = 1; i < cuts.Length; i++)
        {
            var middle = (cuts[i - 1] + cuts[i]) / 2;
            double In(Direction side) => space.WheelArches.Where(a => a.Side == side && a.FromXMm < middle && middle < a.ToXMm).Select(a => a.WidthMm).DefaultIfEmpty(0).Max();
            var left = In(Direction.Left);
            yield return (cuts[i - 1], left, cuts[i] - cuts[i - 1], space.WidthMm.Value - left - In(Direction.Right));
        }
    }
}
