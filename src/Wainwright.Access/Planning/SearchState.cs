namespace Wainwright.Access;

/// <summary>How far a search has come.</summary>
/// <param name="Best">Price of the cheapest plan so far; absent before the first one.</param>
/// <param name="LowerBound">No plan is cheaper than this.</param>
/// <param name="Questions">Answers worked out.</param>
/// <param name="Cuts">Proved sentences.</param>
public readonly record struct SearchState(long? Best, long LowerBound, int Questions, int Cuts);
