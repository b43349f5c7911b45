using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>How hand and tool come to each fixing of a plan at its turn, worked out when somebody wants to see it.</summary>
internal sealed class HandEvidence(Scene scene, ItemSet given)
{
    public IReadOnlyList<HandWay> Of(RemovalPlan plan)
    {
        var index = ItemKey.Index(scene);
        var done = given.Copy();
        var ways = new List<HandWay>();
        var steps = plan.Steps.ToDictionary(s => s.Key, s => s.Number);
        foreach (var key in plan.Order)
        {
            var item = index[key];
            if (PlanWriter.KindOf(scene.Items[item]) is StepKind.Undo or StepKind.Disconnect or StepKind.Reach)
                ways.AddRange(scene.Room.QuestionsOf(item).Select(q => q(done, new(done.Size))).OfType<WayOut>().Select(w => WayFor(steps[key], w)));
            done.Add(item);
        }
        return ways;
    }

    private static HandWay WayFor(int step, WayOut way) => new(
        step,
        [.. way.Shape.Select(b => (new Place(b.X0, b.Y0, b.Z0), new Place(b.X1, b.Y1, b.Z1)))],
        [.. way.Path.Select(p => PartBody.PlaceOf(p.ShiftMm))]);
}
