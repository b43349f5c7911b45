namespace Wainwright.Access;

/// <summary>What a plan is to have least of. Where two plans have as little of it, the one with less labour is taken.</summary>
/// <remarks>
/// One after the other, never a mixture: whoever asks for few parts or little damage means it whatever it costs, and a weight
/// between parts and minutes would be a price nobody gave. The mixture that has a price, minutes of expected damage, is
/// <see cref="LeastLabour"/>.
/// </remarks>
public enum Objective
{
    /// <summary>Labour: out, back, and the expected labour to put right what is spoiled [min].</summary>
    LeastLabour,

    /// <summary>Parts that are carried out; a piece of a part counts for its share of the part's pieces.</summary>
    FewestPartsOut,

    /// <summary>Expected labour to put right what is spoiled [min], whatever the rest costs.</summary>
    LeastDestroyed,
}

/// <summary>How much of what is sought a plan has, and what no plan goes below.</summary>
/// <param name="Objective">What is sought.</param>
/// <param name="Value">How much of it the plan has: minutes, or parts.</param>
/// <param name="NoPlanBelow">No plan has less of it than this.</param>
public sealed record Sought(Objective Objective, double Value, double NoPlanBelow);
