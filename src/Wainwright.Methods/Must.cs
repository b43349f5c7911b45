using System.Globalization;
using System.Runtime.CompilerServices;

namespace Wainwright.Methods;

/// <summary>Refuses nonsense at the door of a method: names the value, the rule and what was given.</summary>
static class Must
{
    public static double BeFinite(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw Refuse(value, name, "must be a finite number");

    public static double BePositive(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value > 0 ? value : throw Refuse(value, name, "must be above 0");

    public static double NotBeNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= 0 ? value : throw Refuse(value, name, "must be 0 or more");

    public static double BeWithin(double value, double low, double high, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= low && value <= high
            ? value
            : throw Refuse(value, name, string.Create(CultureInfo.InvariantCulture, $"must be {low} to {high}"));

    static ArgumentOutOfRangeException Refuse(double value, string? name, string rule) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"{name}: {rule}, is {value}"));
}
