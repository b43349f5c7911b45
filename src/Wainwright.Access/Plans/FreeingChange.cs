using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What is changed so that there is a way.</summary>
public enum ChangeKind
{
    /// <summary>An opening is wider or higher.</summary>
    Opening,

    /// <summary>There is more clear ground outside.</summary>
    Ground,

    /// <summary>A part is smaller.</summary>
    Smaller,

    /// <summary>A part that was to stay comes out.</summary>
    LetOut,

    /// <summary>A joint is undone from another side.</summary>
    JointSide,

    /// <summary>A joint can be got at wherever it is.</summary>
    JointFree,

    /// <summary>A part comes apart into its panels.</summary>
    ComesApart,
}

/// <summary>A single change with which there would be a way; tried, not guessed.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="Words">The same in words.</param>
/// <param name="Mm">By how much; absent where it is no matter of size.</param>
/// <param name="Opening">The opening.</param>
/// <param name="Part">The part.</param>
/// <param name="Joint">The joint.</param>
/// <param name="IsLeast">Whether a millimetre less was tried and does not do; false when trials or time ran out before.</param>
public sealed record FreeingChange(ChangeKind Kind, string Words, int? Mm, string? Opening = null, PartId? Part = null, JointId? Joint = null, bool IsLeast = true);
