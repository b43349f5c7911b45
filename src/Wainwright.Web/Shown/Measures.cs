using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Web.Shown;

/// <summary>Units on the screen. The job is always in mm, kg, N.</summary>
public enum Measures
{
    /// <summary>Millimetres, kilograms.</summary>
    Metric,

    /// <summary>Inches, pounds.</summary>
    Us,
}

/// <summary>Figures as this browser's person reads them.</summary>
public static class Figures
{
    // exact by definition or rounded from it: NIST Special Publication 811 (2008), appendix B (from memory)
    private const double KgPerLb = 0.45359237, NewtonPerLbf = 4.4482216152605, LitrePerGallon = 3.785411784, BarPerPsi = 0.0689475729, NmPerLbfFt = 1.3558179483314;

    /// <summary>A length: <c>812 mm</c> or <c>31 15/16 in</c>.</summary>
    public static string Length(this Measures m, double mm) => m == Measures.Us ? Tape.Inches(mm) : $"{Number(mm)} mm";

    /// <summary>A length without its unit, for rows of three.</summary>
    public static string Bare(this Measures m, double mm) => m == Measures.Us ? Tape.Inches(mm)[..^3] : Number(mm, 0);

    /// <summary>The unit of <see cref="Bare"/>.</summary>
    public static string LengthUnit(this Measures m) => m == Measures.Us ? "in" : "mm";

    /// <summary>A mass: <c>2.9 kg</c> or <c>6.4 lb</c>.</summary>
    public static string Mass(this Measures m, double kg) => m == Measures.Us ? $"{Number(kg / KgPerLb)} lb" : $"{Number(kg, 2)} kg";

    /// <summary>Three lengths: <c>800 × 560 × 428 mm</c>.</summary>
    public static string Size(this Measures m, Place p) => $"{m.Bare(p.XMm)} × {m.Bare(p.YMm)} × {m.Bare(p.ZMm)} {m.LengthUnit()}";

    /// <summary>A quantity with its doubt, where there is one.</summary>
    public static string Of(this Measures m, Measured? value, Func<Measures, double, string> unit) =>
        value is not { } v ? "" : v.PlusMinus is { } doubt and > 0 ? $"{unit(m, v.Value)} ± {unit(m, doubt)}" : unit(m, v.Value);

    /// <summary>A reading in its own unit, or its US one.</summary>
    public static string Reading(this Measures m, Reading reading)
    {
        var (factor, offset, unit) = m == Measures.Us ? Us(reading.Quantity) : (1, 0, reading.Unit);
        var value = Number(reading.Value.Value * factor + offset, 3);
        var doubt = reading.Value.PlusMinus is { } d and > 0 ? $" ± {Number(d * factor, 3)}" : "";
        return $"{(reading.AtLeast ? "≥ " : "")}{value}{doubt} {unit}";
    }

    /// <summary>A force: <c>150 N</c> or <c>34 lbf</c>.</summary>
    public static string Force(this Measures m, double newton) => m == Measures.Us ? $"{Number(newton / NewtonPerLbf)} lbf" : $"{Number(newton)} N";

    /// <summary>The unit of a force.</summary>
    public static string ForceUnit(this Measures m) => m == Measures.Us ? "lbf" : "N";

    /// <summary>The unit of a mass.</summary>
    public static string MassUnit(this Measures m) => m == Measures.Us ? "lb" : "kg";

    /// <summary>A force in the unit of <see cref="ForceUnit"/>.</summary>
    public static double Forces(this Measures m, double newton) => m == Measures.Us ? newton / NewtonPerLbf : newton;

    /// <summary>Newtons of a force in the unit of <see cref="ForceUnit"/>.</summary>
    public static double Newton(this Measures m, double force) => m == Measures.Us ? force * NewtonPerLbf : force;

    /// <summary>A number as written in the trade, no group marks, at most so many decimals.</summary>
    public static string Number(double value, int decimals = 1) => Math.Round(value, decimals).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);

    /// <summary>Kilograms of a typed mass; <see langword="null"/> when it cannot be read.</summary>
    public static double? Kg(string? text, Measures bare)
    {
        var typed = (text ?? "").Trim().ToLowerInvariant().Replace(',', '.');
        var (number, factor) = typed switch
        {
            _ when typed.EndsWith("kg", StringComparison.Ordinal) => (typed[..^2], 1d),
            _ when typed.EndsWith("lbs", StringComparison.Ordinal) => (typed[..^3], KgPerLb),
            _ when typed.EndsWith("lb", StringComparison.Ordinal) => (typed[..^2], KgPerLb),
            _ when typed.EndsWith('g') => (typed[..^1], 0.001),
            _ => (typed, bare == Measures.Us ? KgPerLb : 1),
        };
        return double.TryParse(number, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var value) ? value * factor : null;
    }

    /// <summary>Millimetres of a typed length; <see langword="null"/> when it cannot be read.</summary>
    public static double? Mm(string? text, Measures bare) => Tape.Mm(text, bare == Measures.Us ? TapeUnit.Inch : TapeUnit.Millimetre);

    private static (double Factor, double Offset, string Unit) Us(Quantity quantity) => quantity switch
    {
        Quantity.Temperature => (1.8, 32, "°F"),
        Quantity.Length => (1 / 25.4, 0, "in"),
        Quantity.Mass => (1 / KgPerLb, 0, "lb"),
        Quantity.Force => (1 / NewtonPerLbf, 0, "lbf"),
        Quantity.Torque => (1 / NmPerLbfFt, 0, "lbf ft"),
        Quantity.Pressure => (1 / BarPerPsi, 0, "psi"),
        Quantity.Volume => (1 / LitrePerGallon, 0, "US gal"),
        _ => (1, 0, Units.Of(quantity)),
    };
}
