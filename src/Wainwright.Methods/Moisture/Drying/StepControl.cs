namespace Wainwright.Methods.Moisture.Drying;

/// <summary>How long the steps of time may be.</summary>
/// <param name="Tolerance">Error of one step that is let pass, against the water a slice holds at saturation [-], above 0.</param>
/// <param name="LongestDays">Longest step [d], above 0.</param>
/// <param name="FixedDays">All steps of this length instead [d]; null to let the error choose.</param>
public sealed record StepControl(double Tolerance = 0.01, double LongestDays = 10, double? FixedDays = null);
