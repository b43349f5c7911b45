namespace Wainwright.Fitout;

/// <summary>How a statement about the van is known. Nothing is a fact without one of these.</summary>
public enum Known
{
    /// <summary>Nobody has looked. The first value on purpose: what is not said is not known.</summary>
    NotInspected,

    /// <summary>The owner or a paper said so; not checked.</summary>
    Told,

    /// <summary>Concluded from other statements.</summary>
    Inferred,

    /// <summary>Seen with one's own eyes.</summary>
    Seen,

    /// <summary>Measured with an instrument.</summary>
    Measured,
}
