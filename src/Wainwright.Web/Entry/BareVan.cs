using Wainwright.Fitout;

namespace Wainwright.Web.Entry;

/// <summary>A bare van in the making: the guesses of its class, replaced measure by measure as somebody puts a tape to it.</summary>
public sealed class BareVan(VanClass model)
{
    private readonly Dictionary<string, double> taped = [];

    /// <summary>The class it began as.</summary>
    public VanClass Model { get; } = model;

    /// <summary>The measures asked for, in the order one walks round the van.</summary>
    public static IReadOnlyList<(string Key, string Label)> Asked { get; } =
    [
        ("length", "Load length on the floor"), ("width", "Greatest width"), ("height", "Height, metal floor to roof skin"),
        ("sideFrom", "Side door, front edge from the front"), ("sideWidth", "Side door, clear width"), ("sideHeight", "Side door, clear height"),
        ("rearWidth", "Rear doors, clear width"), ("rearHeight", "Rear doors, clear height"),
        ("archFrom", "Wheel arch, front end from the front"), ("archLength", "Wheel arch, length"), ("archWidth", "Wheel arch, how far it stands in"), ("archHeight", "Wheel arch, height"),
    ];

    /// <summary>The measure as taped, or as guessed; <see langword="null"/> where the class says nothing.</summary>
    public Measured? this[string key] => taped.TryGetValue(key, out var mm) ? new Measured(mm, null, Known.Measured) : key switch
    {
        "length" => Model.Length.Guess,
        "width" => Model.Width.Guess,
        "height" => Model.Height.Guess,
        // a side door begins close behind the front end; common practice, no source
        "sideFrom" => new Measured(100, 100, Known.Inferred),
        "sideWidth" => Model.SideDoor.Width.Guess,
        "sideHeight" => Model.SideDoor.Height.Guess,
        "rearWidth" => Model.RearDoor.Width.Guess,
        "rearHeight" => Model.RearDoor.Height.Guess,
        "archWidth" => new Measured((Model.Width.Guess.Value - Model.BetweenArches.Guess.Value) / 2, null, Known.Inferred),
        _ => null,
    };

    /// <summary>Whether a tape was put to it.</summary>
    public bool IsTaped(string key) => taped.ContainsKey(key);

    /// <summary>Puts the tape's measure in, or takes it out again.</summary>
    public void Put(string key, double? mm)
    {
        if (mm is { } value) taped[key] = value;
        else taped.Remove(key);
    }

    /// <summary>The van as known so far. Wheel arches are drawn once their place is measured.</summary>
    public Vehicle Vehicle(bool sideDoorRight)
    {
        var width = this["width"]!.Value;
        var rear = this["rearWidth"]!.Value;
        return new()
        {
            Name = Model.Name,
            LoadSpace = new() { LengthMm = this["length"]!.Value, WidthMm = width, HeightMm = this["height"]!.Value, WheelArches = Arches() },
            Openings =
            [
                Door("sliding door", sideDoorRight ? Face.Right : Face.Left, this["sideFrom"]!.Value, this["sideWidth"]!.Value, this["sideHeight"]!.Value, "sideWidth"),
                Door("rear doors", Face.Rear, new Measured((width.Value - rear.Value) / 2, null, Known.Inferred), rear, this["rearHeight"]!.Value, "rearWidth"),
            ],
        };
    }

    private Opening Door(string name, Face face, Measured from, Measured width, Measured height, string key) => new()
    {
        Name = name, Face = face, FromMm = from, WidthMm = width, SillMm = 0, HeightMm = height, Passable = true,
        Known = IsTaped(key) ? Known.Measured : Known.Inferred,
    };

    private IReadOnlyList<WheelArch> Arches()
    {
        if (this["archFrom"] is not { } from || this["archLength"] is not { } length || this["archHeight"] is not { } height || this["archWidth"] is not { } width) return [];
        return [.. new[] { Direction.Left, Direction.Right }.Select(side => new WheelArch { Side = side, FromXMm = from.Value, ToXMm = from.Value + length.Value, WidthMm = width.Value, HeightMm = height.Value })];
    }
}
