namespace Wainwright.Methods.Reach;

/// <summary>Room for spanner and socket round a metric hexagon head.</summary>
/// <remarks>
/// The table gives clearances a, b, c, but the figure that tells which spanner each letter is for was not seen. Until it is, the
/// largest of the three is what any spanner needs from the axis to the nearest wall.
/// </remarks>
public static class SpannerRoom
{
    /// <summary>Head clearances.</summary>
    public static readonly Basis Basis = new(
        Source: "roymech.co.uk, Useful Tables, Screws, head clearances (heads to BS 3692)",
        Assumes: ["conservative guidance: less may do when the tool is known", "a, b and c serve open, ring and socket tools in an order that was not seen"],
        Caution: "The largest of a, b, c is our reading of a table without its figure. The sizes across flats printed for M10 and M12 are the old ones.",
        How: Provenance.Read);

    /// <param name="PitchMm">Least distance of two heads [mm].</param>
    /// <param name="AMm">Clearance a [mm].</param>
    /// <param name="BMm">Clearance b [mm].</param>
    /// <param name="CMm">Clearance c [mm].</param>
    /// <param name="SocketMm">Room round the axis for a socket, G [mm]; null where the table is empty.</param>
    /// <param name="SocketHeightMm">Height above the seat of a socket with its square drive, H [mm].</param>
    public readonly record struct Row(double PitchMm, double AMm, double BMm, double CMm, double? SocketMm, double SocketHeightMm)
    {
        /// <summary>From the axis to the nearest wall for any spanner [mm].</summary>
        public double AnySpannerMm => Math.Max(AMm, Math.Max(BMm, CMm));
    }

    static readonly Dictionary<int, Row> Table = new()
    {
        [3] = new(14, 10, 8, 10, null, 14),
        [4] = new(17, 10, 8, 12, 14, 22),
        [5] = new(20, 10, 8, 12, 14, 22),
        [6] = new(24, 14, 10, 15, 17, 26),
        [8] = new(30, 18, 12, 18, 22, 26),
        [10] = new(37, 28, 14, 21, 27, 27),
        [12] = new(42, 30, 16, 22, 30, 29),
        [16] = new(50, 30, 20, 26, 38, 42),
        [20] = new(60, 32, 22, 32, 46, 47),
    };

    /// <summary>The row of a thread; null for one that is not tabled.</summary>
    /// <param name="thread">Nominal diameter [mm]: 8 for M8.</param>
    public static Row? For(int thread) => Table.TryGetValue(thread, out var row) ? row : null;

    /// <summary>Whether heads of one thread in a row leave room for a spanner; null for a thread that is not tabled.</summary>
    /// <param name="thread">Nominal diameter [mm].</param>
    /// <param name="apartMm">From axis to axis [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance that is not above 0.</exception>
    public static bool? FreeInARow(int thread, double apartMm)
    {
        Must.BePositive(apartMm);
        return For(thread) is { } row ? apartMm >= row.PitchMm : null;
    }

    /// <summary>Whether any spanner goes on beside a wall; null for a thread that is not tabled. No: ask for a ring or a socket.</summary>
    /// <param name="thread">Nominal diameter [mm].</param>
    /// <param name="toWallMm">From the axis to the wall [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance that is not above 0.</exception>
    public static bool? AnySpannerBesideWall(int thread, double toWallMm)
    {
        Must.BePositive(toWallMm);
        return For(thread) is { } row ? toWallMm >= row.AnySpannerMm : null;
    }
}
