namespace Wainwright.Fitout;

/// <summary>What must hold of drawers, doors, lids and shelves, and of what a job is judged against.</summary>
internal static class MovingRules
{
    public static IEnumerable<Issue> Of(Job job)
    {
        foreach (var twice in job.JudgedAgainst.GroupBy(c => c).Where(g => g.Count() > 1))
            yield return new("job.judgedAgainst", $"names {twice.Key} twice", "name each once");
        foreach (var (part, i) in job.Parts.Select((p, i) => (p, i)))
        {
            var at = JobRules.At(i, part.Id);
            foreach (var twice in part.Moving.Select(m => m.Name).Concat(part.Shelves.Select(s => s.Name)).GroupBy(n => n).Where(g => g.Count() > 1))
                yield return new($"{at}.moving", $"two of its drawers, doors or shelves are named “{twice.Key}”", "give each its own name");
            foreach (var thing in part.Moving)
            {
                var where = $"{at}.moving ({thing.Name})";
                if (Slides(thing.Kind) && thing.Hinge is not null) yield return new($"{where}.hinge", "slides and has a hinge", "mend the kind, or leave the hinge out");
                if (Slides(thing.Kind) && thing.Springs is not null) yield return new($"{where}.springs", "slides and has gas springs", "mend the kind, or leave the springs out");
                if (thing is { Springs: not null, Hinge: null }) yield return new($"{where}.springs", "has gas springs and no hinge: nobody can tell what they lift", "measure where the hinge is", Weight.Doubt);
                if (thing.Springs is { } s && s.FixedAt.DistanceMm(s.MovingAt) < 1) yield return new($"{where}.springs", "both ends are in one place", "measure both ends with the lid shut");
                if (thing is { KeptShutBy: "nothing", HoldsN: { Value: > 0 } }) yield return new($"{where}.holdsN", "nothing keeps it shut and yet a force is given", "mend one of the two");
            }
        }
    }

    private static bool Slides(MovingKind kind) => kind is MovingKind.Drawer or MovingKind.SlidingDoor or MovingKind.Slide;
}
