using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>A part in the making, on one line: what was typed, what it gives, and what is wrong where.</summary>
public sealed class TypedPart
{
    /// <summary>Its id.</summary>
    public string Id { get; set; } = "";

    /// <summary>Its name.</summary>
    public string Name { get; set; } = "";

    /// <summary>What it belongs to; stays from one part to the next.</summary>
    public PartSystem System { get; set; }

    /// <summary>Length x width x height.</summary>
    public string Size { get; set; } = "";

    /// <summary>Place along the van.</summary>
    public string Along { get; set; } = "";

    /// <summary>Place across the van.</summary>
    public string Across { get; set; } = "";

    /// <summary>Height.</summary>
    public string Up { get; set; } = "";

    /// <summary>Mass.</summary>
    public string Mass { get; set; } = "";

    /// <summary>What is wrong, by field.</summary>
    public IReadOnlyDictionary<string, string> Faults { get; private set; } = new Dictionary<string, string>();

    /// <summary>The part as typed so far; <see langword="null"/> while something is wrong.</summary>
    public Part? Read(Job job, Measures bare)
    {
        var faults = new Dictionary<string, string>();
        void Wrong(string field, string? fault)
        {
            if (fault is not null) faults[field] = Words.Capital(fault) + ".";
        }

        if (!JobRules.IsGoodId(Id)) Wrong("id", "an id is short, without slash");
        else if (job.Parts.Any(p => p.Id.Text == Id)) Wrong("id", $"{Id} is there already");
        if (string.IsNullOrWhiteSpace(Name)) Wrong("name", "a part needs a name");

        var (size, sizeFault) = TypedSize.Of(Size, bare);
        Wrong("size", sizeFault);
        var (x, xFault) = TypedSpot.Of(Axis.X, Along, size?.XMm, job, bare);
        var (y, yFault) = TypedSpot.Of(Axis.Y, Across, size?.YMm, job, bare);
        var (z, zFault) = TypedSpot.Of(Axis.Z, Up, size?.ZMm, job, bare);
        Wrong("along", xFault);
        Wrong("across", yFault);
        Wrong("up", zFault);
        if (faults.Count == 0 && size is not null != (x ?? y ?? z) is not null) Wrong(size is null ? "size" : "along", "size and place belong together; leave both out until the tape gets there");
        if (faults.Count == 0 && size is not null)
        {
            // in all three directions: a part of which only the height is known has no place yet
            if (x is null) Wrong("along", $"type {TypedSpot.Hint(Axis.X, bare)}");
            if (y is null) Wrong("across", $"type {TypedSpot.Hint(Axis.Y, bare)}");
            if (z is null) Wrong("up", $"type {TypedSpot.Hint(Axis.Z, bare)}");
        }
        var kg = string.IsNullOrWhiteSpace(Mass) ? null : Figures.Kg(Mass, bare);
        if (kg is null && !string.IsNullOrWhiteSpace(Mass)) Wrong("mass", $"“{Mass}” is not a mass");

        Faults = faults;
        if (faults.Count > 0) return null;
        var on = TypedSpot.RestsOn(Up, job);
        return new()
        {
            Id = new(Id), Name = Name.Trim(), System = System, Known = size is null ? Known.Seen : Known.Measured,
            Solids = size is { } s ? [new BoxSolid { At = new(x!.Value, y!.Value, z!.Value), Size = s }] : [],
            MassKg = kg is { } mass ? new Measured(mass) : null,
            StandsOn = on is { } below ? [below] : [],
        };
    }

    /// <summary>What the rules say against it, put to the field it most likely comes from.</summary>
    public void Refuse(IReadOnlyList<Issue> issues)
    {
        var faults = new Dictionary<string, string>(Faults);
        foreach (var issue in issues)
        {
            var field = issue switch
            {
                _ when issue.Where.Contains("massKg", StringComparison.Ordinal) => "mass",
                _ when issue.Where.Contains(".size", StringComparison.Ordinal) => "size",
                _ when issue.Rule.Contains("beyond", StringComparison.Ordinal) && (issue.Rule.Contains("front end", StringComparison.Ordinal) || issue.Rule.Contains("rear doors", StringComparison.Ordinal)) => "along",
                _ when issue.Rule.Contains("beyond", StringComparison.Ordinal) && (issue.Rule.Contains("left skin", StringComparison.Ordinal) || issue.Rule.Contains("right skin", StringComparison.Ordinal)) => "across",
                _ when issue.Rule.Contains("beyond", StringComparison.Ordinal) => "up",
                _ when issue.Where.Contains(".id", StringComparison.Ordinal) => "id",
                _ => "name",
            };
            faults[field] = $"{Words.Capital(issue.Rule)}; {issue.Mend}.";
        }
        Faults = faults;
    }

    /// <summary>Ready for the next one: the system stays, the rest is empty.</summary>
    public TypedPart Next(string id) => new() { Id = id, System = System };
}
