namespace Wainwright.Methods.Retention;

/// <summary>Rivet nuts: the thread stands far more than the thin sheet that holds the nut.</summary>
/// <remarks>Proof load of the thread itself, kN: steel M4 6.8, M5 11.5, M6 16.5, M8 25, M10 32; aluminium M4 4.0, M5 6.5, M6 7.8, M8 12.3. Out of 0.8 to 1.5 mm sheet 2 to 8.</remarks>
public static class RivetNut
{
    /// <summary>Threads and sheets.</summary>
    public static readonly Basis Basis = new(
        Source: "thread: a supplier's table after GB/T 17880.6 (stainless-steel-bolts.com); out of sheet: from memory",
        Assumes: ["set tight in a clean hole of the right size"],
        Caution: "Out of the sheet, and spinning in it, govern. A nut that turned once counts as loose. The range is for sheet of 0.8 to 1.5 mm.",
        How: Provenance.FromMemory);

    /// <summary>Proof load of the thread itself [N]; not of the seat in the sheet.</summary>
    /// <param name="sizeMm">4, 5, 6, 8, or 10 (steel only).</param>
    /// <param name="isSteel">Steel; else aluminium.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size that is not tabled.</exception>
    public static double ThreadProofN(double sizeMm, bool isSteel) => (isSteel, sizeMm) switch
    {
        (true, 4) => 6_800,
        (true, 5) => 11_500,
        (true, 6) => 16_500,
        (true, 8) => 25_000,
        (true, 10) => 32_000,
        (false, 4) => 4_000,
        (false, 5) => 6_500,
        (false, 6) => 7_800,
        (false, 8) => 12_300,
        _ => throw new ArgumentOutOfRangeException(nameof(sizeMm), sizeMm, "sizeMm: must be 4, 5, 6, 8, or 10 in steel"),
    };

    /// <summary>Straight out of sheet of 0.8 to 1.5 mm [N].</summary>
    public static Spread OutOfSheetN => new(2_000, 4_000, 8_000);
}
