using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Something that is done once in a plan, or counts as done.</summary>
internal abstract record Item
{
    /// <summary>Minutes now, minutes to bring it back, and minutes of expected damage.</summary>
    public Price Price { get; set; }

    /// <summary>Where the minutes come from.</summary>
    public string Origin { get; set; } = "";

    /// <summary>Items that must be done before in every plan.</summary>
    public HashSet<int> Needs { get; } = [];

    /// <summary>Of each of these groups one item must be done before.</summary>
    public List<int[]> AnyOf { get; } = [];
}

/// <summary>What an item costs [min].</summary>
internal readonly record struct Price(double Out, double Back, double Damage)
{
    // whole tenths of a second, so that the covering problem is solved in whole numbers
    public long Tenths => (long)Math.Round((Out + Back + Damage) * TenthsOfASecond.InAMinute);
}

/// <summary>Making a medium safe, paid once.</summary>
internal sealed record MakeSafe(Medium Medium, IsolationStep? AlreadyDone) : Item;

/// <summary>Undoing a joint.</summary>
internal sealed record Undo(Joint Joint) : Item;

/// <summary>Undoing a line's end that no recorded joint stands for.</summary>
internal sealed record Disconnect(Line Line, LineEnd End, bool IsFrom) : Item;

/// <summary>Carrying out a load: a part, and what leaves with it.</summary>
internal sealed record TakeOut(Part Part, IReadOnlyList<Part> With) : Item
{
    public IEnumerable<Part> Load => With.Prepend(Part);

    public int People { get; set; } = 1;
}

/// <summary>Taking a piece off a part and carrying it out.</summary>
internal sealed record TakePiece(Part Part, string Name, IReadOnlyList<Solid> Solids) : Item;

/// <summary>A part, or one piece of it, is out, whichever way it went.</summary>
internal sealed record IsOut(Part Part, string? Piece) : Item;

/// <summary>A part is spoiled by how it is got out; paid once however many joints spoil it.</summary>
internal sealed record Spoiled(Part Part) : Item;

/// <summary>A hand is got to a part.</summary>
internal sealed record HandOn(Part Part) : Item;

/// <summary>A part is looked at.</summary>
internal sealed record EyeOn(Part Part) : Item;
