using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

/// <summary>Puzzles written as text: <c>"t1: a | b c; a7; b2; c3"</c> is t at price 1, after a or after b and c.</summary>
internal sealed class Ways
{
    private readonly List<string> names;

    public Ways(string text)
    {
        var lines = text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(':', StringSplitOptions.TrimEntries)).ToList();
        names = [.. lines.Select(line => line[0].TrimEnd("0123456789".ToCharArray()))];
        var costs = lines.Select((line, i) => long.Parse(line[0][names[i].Length..], System.Globalization.CultureInfo.InvariantCulture)).ToList();
        ItemSet Way(string way) => ItemSet.Of(names.Count, way.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Item));
        Lists = [.. lines.Select(line => (IReadOnlyList<ItemSet>)[.. (line.Length > 1 ? line[1] : "").Split('|').Select(Way)])];
        Puzzle = Puzzle.OfWays(costs, Lists);
    }

    public Puzzle Puzzle { get; }

    public IReadOnlyList<IReadOnlyList<ItemSet>> Lists { get; }

    public int Item(string name) => names.IndexOf(name);

    public Outcome Plan(string target) => new Planner(Puzzle).Plan([Item(target)], null, SearchBudget.Usual, CancellationToken.None);

    public string Named(IEnumerable<int> items) => string.Join(' ', items.Select(i => names[i]));
}
