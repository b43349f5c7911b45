using Wainwright.Fitout;

namespace Wainwright.Survey;

/// <summary>
/// Doubt of a measurement of which nobody said how good it is: common practice, no source. A stated tolerance always wins.
/// </summary>
internal static class Doubt
{
    private const double TapeMm = 5, CalliperMm = 1, MassFraction = 0.05, ScaleFraction = 0.01, MeterFraction = 0.02;

    public static Span Tape(Measured length, Draft draft) => Or(length, TapeMm, draft, "5 mm on a length by tape");

    public static Span Calliper(Measured length, Draft draft) => Or(length, CalliperMm, draft, "1 mm on a bore or hole");

    public static Span Scale(Measured load, Draft draft) => Or(load, ScaleFraction * load.Value, draft, "1 % on a weighed load");

    public static Span Meter(Measured value, Draft draft) => Or(value, MeterFraction * Math.Abs(value.Value), draft, "2 % on an electrical reading");

    public static Span Mass(Measured mass) => Span.Of(mass.Value, mass.PlusMinus ?? MassFraction * mass.Value);

    /// <summary>Doubt of a placed solid [mm]; a tape's when nobody said.</summary>
    public static double PlaceMm(Part part) => part.Solids.Count == 0 ? TapeMm : part.Solids.Max(s => s.PlusMinusMm ?? TapeMm);

    private static Span Or(Measured value, double doubt, Draft draft, string said)
    {
        if (value.PlusMinus is { } stated) return Span.Of(value.Value, stated);
        draft.Assume($"where no tolerance was recorded: {said} (common practice, no source)");
        return Span.Of(value.Value, doubt);
    }
}
