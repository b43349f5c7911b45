namespace Wainwright.Methods.Combustion;

/// <summary>When a carbon monoxide alarm must be silent and when it must sound, by standard.</summary>
public static class AlarmSetPoints
{
    /// <summary>Set points of two standards, as quoted.</summary>
    public static readonly Basis Basis = new(
        Source: "UL 2034 and EN 50291-1 set points (the gas points of EN 50291-2 are the same, from memory)",
        Assumes: ["a new alarm, tested in its chamber"],
        Caution: "An alarm is the last line, not a licence to run a faulty burner. Check date, button and place.",
        How: Provenance.Quoted);

    /// <summary>One point of a standard.</summary>
    /// <param name="Standard">UL 2034 or EN 50291.</param>
    /// <param name="Ppm">Concentration held [ppm].</param>
    /// <param name="SilentForMin">It must not sound before this time [min].</param>
    /// <param name="SoundsByMin">It must sound by this time [min]; null when it need not.</param>
    public sealed record Point(string Standard, double Ppm, double SilentForMin, double? SoundsByMin);

    /// <summary>Every point, by standard and concentration.</summary>
    public static readonly IReadOnlyList<Point> All =
    [
        new("UL 2034", 30, 30 * 24 * 60, null),
        new("UL 2034", 70, 60, 240),
        new("UL 2034", 150, 10, 50),
        new("UL 2034", 400, 4, 15),
        new("EN 50291", 30, 120, null),
        new("EN 50291", 50, 60, 90),
        new("EN 50291", 100, 10, 40),
        new("EN 50291", 300, 0, 3),
    ];
}
