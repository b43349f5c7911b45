using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What a plan takes for granted and what would make it surer.</summary>
internal sealed class Doubt(Scene scene)
{
    /// <summary>Holds for every plan.</summary>
    public static IReadOnlyList<string> Assumptions { get; } =
    [
        "Parts leave by straight slides and quarter turns; one that none of those takes out is tried tilted, and only the tilted ways found are reckoned with.",
        "What is moved leaves the van: nothing is moved aside and left inside.",
        "Hand and tool are brought in straight; behind them there is room for forearm and upper arm, as far as the arm is long, and for head and shoulder. That an arm bends only at its joints, and where the legs stand, is not modelled.",
        "The ground outside an opening is clear unless its landing is given.",
    ];

    /// <summary>Holds for every plan.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "A plan is advice to a competent person. It does not show that what stays in stays up: look before each fixing goes.",
        "Gas, mains, fuel burners, brakes, seats, belts and structure: local rules and licensed trades come first.",
    ];

    public IEnumerable<string> ToMeasure(IReadOnlyList<RemovalStep> steps, Outcome outcome)
    {
        foreach (var part in scene.Standing.Where(p => p.Solids.Count == 0 && !p.Outside))
            yield return $"Size and place of {Wording.Name(part)}: not measured, so it is taken not to be in anything's way.";

        var joints = steps.Where(s => s.Joint is not null).Select(s => scene.Job.Joints.First(j => j.Id == s.Joint)).ToList();
        foreach (var joint in joints.Where(j => j.Points.Count == 0))
            yield return $"Places of the fixings of {Wording.Name(scene.PartOf(joint.Part))} ({joint.Id}): not measured, so a hand on the part is taken to be enough.";
        foreach (var joint in joints.Where(scene.Room.IsOnTrial))
            yield return $"Fixings of {Wording.Name(scene.PartOf(joint.Part))} ({joint.Id}): no tool modelled gets to one of them past the parts it holds, though it was put in so; try it first.";
        foreach (var joint in joints.Where(scene.Room.IsArmOnTrial))
            yield return $"Fixings of {Wording.Name(scene.PartOf(joint.Part))} ({joint.Id}): hand and tool get to one of them, but no arm modelled behind them past the parts it holds, though it was put in so; try it first.";
        foreach (var part in steps.Where(s => s.Kind is StepKind.Reach or StepKind.Disconnect or StepKind.Undo).Select(s => s.Part).OfType<PartId>().Distinct().Select(scene.PartOf).OfType<Part>().Where(scene.Room.IsHandAlone))
            yield return $"Reach to {Wording.Name(part)}: a hand gets to it, but no arm modelled behind it even with nothing else in the van; try it first.";
        foreach (var joint in joints.Where(j => j.Known is Known.NotInspected or Known.Told))
            yield return $"Fixings of {Wording.Name(scene.PartOf(joint.Part))} ({joint.Id}): not seen.";
        foreach (var step in steps.Where(s => s.Kind == StepKind.Disconnect))
            yield return $"{step.Action}: nobody has seen how it is connected there.";

        foreach (var words in Overlaps(Looked(outcome))) yield return words;
    }

    /// <summary>Pairs of which the model says that neither can be where the other is.</summary>
    public IEnumerable<string> Overlaps(IEnumerable<int> items)
    {
        var told = new HashSet<(string, string)>();
        foreach (var item in items)
            foreach (var (other, overlapMm) in scene.Room.FoundWithin(item))
            {
                var (one, two) = (Wording.Name(Wording.PartOf(scene, scene.Items[item])), Wording.Name(scene.PartBehind(other)));
                if (!told.Add((one, two)) || told.Contains((two, one))) continue;
                yield return $"{one} and {two}: by their measures they overlap by {overlapMm} mm, which cannot be; until they are measured again neither is taken to move before the other.";
            }
    }

    private static IEnumerable<int> Looked(Outcome outcome) => outcome switch
    {
        Solved solved => solved.Order,
        Unreachable none => none.Walls.Keys,
        _ => [],
    };
}
