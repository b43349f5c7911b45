using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Web.Entry;

/// <summary>A range of a measure over a class of vans [mm].</summary>
public readonly record struct Range(double LowMm, double HighMm)
{
    /// <summary>The middle of the range with half its width as doubt: a guess until somebody puts a tape to it.</summary>
    public Measured Guess => new((LowMm + HighMm) / 2, (HighMm - LowMm) / 2, Known.Inferred);
}

/// <summary>A generic size class of panel van, to begin with until the van itself has been measured.</summary>
public sealed record VanClass(string Name, Range Length, Range Width, Range BetweenArches, Range Height, DoorRange SideDoor, DoorRange RearDoor)
{
    /// <summary>The classes, small to large.</summary>
    public static IReadOnlyList<VanClass> All { get; } = Read();

    private static IReadOnlyList<VanClass> Read()
    {
        using var stream = typeof(VanClass).Assembly.GetManifestResourceStream("van-classes.json")!;
        using var document = JsonDocument.Parse(stream);
        return [.. document.RootElement.GetProperty("classes").EnumerateArray().Select(c => new VanClass(
            c.GetProperty("name").GetString()!, Of(c, "lengthMm"), Of(c, "widthMm"), Of(c, "betweenArchesMm"), Of(c, "heightMm"), Door(c, "sideDoorMm"), Door(c, "rearDoorMm")))];
    }

    private static Range Of(JsonElement at, string name) => new(at.GetProperty(name)[0].GetDouble(), at.GetProperty(name)[1].GetDouble());

    private static DoorRange Door(JsonElement at, string name) => new(Of(at.GetProperty(name), "width"), Of(at.GetProperty(name), "height"));
}

/// <summary>A door opening over a class of vans.</summary>
public readonly record struct DoorRange(Range Width, Range Height);
