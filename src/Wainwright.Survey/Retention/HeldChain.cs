using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>A part, all that its load passes through on the way to the van, and what rides on any of them.</summary>
/// <param name="Bodies">The part first; each with the mass that rides on it.</param>
/// <param name="Joints">The joints that hold any of them, with the body each holds and the one it holds to.</param>
/// <param name="Rests">Pairs of bodies, one standing on the other.</param>
/// <param name="Missing">Masses and places that are not known.</param>
/// <param name="Assumed">What was taken for granted.</param>
internal sealed record HeldChain(
    IReadOnlyList<HeldChain.Link> Bodies, IReadOnlyList<(Joint Joint, int Body, int? To)> Joints, IReadOnlyList<(int Body, int On)> Rests,
    IReadOnlyList<string> Missing, IReadOnlyList<string> Assumed)
{
    /// <summary>A body of the chain.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Kg">Its mass with what rides on it [kg].</param>
    /// <param name="CentreMm">Centre of all that [mm].</param>
    internal sealed record Link(Part Part, Span Kg, Vector3D CentreMm);

    /// <summary>Whether a joint of this type carries load at all: a plug or a hose end connects, it does not hold.</summary>
    public static bool Carries(FixingType type) =>
        type is not (FixingType.HoseClip or FixingType.PushFit or FixingType.Union or FixingType.Plug or FixingType.Terminal or FixingType.CableTie);
}
