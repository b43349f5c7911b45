namespace Wainwright.Access;

/// <summary>What is known while a plan is looked for.</summary>
/// <param name="BestMinutes">The cheapest plan so far [min]; absent before the first one.</param>
/// <param name="LowerBoundMinutes">No plan costs less [min].</param>
/// <param name="Questions">Questions of room worked out.</param>
/// <param name="Cuts">Proved sentences of the kind “whoever takes this out must also take out one of those”.</param>
/// <param name="Bracketing">Whether the plan is settled and its bracket is looked for: round and slanting parts as small as they can be.</param>
public sealed record SearchProgress(double? BestMinutes, double LowerBoundMinutes, int Questions, int Cuts, bool Bracketing);
