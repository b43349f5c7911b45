namespace Wainwright.Methods.Retention;

/// <summary>The head of a screw or nail drawn through the board it holds.</summary>
/// <remarks>
/// US working value, round heads, pounds: 690·π·DH·G²·t up to t = 2.5·DH, then 1725·π·DH²·G². European characteristic value:
/// 70e-6·ρ²·dh² with ρ in kg/m³ and dh in mm. Thin ceiling and wall boards let go here before the thread does.
/// </remarks>
public static class HeadPullThrough
{
    /// <summary>Head pull-through.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2018, clause 12.2.5 (from memory); EN 1995-1-1, 8.3.2(6), as a public timber notebook has it",
        Assumes: ["a flat-bottomed head or a washer of that diameter", "the board is not weakened by a deep countersink"],
        Caution: "A countersunk head that was driven flush has less board under it than the board is thick.",
        How: Provenance.FromMemory);

    /// <summary>Working value [N].</summary>
    /// <param name="specificGravity">Oven-dry specific gravity of the held board [-], above 0.</param>
    /// <param name="headMm">Diameter of head or washer [mm], above 0.</param>
    /// <param name="boardMm">Board under the head [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0.</exception>
    public static double AllowableN(double specificGravity, double headMm, double boardMm)
    {
        double head = Must.BePositive(headMm) / UsUnits.MmPerIn, board = Must.BePositive(boardMm) / UsUnits.MmPerIn;
        return 690 * Math.PI * head * Math.Pow(Must.BePositive(specificGravity), 2) * Math.Min(board, 2.5 * head) * UsUnits.NPerLb;
    }

    /// <summary>Characteristic value after Eurocode 5 [N].</summary>
    /// <param name="characteristicKgPerM3">Characteristic density of the held board [kg/m³], above 0.</param>
    /// <param name="headMm">Diameter of head or washer [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0.</exception>
    public static double CharacteristicN(double characteristicKgPerM3, double headMm) =>
        70e-6 * Math.Pow(Must.BePositive(characteristicKgPerM3), 2) * Math.Pow(Must.BePositive(headMm), 2);
}
