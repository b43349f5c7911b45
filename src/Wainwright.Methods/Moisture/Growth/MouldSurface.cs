namespace Wainwright.Methods.Moisture.Growth;

/// <summary>How ready a surface is to grow mould: the constants of one class of the mould index.</summary>
/// <param name="Name">Class, with what usually belongs to it.</param>
/// <param name="RateBelow1">k1 below index 1 [-].</param>
/// <param name="RateFrom1">k1 from index 1 [-]; null where it follows from the two times (original model).</param>
/// <param name="A">A of the highest index [-].</param>
/// <param name="B">B of the highest index [-].</param>
/// <param name="C">C of the highest index [-].</param>
/// <param name="LeastHumidityPercent">Humidity below which nothing grows [%].</param>
/// <param name="Species">W: 0 pine, 1 spruce [-].</param>
/// <param name="Surface">SQ: 0 sawn, the worst; 1 kiln-dried [-].</param>
public sealed record MouldSurface(
    string Name, double RateBelow1, double? RateFrom1, double A, double B, double C, double LeastHumidityPercent, double Species = 0, double Surface = 0)
{
    /// <summary>Pine sapwood and the like.</summary>
    public static readonly MouldSurface VerySensitive = new("very sensitive: pine sapwood", 1, 2, 1, 7, 2, 80);

    /// <summary>Glued wood boards, spruce, paper-faced foam: plywood, OSB, chipboard belong here.</summary>
    public static readonly MouldSurface Sensitive = new("sensitive: plywood, OSB, chipboard, spruce, paper-faced foam", 0.578, 0.386, 0.3, 6, 1, 80);

    /// <summary>Concrete, glass wool, polyester wool.</summary>
    public static readonly MouldSurface MediumResistant = new("medium resistant: glass wool, polyester wool, concrete", 0.072, 0.097, 0, 5, 1.5, 85);

    /// <summary>Polished foam, glass, metal.</summary>
    public static readonly MouldSurface Resistant = new("resistant: polished foam, glass, metal", 0.033, 0.014, 0, 3, 1, 85);

    /// <summary>The original model, for pine or spruce.</summary>
    /// <param name="isSpruce">Spruce instead of pine.</param>
    /// <param name="isKilnDried">Kiln-dried surface instead of sawn.</param>
    public static MouldSurface Original(bool isSpruce = false, bool isKilnDried = false) =>
        new("original model", 1, null, 1, 7, 2, 80, isSpruce ? 1 : 0, isKilnDried ? 1 : 0);
}
