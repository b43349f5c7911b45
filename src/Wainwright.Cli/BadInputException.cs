using Wainwright.Fitout;

namespace Wainwright.Cli;

/// <summary>The person at the keyboard can mend this: one line of what, and each fault with its place.</summary>
public sealed class BadInputException(string message, IReadOnlyList<Issue> issues) : Exception(message)
{
    /// <summary>A fault without a place in a file.</summary>
    public BadInputException(string message) : this(message, [])
    {
    }

    /// <summary>The faults, in the order of the file.</summary>
    public IReadOnlyList<Issue> Issues { get; } = issues;
}
