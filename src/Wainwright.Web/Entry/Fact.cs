namespace Wainwright.Web.Entry;

/// <summary>One fact of a thing as it stands in a field: what it is called, what is typed there, and the thing with something else typed.</summary>
/// <typeparam name="T">What the fact is of.</typeparam>
/// <param name="Label">What it is called, with the unit it is typed in.</param>
/// <param name="Value">What is typed there now.</param>
/// <param name="With">The thing with another text there, or why that cannot be read.</param>
public sealed record Fact<T>(string Label, string Value, Func<string, Typed<T>> With) where T : class
{
    /// <summary>What to choose from; absent where one types.</summary>
    public IReadOnlyList<(string Value, string Text)>? Options { get; init; }

    /// <summary>What one might type.</summary>
    public string? Placeholder { get; init; }

    /// <summary>What to know before typing.</summary>
    public string? Help { get; init; }

    /// <summary>Whether the thing cannot be without it.</summary>
    public bool Needed { get; init; }

    /// <summary>Whether it takes several lines.</summary>
    public bool Long { get; init; }

    /// <summary>Whether it is ticked or not.</summary>
    public bool Tick { get; init; }

    /// <summary>Whether parts of the job are offered while typing.</summary>
    public bool OffersParts { get; init; }

    /// <summary>What the journal says of a text typed there.</summary>
    public string Said(string text) => Options?.FirstOrDefault(o => o.Value == text).Text ?? (text.Trim().Length == 0 ? "unknown" : text.Trim().ReplaceLineEndings("; "));
}

/// <summary>What typing came to.</summary>
/// <param name="Next">The thing as typed; absent when the text cannot be read.</param>
/// <param name="Fault">Why it cannot be read.</param>
public sealed record Typed<T>(T? Next, string? Fault) where T : class;
