using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

public sealed partial class RemovalPlanner
{
    /// <summary>What stops a part first in each of the six directions, and by how much.</summary>
    /// <param name="part">The part.</param>
    /// <param name="without">Parts that are out; none for the van as it is.</param>
    /// <exception cref="ArgumentException">A part is not in the job.</exception>
    public IReadOnlyList<Blocking> WhatBlocks(PartId part, IReadOnlyList<PartId>? without = null)
    {
        var pushed = scene.PartOf(part) ?? throw new ArgumentException($"No part {part} in this job.", nameof(part));
        var gone = given.Copy();
        foreach (var out_ in without ?? []) gone.AddAll(ItemKey.Find(scene, scene.Items.Where(i => i is IsOut is_ && is_.Part.Id == out_).Select(ItemKey.Of)).Items);
        return [.. scene.Room.Hindrances(pushed, gone).Select(h => new Blocking(part, PartBody.DirectionOf(h.Heading), scene.PartBehind(h.Item)?.Id, h.FreeMm, h.ShortMm, PartBody.DirectionOf(h.Dodge)))];
    }

    /// <summary>Single changes with which there would be a way where there is none, least millimetres first: tried one by one, none is guessed.</summary>
    /// <param name="plan">An answer of this planner.</param>
    public IReadOnlyList<FreeingChange> WhatWouldFree(RemovalPlan plan) =>
        plan.Question is not { } question || plan.Proof != Proof.ProvedUnreachable ? [] : new Freeing(scene.Job, options, question, doneBefore, plan).Smallest();
}
