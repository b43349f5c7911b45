namespace Wainwright.Bench.Rivals;

/// <summary>What a contestant came to.</summary>
/// <param name="Price">Price of its best plan; absent when it has none.</param>
/// <param name="IsProved">Whether it proved that there is no cheaper one.</param>
/// <param name="LowerBound">What it proved that no plan goes below.</param>
readonly record struct Result(long? Price, bool IsProved, long LowerBound);
