using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>A solid that stands in the van during an audit.</summary>
/// <param name="Part">The part it belongs to; absent for the van itself.</param>
/// <param name="Piece">The piece it leaves with, where the part comes apart.</param>
/// <param name="Shape">Its shape where it stands.</param>
internal sealed record StandingSolid(Part? Part, string? Piece, WalkedSolid Shape)
{
    /// <summary>The name under which solids leave that belong to no named piece.</summary>
    public const string Rest = "the rest";

    public static IEnumerable<StandingSolid> Of(Part part) => part.Solids.Select(s => new StandingSolid(part, PieceOf(part, s), WalkedSolid.Of(s)));

    private static string? PieceOf(Part part, Solid solid) => part.ComesApartInto.Count == 0
        ? null
        : part.ComesApartInto.FirstOrDefault(p => p.Solids.Contains(solid.Name ?? ""))?.Name ?? Rest;
}
