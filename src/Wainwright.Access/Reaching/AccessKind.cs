namespace Wainwright.Access;

/// <summary>What is wanted of a part, each more than the one before.</summary>
public enum AccessKind
{
    /// <summary>A person looks at it straight, without a mirror.</summary>
    See,

    /// <summary>A person gets a hand to it.</summary>
    Reach,

    /// <summary>It is taken out of the van.</summary>
    Remove,
}
