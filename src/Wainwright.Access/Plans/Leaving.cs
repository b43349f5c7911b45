using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Which parts have left the van after some steps.</summary>
public static class Leaving
{
    /// <summary>Parts that are out after these steps, in order: a load with all that leaves with it, a part in pieces once the last of them is out.</summary>
    /// <param name="parts">Parts of the job: they say which pieces a part has. One that is not among them is never out by its pieces.</param>
    /// <param name="steps">Steps that are done, in order.</param>
    public static IEnumerable<PartId> In(IReadOnlyList<Part> parts, IEnumerable<RemovalStep> steps)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(steps);
        var taken = new Dictionary<PartId, HashSet<string>>();
        foreach (var step in steps)
        {
            if (step is { Kind: StepKind.TakeOut, Part: { } load })
                foreach (var id in step.With.Prepend(load)) yield return id;
            if (step is not { Kind: StepKind.TakePiece, Part: { } part, Piece: { } piece }) continue;
            if (!taken.TryGetValue(part, out var own)) taken[part] = own = [];
            if (own.Add(piece) && parts.FirstOrDefault(p => p.Id == part) is { } whole && own.Count == Pieces(whole)) yield return part;
        }
    }

    // solids that belong to no named piece are one more
    private static int Pieces(Part part) => part.Solids.Select(s => part.ComesApartInto.FirstOrDefault(p => s.Name is { } name && p.Solids.Contains(name))?.Name).Distinct().Count();
}
