namespace Wainwright.Fitout;

/// <summary>How much an issue weighs.</summary>
public enum Weight
{
    /// <summary>The job cannot be used until it is mended.</summary>
    Error,

    /// <summary>The van may really be so; somebody should look.</summary>
    Doubt,
}

/// <summary>Something wrong with a job file or an edit: where, what rule, how to mend it.</summary>
/// <param name="Where">The place, for example <c>parts[3] (A10).massKg</c>.</param>
/// <param name="Rule">The rule and what was found instead.</param>
/// <param name="Mend">What to do.</param>
/// <param name="Weight">How much it weighs.</param>
public sealed record Issue(string Where, string Rule, string Mend, Weight Weight = Weight.Error)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Where}: {Rule}; {Mend}";
}
