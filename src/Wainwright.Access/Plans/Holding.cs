using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Puts in the steps that hold or prop what would drop or tip, before its last fixing goes; words for what stays in unheld.</summary>
/// <remarks>The minutes of holding are in the price of the load that leaves: here they only get a step of their own.</remarks>
internal sealed class Holding(Scene scene, IReadOnlyList<RemovalStep> doneBefore)
{
    private readonly double minutes = scene.Options.Labour.HoldOverhead;

    public List<RemovalStep> In(IReadOnlyList<RemovalStep> steps)
    {
        var all = steps.ToList();
        foreach (var load in steps.Where(s => s.Kind == StepKind.TakeOut).ToList())
            foreach (var part in Load(load).Where(p => scene.Hanging.Of(p) is not null).Take(1)) Hold(all, load, part);
        foreach (var piece in steps.Where(s => s.Kind == StepKind.TakePiece && scene.Hanging.Of(s.Part!.Value) is not null).ToList())
            Warn(all, piece, $"{Wording.Name(scene.PartOf(piece.Part!.Value))} {scene.Hanging.Of(piece.Part.Value)} when its last fixing goes: hold what stays of it too.");
        foreach (var (undo, part) in Unheld(steps))
            Warn(all, undo, $"{Wording.Name(part)} stays in, loses its last fixing here and {scene.Hanging.Of(part.Id)}: prop it before (about {minutes:0.#} min, estimate, not in the sum).");
        return [.. all.Select((s, i) => s with { Number = i + 1 })];
    }

    private static IEnumerable<PartId> Load(RemovalStep step) => step.With.Prepend(step.Part!.Value);

    private void Hold(List<RemovalStep> all, RemovalStep load, PartId id)
    {
        var (part, key) = (scene.PartOf(id)!, $"hold {id}");
        var at = all.IndexOf(load);
        all[at] = load with { OutMinutes = load.OutMinutes - minutes };
        if (doneBefore.Any(s => s.Key == key)) return;
        // before the last of its own fixings; where none is left to undo, before it is carried
        var last = all.FindLastIndex(at, s => s.Kind == StepKind.Undo && scene.Job.Joints.First(j => j.Id == s.Joint).Part == id);
        all.Insert(last >= 0 ? last : at, new()
        {
            Number = 0,
            Kind = StepKind.Hold,
            Part = id,
            Key = key,
            Action = $"Hold or prop {Wording.Name(part)}: it {scene.Hanging.Of(id)} when its last fixing goes",
            OutMinutes = minutes,
            BackMinutes = 0,
            DamageMinutes = 0,
            Origin = "estimate, no source",
            People = 1,
            Why = new(null, id, part.Overhead ? "it is marked as overhead" : $"nothing under it {(scene.Hanging.Of(id) == "tips" ? "keeps it upright" : "carries it")}", true),
            Path = [],
            With = [],
            Cautions = [$"{Wording.Name(part)} {scene.Hanging.Of(id)} when its last fixing goes: hold or prop it first."],
        });
    }

    private static void Warn(List<RemovalStep> all, RemovalStep step, string words)
    {
        var at = all.FindIndex(s => s.Key == step.Key);
        all[at] = all[at] with { Cautions = [.. all[at].Cautions, words] };
    }

    /// <summary>Parts that stay in although the plan undoes the last of their fixings, with the step that does.</summary>
    private IEnumerable<(RemovalStep Undo, Part Part)> Unheld(IReadOnlyList<RemovalStep> steps)
    {
        var leaving = steps.Where(s => s.Kind is StepKind.TakeOut or StepKind.TakePiece).SelectMany(Load).ToHashSet();
        var undone = doneBefore.Select(s => s.Joint).OfType<JointId>().ToHashSet();
        foreach (var step in steps.Where(s => s.Kind == StepKind.Undo))
        {
            undone.Add(step.Joint!.Value);
            var part = scene.PartOf(scene.Job.Joints.First(j => j.Id == step.Joint).Part);
            if (part is null || leaving.Contains(part.Id) || scene.Hanging.Of(part.Id) is null) continue;
            if (scene.Job.Joints.Where(j => j.Part == part.Id).All(j => undone.Contains(j.Id) || LabourTable.Counts(j).Standing == 0)) yield return (step, part);
        }
    }
}
