namespace Wainwright.Web;

/// <summary>What the drawings show: a day of the course.</summary>
/// <param name="Percent">Moisture of each piece [%].</param>
/// <param name="Says">The day in words.</param>
public sealed record DampShown(IReadOnlyList<double> Percent, string Says);
