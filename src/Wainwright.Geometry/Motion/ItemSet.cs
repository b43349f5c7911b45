using System.Collections;
using System.Numerics;

namespace Wainwright.Geometry;

/// <summary>A set of the numbers 0 to n−1, one bit each: the things that are already out, a wall, a way.</summary>
public sealed class ItemSet : IEnumerable<int>, IEquatable<ItemSet>
{
    private readonly ulong[] words;

    /// <summary>An empty set for the numbers below <paramref name="size"/>.</summary>
    public ItemSet(int size)
    {
        Size = size;
        words = new ulong[(size + 63) / 64];
    }

    private ItemSet(int size, ulong[] words) => (Size, this.words) = (size, words);

    /// <summary>Numbers below this may be in it.</summary>
    public int Size { get; }

    /// <summary>How many are in it.</summary>
    public int Count => words.Sum(BitOperations.PopCount);

    /// <summary>Whether none is in it.</summary>
    public bool IsEmpty => Array.TrueForAll(words, w => w == 0);

    /// <summary>A set of the numbers given.</summary>
    public static ItemSet Of(int size, params IEnumerable<int> items)
    {
        var set = new ItemSet(size);
        foreach (var item in items) set.Add(item);
        return set;
    }

    /// <summary>All numbers below <paramref name="size"/>.</summary>
    public static ItemSet All(int size) => Of(size, Enumerable.Range(0, size));

    /// <summary>Whether the number is in it.</summary>
    public bool Has(int item) => (words[item >> 6] >> (item & 63) & 1) != 0;

    /// <summary>Puts a number in.</summary>
    public void Add(int item) => words[item >> 6] |= 1UL << (item & 63);

    /// <summary>Takes a number out.</summary>
    public void Remove(int item) => words[item >> 6] &= ~(1UL << (item & 63));

    /// <summary>Puts all numbers of another set in.</summary>
    public void AddAll(ItemSet other)
    {
        for (var i = 0; i < words.Length; i++) words[i] |= other.words[i];
    }

    /// <summary>Takes all numbers of another set out.</summary>
    public void RemoveAll(ItemSet other)
    {
        for (var i = 0; i < words.Length; i++) words[i] &= ~other.words[i];
    }

    /// <summary>Takes all numbers out that are not in another set.</summary>
    public void KeepOnly(ItemSet other)
    {
        for (var i = 0; i < words.Length; i++) words[i] &= other.words[i];
    }

    /// <summary>Whether every number of this set is in the other.</summary>
    public bool IsWithin(ItemSet other)
    {
        for (var i = 0; i < words.Length; i++)
            if ((words[i] & ~other.words[i]) != 0) return false;
        return true;
    }

    /// <summary>Whether the two have a number in common.</summary>
    public bool Meets(ItemSet other)
    {
        for (var i = 0; i < words.Length; i++)
            if ((words[i] & other.words[i]) != 0) return true;
        return false;
    }

    /// <summary>A set of its own with the same numbers.</summary>
    public ItemSet Copy() => new(Size, [.. words]);

    /// <summary>A copy and a further number.</summary>
    public ItemSet With(int item)
    {
        var copy = Copy();
        copy.Add(item);
        return copy;
    }

    /// <summary>A copy without a number.</summary>
    public ItemSet Without(int item)
    {
        var copy = Copy();
        copy.Remove(item);
        return copy;
    }

    /// <summary>A copy without the numbers of another set.</summary>
    public ItemSet Without(ItemSet other)
    {
        var copy = Copy();
        copy.RemoveAll(other);
        return copy;
    }

    /// <inheritdoc/>
    public IEnumerator<int> GetEnumerator()
    {
        for (var i = 0; i < words.Length; i++)
            for (var rest = words[i]; rest != 0; rest &= rest - 1)
                yield return (i << 6) + BitOperations.TrailingZeroCount(rest);
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(ItemSet? other) => other is not null && Size == other.Size && words.AsSpan().SequenceEqual(other.words);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ItemSet);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var word in words) hash.Add(word);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join(' ', this);
}
