namespace Wainwright.Methods;

/// <summary>How a published figure came to be known here. A reader may trust the first more than the last.</summary>
public enum Provenance
{
    /// <summary>Nobody has said; treat as from memory.</summary>
    NotStated,

    /// <summary>The document itself was read.</summary>
    Read,

    /// <summary>Seen in another text that quotes the document; the document itself was not opened.</summary>
    Quoted,

    /// <summary>The document is named but the figure comes from memory: verify before it decides anything.</summary>
    FromMemory,

    /// <summary>A habit of the trade: common practice, no source.</summary>
    CommonPractice,

    /// <summary>A rule or derivation of this project.</summary>
    OwnRule,
}
