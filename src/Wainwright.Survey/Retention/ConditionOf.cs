using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>What its state, its flaws, its edge and what nobody saw leave of a fixing's strength.</summary>
internal static class ConditionOf
{
    public static (Spread Pull, Spread Shear) Joint(Joint joint, Substrate into, WorthDraft draft)
    {
        Spread pull = Spread.Exactly(1), shear = Spread.Exactly(1);
        var kind = joint.Type is FixingType.Brad or FixingType.Staple ? WoodFixing.SmoothNail : WoodFixing.WoodScrew;
        void Times(Spread p, Spread s) => (pull, shear) = (pull * p, shear * s);
        void Found(FixingCondition.State state)
        {
            var left = FixingCondition.Of(state, kind);
            Times(left.Pull, left.Shear);
        }
        var unseen = joint.Known is Known.NotInspected or Known.Told or Known.Inferred;
        if (joint.State == FixingState.Loose)
        {
            var share = (double)(joint.StateCount ?? joint.Count) / joint.Count;
            var left = FixingCondition.Of(FixingCondition.State.Loose, kind);
            Spread Mixed(Spread loose) => new(1 - share + share * loose.Low, 1 - share + share * loose.Likely, 1 - share + share * loose.High);
            Times(Mixed(left.Pull), Mixed(left.Shear));
            draft.Look("why it is loose: stripped, worn, or never tightened", 3);
        }
        if (unseen)
        {
            Found(FixingCondition.State.NotSeen);
            draft.Assume($"{joint.Id}: nobody has seen it, so nothing is counted at worst and all of it at best");
            draft.Look(joint.Hidden ? "take off what covers it and look: how many, which size, what they bite in, tight or not" : "look at each: how many, which size, what they bite in, tight or not", 20);
        }
        else if (joint.State == FixingState.NotSeen)
        {
            Found(FixingCondition.State.NotSeen);
            draft.Assume($"{joint.Id}: its state was not written down, so nothing is counted at worst and all of it at best");
            draft.Look("each fixing tried by hand: there, tight, biting", 20);
        }
        foreach (var flaw in joint.Flaws) Found(Enum.Parse<FixingCondition.State>(flaw.ToString()));
        if (!into.IsMetal && joint.Type is FixingType.WoodScrew or FixingType.CupWasherScrew or FixingType.SelfDrillingScrew or FixingType.Brad or FixingType.Staple) Times(Edge(joint, draft), Spread.Exactly(1));
        return (pull, shear);
    }

    /// <summary>What an edge too near leaves. Nobody measured: no nearer than half of what keeps the wood from splitting.</summary>
    private static Spread Edge(Joint joint, WorthDraft draft)
    {
        var least = SplittingDistance.Of(FixingSize.Of(joint).DiameterMm, isBored: false, pullsTowardsEnd: false).EdgeMm;
        if (joint.EdgeMm is not { } edge)
        {
            draft.Assume("assumed: no screw in wood nearer to an edge than half of what keeps the wood from splitting");
            draft.Look("the distance of the outermost screw from the edge", 2);
            return new(0.5, 1, 1);
        }
        var left = SplittingDistance.Left(Math.Max(0, edge.Low), least);
        if (left.Likely < 1) draft.Assume(string.Create(CultureInfo.InvariantCulture, $"{joint.Id}: {edge.Value:0.#} mm from an edge where {least:0.#} mm keep the wood from splitting: {left.Low:0.##} of its hold at worst (common practice, no source)"));
        return left;
    }
}
