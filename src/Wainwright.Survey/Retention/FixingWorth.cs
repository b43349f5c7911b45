using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>What would narrow the doubt of a fixing, and by how much its strength could change.</summary>
/// <param name="What">What to look at or measure, in words.</param>
/// <param name="Ratio">Greatest over smallest strength that it leaves open [-].</param>
public sealed record Look(string What, double Ratio);

/// <summary>What one sound fixing carries, worked out from its measures.</summary>
/// <param name="PullN">Along its shank [N].</param>
/// <param name="ShearN">Across it [N].</param>
/// <param name="Sharing">How the two share its strength.</param>
/// <param name="GivesBy">How it lets go when pulled, in words: <c>the head pulls through</c>.</param>
/// <param name="PullNPerMm">Stiffness along it [N/mm].</param>
/// <param name="ShearNPerMm">Stiffness across it [N/mm].</param>
internal readonly record struct SoundFixing(Spread PullN, Spread ShearN, Sharing Sharing, string GivesBy, double PullNPerMm, double ShearNPerMm);

/// <summary>What one fixing of a joint carries as it is found, with its doubt.</summary>
/// <param name="PullN">Along its shank [N].</param>
/// <param name="ShearN">Across it [N].</param>
/// <param name="Sharing">How the two share its strength.</param>
/// <param name="GivesBy">How it lets go when pulled, in words: <c>the head pulls through</c>.</param>
/// <param name="PullNPerMm">Stiffness along it [N/mm]; shares loads, proves nothing.</param>
/// <param name="ShearNPerMm">Stiffness across it [N/mm].</param>
/// <param name="Assumed">What was taken for granted because nobody measured it.</param>
/// <param name="Looks">What would narrow it, the best first.</param>
public sealed record FixingWorth(
    Spread PullN, Spread ShearN, Sharing Sharing, string GivesBy, double PullNPerMm, double ShearNPerMm, IReadOnlyList<string> Assumed, IReadOnlyList<Look> Looks)
{
    /// <summary>Its strength at one end of the doubt, for so many fixings at one place.</summary>
    /// <param name="end">Which end.</param>
    /// <param name="count">How many fixings stand there.</param>
    /// <param name="wayKnown">Whether anybody said how the shank points; if not, the weaker way counts both ways.</param>
    internal FixingStrength At(StrengthEnd end, double count, bool wayKnown)
    {
        double Of(Spread s) => count * (end switch { StrengthEnd.Low => s.Low, StrengthEnd.High => s.High, _ => s.Likely });
        var (pull, shear) = (Of(PullN), Of(ShearN));
        if (!wayKnown && end != StrengthEnd.High) pull = shear = Math.Min(pull, shear);
        return new(pull, shear, Sharing, count * PullNPerMm, count * ShearNPerMm);
    }
}
