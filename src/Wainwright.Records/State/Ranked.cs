namespace Wainwright.Records;

/// <summary>
/// Entries of one list by id and by rank. A rank stays with an entry for life and is kept by the journal when it goes, so undo puts it back
/// where it was and not at the end.
/// </summary>
internal sealed class Ranked
{
    private readonly Dictionary<string, (long Place, string Json)> entries = new(StringComparer.Ordinal);
    private readonly SortedList<long, string> order = [];

    public bool Any => order.Count > 0;

    public long LastPlace => order.Count == 0 ? 0 : order.Keys[^1];

    public bool Holds(long place) => order.ContainsKey(place);

    public (long Place, string Json)? Get(string id) => entries.TryGetValue(id, out var entry) ? entry : null;

    public IEnumerable<(string Id, long Place, string Json)> InOrder() => order.Select(o => (o.Value, o.Key, entries[o.Value].Json));

    /// <exception cref="FormatException">Another entry has that rank, or this one another.</exception>
    public void Put(string id, long place, string json)
    {
        if (place < 1 || (entries.TryGetValue(id, out var old) ? old.Place != place : !order.TryAdd(place, id))) throw new FormatException($"rank {place} of “{id}” does not fit");
        entries[id] = (place, json);
    }

    public void TakeOut(string id)
    {
        if (entries.Remove(id, out var entry)) order.Remove(entry.Place);
    }
}
