using System.Text.Json.Serialization;

namespace Wainwright.Fitout;

/// <summary>What a part belongs to.</summary>
public enum PartSystem
{
    /// <summary>Cabinets, seats boxes, beds, tables, racking, partitions.</summary>
    Furniture,

    /// <summary>Ceiling and wall lining, battens.</summary>
    Lining,

    /// <summary>Insulation.</summary>
    Insulation,

    /// <summary>Subfloor, floor covering.</summary>
    Floor,

    /// <summary>Windows, roof vents, hatches.</summary>
    Openings,

    /// <summary>Fresh water.</summary>
    Water,

    /// <summary>Waste water, toilet, shower tray.</summary>
    Waste,

    /// <summary>Gas.</summary>
    Gas,

    /// <summary>Extra-low-voltage DC.</summary>
    Dc,

    /// <summary>Mains-voltage AC.</summary>
    Mains,

    /// <summary>Fuel heating and its ducts.</summary>
    Heating,

    /// <summary>Appliances that belong to no single service: fridge, compressor.</summary>
    Appliance,

    /// <summary>Alarms, extinguishers, first aid.</summary>
    Safety,

    /// <summary>Base vehicle: bulkhead, step, awning, racks outside.</summary>
    Vehicle,

    /// <summary>What lies about or belongs to the owner.</summary>
    Loose,
}

/// <summary>What becomes of a part.</summary>
public enum Fate
{
    /// <summary>Not decided yet.</summary>
    Undecided,

    /// <summary>To be saved and used again.</summary>
    Keep,

    /// <summary>May be spoiled getting it out.</summary>
    Scrap,
}

/// <summary>Anything fitted: furniture, panel, floor sheet, appliance, tank, line, device.</summary>
public sealed record Part
{
    /// <summary>Its id, stable for the life of the job.</summary>
    public required PartId Id { get; init; }

    /// <summary>Its name in the workshop.</summary>
    public required string Name { get; init; }

    /// <summary>What it is in one word of the trade, for example <c>upper locker</c>.</summary>
    public string? Kind { get; init; }

    /// <summary>What it belongs to.</summary>
    public required PartSystem System { get; init; }

    /// <summary>How it is known.</summary>
    public required Known Known { get; init; }

    /// <summary>Its solids; none when nobody has measured it yet.</summary>
    public IReadOnlyList<Solid> Solids { get; init; } = [];

    /// <summary>Hangs outside the shell or goes through it.</summary>
    public bool Outside { get; init; }

    /// <summary>Size it bends, rolls or folds to when carried [mm, any axis order]; absent for a stiff part.</summary>
    public Place? FoldsTo { get; init; }

    /// <summary>The pieces it can be taken into on the spot; none when it leaves whole.</summary>
    public IReadOnlyList<Piece> ComesApartInto { get; init; } = [];

    /// <summary>Parts it rests on: they cannot leave before it.</summary>
    public IReadOnlyList<PartId> StandsOn { get; init; } = [];

    /// <summary>The part it leaves with, as one load.</summary>
    public PartId? CarriedOutWith { get; init; }

    /// <summary>Simply lifted out by hand: cushions, boxes, stock.</summary>
    public bool LooseGoods { get; init; }

    /// <summary>Would drop when its last fixing goes: hold it first.</summary>
    public bool Overhead { get; init; }

    /// <summary>Material as bought, outermost first.</summary>
    public IReadOnlyList<Layer> Made { get; init; } = [];

    /// <summary>Mass empty [kg].</summary>
    [Limits(0, 3_000)]
    public Measured? MassKg { get; init; }

    /// <summary>Density, when the mass shall follow from the solids [kg/m³].</summary>
    [Limits(1, 12_000)]
    public Measured? DensityKgPerM3 { get; init; }

    /// <summary>What it holds as found: stock, crockery. Liquids of a tank stand in its device.</summary>
    public IReadOnlyList<Contents> Contents { get; init; } = [];

    /// <summary>Its drawers, doors, flaps, lids and slides.</summary>
    public IReadOnlyList<MovingThing> Moving { get; init; } = [];

    /// <summary>Its open shelves and trays.</summary>
    public IReadOnlyList<OpenShelf> Shelves { get; init; } = [];

    /// <summary>Friction under a part that only stands [-]: the slope it begins to slide at, rise over run; absent when not tried.</summary>
    [Limits(0, 2)]
    public Measured? Friction { get; init; }

    /// <summary>What becomes of it.</summary>
    public Fate Fate { get; init; }

    /// <summary>What a new one costs [money of the job]; absent when not asked.</summary>
    [Limits(0, 1_000_000)]
    public decimal? RenewalCost { get; init; }

    /// <summary>What it asks for in its life.</summary>
    public IReadOnlyList<ServiceNeed> Service { get; init; } = [];

    /// <summary>What it does, where it is more than a panel.</summary>
    public IReadOnlyList<Device> Devices { get; init; } = [];

    /// <summary>
    /// What the workshop usually takes out first and why. A note for people: no plan is made from it.
    /// </summary>
    public IReadOnlyList<UsualOrder> TakeOutFirst { get; init; } = [];

    /// <summary>Who may work on it, where the law or the maker reserves it.</summary>
    public string? ReservedFor { get; init; }

    /// <summary>State as found and anything else.</summary>
    public string? Note { get; init; }

    /// <summary>
    /// Mass empty [kg]: as given, else density times volume; <see langword="null"/> when neither is known.
    /// </summary>
    [JsonIgnore]
    public Measured? EmptyKg => MassKg ?? (DensityKgPerM3 is { } d && Solids.Count > 0
        ? new Measured(d.Value * Solids.Sum(s => s.VolumeMm3()) * 1e-9, d.PlusMinus * Solids.Sum(s => s.VolumeMm3()) * 1e-9)
        : null);

    /// <summary>The smallest box along the vehicle axes that holds every solid; <see langword="null"/> when unmeasured.</summary>
    public (Place Low, Place High)? Bounds()
    {
        if (Solids.Count == 0) return null;
        var all = Solids.Select(s => s.Bounds()).ToList();
        return (new(all.Min(b => b.Low.XMm), all.Min(b => b.Low.YMm), all.Min(b => b.Low.ZMm)),
            new(all.Max(b => b.High.XMm), all.Max(b => b.High.YMm), all.Max(b => b.High.ZMm)));
    }
}

/// <summary>A piece that a part comes apart into.</summary>
public sealed record Piece
{
    /// <summary>What it is, for example <c>left half</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Names of the part's solids that leave with it.</summary>
    public required IReadOnlyList<string> Solids { get; init; }

    /// <summary>Time to free it from the rest of the part [min].</summary>
    [Limits(0, 600)]
    public required double Minutes { get; init; }
}

/// <summary>Something a part holds.</summary>
public sealed record Contents
{
    /// <summary>What.</summary>
    public required string What { get; init; }

    /// <summary>Mass [kg].</summary>
    [Limits(0, 3_000)]
    public required Measured MassKg { get; init; }
}

/// <summary>How close one has to come to serve a part.</summary>
public enum ServiceAccess
{
    /// <summary>Look at it.</summary>
    See,

    /// <summary>Get a hand to it.</summary>
    Reach,

    /// <summary>Take it out.</summary>
    Remove,
}

/// <summary>A recurring need.</summary>
public sealed record ServiceNeed
{
    /// <summary>What is done.</summary>
    public required string What { get; init; }

    /// <summary>Every how many months.</summary>
    [Limits(0.1, 600)]
    public required double EveryMonths { get; init; }

    /// <summary>How close one has to come.</summary>
    public required ServiceAccess Access { get; init; }
}

/// <summary>Why something is usually taken out first.</summary>
public enum OrderReason
{
    /// <summary>It stands in the way.</summary>
    Geometry,

    /// <summary>It is fixed to it.</summary>
    Joint,

    /// <summary>It rests on it.</summary>
    StandsOn,

    /// <summary>Hand or tool does not get to the fixing.</summary>
    Reach,

    /// <summary>It is done so; nothing forces it.</summary>
    Habit,
}

/// <summary>A part that is usually taken out first, and why.</summary>
public sealed record UsualOrder
{
    /// <summary>The part.</summary>
    public required PartId Part { get; init; }

    /// <summary>Why.</summary>
    public required OrderReason Because { get; init; }
}
