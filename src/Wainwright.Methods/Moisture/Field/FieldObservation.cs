namespace Wainwright.Methods.Moisture.Field;

/// <summary>A reading brought to a cell.</summary>
/// <param name="Cell">The cell, by its place in the net.</param>
/// <param name="Percent">Moisture [%]; where it is a bound, the limit.</param>
/// <param name="SigmaPoints">Standard deviation of the reading against the moisture of its cell [points], above 0.</param>
/// <param name="Bound">Whether the figure is a value or a limit of the meter.</param>
public readonly record struct FieldObservation(int Cell, double Percent, double SigmaPoints, MeterReading.Bound Bound = MeterReading.Bound.About);
