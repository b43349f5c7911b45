namespace Wainwright.Fitout;

/// <summary>The values a number in the job file may take. The file's reader and its published schema both obey it.</summary>
/// <param name="least">Smallest value allowed, in the unit that the property's name ends in.</param>
/// <param name="most">Largest value allowed, in the same unit.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class LimitsAttribute(double least, double most) : Attribute
{
    /// <summary>Smallest value allowed.</summary>
    public double Least { get; } = least;

    /// <summary>Largest value allowed.</summary>
    public double Most { get; } = most;
}
