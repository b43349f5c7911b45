namespace Wainwright.Web;

/// <summary>What the drawings show: a day of the course.</summary>
/// <param name="Percent">Moisture of each piece [%].</param>
/// <param name="InDoubt">Whether each piece is as well wet as dry.</param>
/// <param name="Says">The day in words.</param>
public sealed record DampShown(IReadOnlyList<double> Percent, IReadOnlyList<bool> InDoubt, string Says);
