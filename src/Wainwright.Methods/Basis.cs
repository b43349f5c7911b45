namespace Wainwright.Methods;

/// <summary>What stands behind a figure: where it is published, what it takes for granted, what it does not prove.</summary>
/// <param name="Source">Document, edition and clause in which the method or table is published.</param>
/// <param name="Assumes">What must be true for the figure to hold; one short phrase each.</param>
/// <param name="Caution">What the figure does not prove. Travels with every answer built on it.</param>
/// <param name="How">How the source was known when the method was written.</param>
public sealed record Basis(string Source, IReadOnlyList<string> Assumes, string Caution, Provenance How = Provenance.NotStated);
