namespace Wainwright.Survey.Damp.Drying;

/// <summary>Moisture of every piece of the net on one day: 5, 50 and 95 of 100 likely courses.</summary>
/// <param name="Day">Days after the newest reading; negative before it [d].</param>
/// <param name="LowPercent">Low end, piece by piece in the order of the net [%].</param>
/// <param name="LikelyPercent">Middle [%].</param>
/// <param name="HighPercent">High end [%].</param>
public sealed record DampFrame(double Day, IReadOnlyList<double> LowPercent, IReadOnlyList<double> LikelyPercent, IReadOnlyList<double> HighPercent);
