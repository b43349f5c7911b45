namespace Wainwright.Methods.Retention;

/// <summary>Low, likely and high of one quantity: what a calculation may count on, expects, and cannot rule out.</summary>
/// <param name="Low">Low, in the unit of what carries it.</param>
/// <param name="Likely">Likely, not below the low.</param>
/// <param name="High">High, not below the likely.</param>
public readonly record struct Spread(double Low, double Likely, double High)
{
    /// <summary>One value without doubt.</summary>
    public static Spread Exactly(double value) => new(value, value, value);

    /// <summary>Both worst, both likely, both best: for quantities that cannot be below 0.</summary>
    public static Spread operator *(Spread a, Spread b) => new(a.Low * b.Low, a.Likely * b.Likely, a.High * b.High);

    /// <summary>Each of the three times a factor of 0 or more.</summary>
    public static Spread operator *(Spread a, double factor) => new(a.Low * Must.NotBeNegative(factor), a.Likely * factor, a.High * factor);

    /// <summary>The weaker of two limits, each with its own doubt.</summary>
    public static Spread Least(Spread a, Spread b) => new(Math.Min(a.Low, b.Low), Math.Min(a.Likely, b.Likely), Math.Min(a.High, b.High));
}
