using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>Doors, hatches and wheel arches, fact by fact. What is typed counts as measured.</summary>
public static class VehicleFacts
{
    /// <summary>The facts of an opening; a roof hatch is measured along and across instead of along and up.</summary>
    public static IReadOnlyList<Fact<Opening>> Of(Opening door, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(door);
        Measured Taped(Measured? typed) => typed!.Value with { Known = Known.Measured };
        var roof = door.Face == Face.Roof;
        var facts = new FactsOf<Opening>(measures);
        facts.Text("Name", door.Name, t => door with { Name = t! }, needed: true);
        facts.Choice("Wall", door.Face, v => door with { Face = v });
        facts.Length(door.Face is Face.Front or Face.Rear ? "From the left" : "From the front", door.FromMm, v => Judged(door with { FromMm = Taped(v) }), needed: true, Doubt(door.FromMm, door, measures));
        facts.Length(roof ? "Clear length" : "Clear width", door.WidthMm, v => Judged(door with { WidthMm = Taped(v) }), needed: true, Doubt(door.WidthMm, door, measures));
        facts.Length(roof ? "From the left" : "Sill", door.SillMm, v => Judged(door with { SillMm = Taped(v) }), needed: true, Doubt(door.SillMm, door, measures));
        facts.Length(roof ? "Clear width" : "Clear height", door.HeightMm, v => Judged(door with { HeightMm = Taped(v) }), needed: true, Doubt(door.HeightMm, door, measures));
        facts.Options("Parts can leave by it", door.Passable ? "yes" : "no", [("yes", "Yes"), ("no", "No")], t => door with { Passable = t == "yes" });
        facts.Length("Clear ground outside", door.LandingMm, v => door with { LandingMm = v }, help: "square to the wall; nothing when it depends on where the van stands");
        return [.. facts];
    }

    /// <summary>The facts of a wheel arch.</summary>
    public static IReadOnlyList<Fact<WheelArch>> Of(WheelArch arch, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(arch);
        var facts = new FactsOf<WheelArch>(measures);
        facts.Choice("Wall", arch.Side, v => arch with { Side = v }, [(nameof(Direction.Left), "Left"), (nameof(Direction.Right), "Right")]);
        facts.Length("Front end, from the front", arch.FromXMm, v => arch with { FromXMm = v!.Value }, needed: true);
        facts.Length("Rear end, from the front", arch.ToXMm, v => arch with { ToXMm = v!.Value }, needed: true);
        facts.Length("How far it stands in", arch.WidthMm, v => arch with { WidthMm = v!.Value }, needed: true);
        facts.Length("Height", arch.HeightMm, v => arch with { HeightMm = v!.Value }, needed: true);
        return [.. facts];
    }

    // one measure taped does not make the others more than they were
    private static Opening Judged(Opening door) => door with
    {
        Known = new[] { door.FromMm, door.WidthMm, door.SillMm, door.HeightMm }.All(m => (m.Known ?? door.Known) is Known.Measured) ? Known.Measured : door.Known,
    };

    private static string? Doubt(Measured value, Opening door, Measures measures) => (value.Known ?? door.Known) is Known.Measured ? null
        : value.PlusMinus is { } d and > 0 ? $"± {measures.Length(d)}, {Words.Of(value.Known ?? door.Known)}" : Words.Of(value.Known ?? door.Known);
}
