using System.Globalization;

namespace Wainwright.Web.Shown;

/// <summary>Labour as the workshop says it.</summary>
public static class Clock
{
    /// <summary>Minutes with a tenth below ten, hours and minutes from an hour on.</summary>
    public static string Of(double minutes) => minutes switch
    {
        < 9.95 => string.Create(CultureInfo.InvariantCulture, $"{minutes:0.#} min"),
        < 59.5 => string.Create(CultureInfo.InvariantCulture, $"{minutes:0} min"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{(int)Math.Round(minutes) / 60} h {(int)Math.Round(minutes) % 60:00} min"),
    };
}
