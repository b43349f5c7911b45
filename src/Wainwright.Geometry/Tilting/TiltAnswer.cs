namespace Wainwright.Geometry;

/// <summary>How much may be spent on looking for a tilted way. Counts, not time: the same question then gives the same answer everywhere.</summary>
/// <param name="Tries">Motions tried.</param>
/// <param name="Seed">Seed of the chance by which they are chosen.</param>
public readonly record struct TiltBudget(int Tries, int Seed);

/// <summary>The answer to: does it come out tilted, with these things gone?</summary>
/// <param name="Tries">Motions tried.</param>
public abstract record TiltAnswer(int Tries);

/// <summary>It does, by this way; a way for the shape as it is, clear between its points too.</summary>
/// <param name="Path">From where it was found to outside. Between two points the middle goes straight while the load turns evenly by the shorter way.</param>
/// <param name="Through">The gone things whose room it passes through: with these gone the way is open, whatever else stays.</param>
/// <param name="Gap">The gap it leaves by.</param>
/// <param name="ClearMm">Where it lies tilted it stays at least so far from everything that stands [mm].</param>
/// <param name="Tries">Motions tried.</param>
public sealed record TiltedWay(IReadOnlyList<Posture> Path, ItemSet Through, Gap? Gap, double ClearMm, int Tries) : TiltAnswer(Tries);

/// <summary>No way was found in so many tries. It proves nothing: no wall follows from it.</summary>
/// <param name="Tries">Motions tried.</param>
public sealed record NoneFound(int Tries) : TiltAnswer(Tries);
