namespace Wainwright.Paper;

/// <summary>Signal words of ANSI Z535.6 and ISO 3864-2, worst first; each goes with its own shape.</summary>
public enum Signal
{
    /// <summary>Will kill or maim if not avoided: red, triangle.</summary>
    Danger,

    /// <summary>Could kill or maim: orange, triangle.</summary>
    Warning,

    /// <summary>Could hurt: yellow, diamond.</summary>
    Caution,

    /// <summary>Not about injury: blue, circle.</summary>
    Notice,

    /// <summary>Nobody has judged it, or it cannot be told: dashed square with a question mark.</summary>
    Unknown,
}
