namespace Wainwright.Fitout;

/// <summary>What must hold of the base vehicle.</summary>
internal static class VehicleRules
{
    public static IEnumerable<Issue> Of(Vehicle vehicle)
    {
        var room = vehicle.LoadSpace;
        foreach (var twice in Twice(vehicle.Frames.Select(f => f.Name))) yield return Named("frames", twice);
        foreach (var twice in Twice(vehicle.Openings.Select(o => o.Name))) yield return Named("openings", twice);
        foreach (var twice in Twice(vehicle.Axles.Select(a => a.Name))) yield return Named("axles", twice);
        foreach (var twice in Twice(vehicle.Seats.Select(s => s.Name))) yield return Named("seats", twice);

        foreach (var (o, i) in vehicle.Openings.Select((o, i) => (o, i)))
        {
            var at = $"job.vehicle.openings[{i}] ({o.Name})";
            var along = o.Face is Face.Front or Face.Rear ? room.WidthMm.Value : room.LengthMm.Value;
            var up = o.Face == Face.Roof ? room.WidthMm.Value : room.HeightMm.Value;
            if (o.FromMm.Value < -Slack || o.FromMm.Value + o.WidthMm.Value > along + Slack)
                yield return new(at, $"lies {o.FromMm.Value:0} to {o.FromMm.Value + o.WidthMm.Value:0} mm on a wall of 0 to {along:0} mm", "mend its place or its width");
            if (o.SillMm.Value < -Slack - 300 || o.SillMm.Value + o.HeightMm.Value > up + Slack)
                yield return new(at, $"reaches {o.SillMm.Value + o.HeightMm.Value:0} mm where the room ends at {up:0} mm", "mend its sill or its height");
        }
        foreach (var (a, i) in room.WheelArches.Select((a, i) => (a, i)))
        {
            var at = $"job.vehicle.loadSpace.wheelArches[{i}]";
            if (a.Side is not (Direction.Left or Direction.Right)) yield return new($"{at}.side", "must be left or right", "write the wall it stands against");
            if (a.ToXMm <= a.FromXMm) yield return new(at, $"ends at {a.ToXMm:0} mm before it begins at {a.FromXMm:0} mm", "swap the two");
        }
        if (vehicle.Openings.All(o => !o.Passable))
            yield return new("job.vehicle.openings", "no opening that a part can leave by", "add the doors: name, wall, clear width, sill, clear height", Weight.Doubt);
    }

    /// <summary>Doors may stand a little proud of the room they open [mm]; common practice, no source.</summary>
    private const double Slack = 60;

    private static IEnumerable<string> Twice(IEnumerable<string> names) => names.GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key);

    private static Issue Named(string list, string name) => new($"job.vehicle.{list}", $"“{name}” stands there twice", "give each its own name");
}
