using Wainwright.Fitout;

namespace Wainwright.Survey;

/// <summary>Reading a job the way checks need it.</summary>
internal static class Parts
{
    /// <summary>Every device of one kind with the part it belongs to.</summary>
    public static IEnumerable<(Part Part, T Device)> Having<T>(this Job job) where T : Device =>
        job.Parts.SelectMany(p => p.Devices.OfType<T>(), (p, d) => (p, d));

    public static Subject Subject(this Part part) => new(SubjectKind.Part, part.Id.Text, part.Name);

    public static Subject Subject(this Line line) => new(SubjectKind.Line, line.Id.Text, line.Name);

    public static Subject Subject(this Axle axle) => new(SubjectKind.Axle, axle.Name, $"{axle.Name} axle");

    public static Subject Van(this Job job) => new(SubjectKind.Van, job.Id, job.Vehicle.Name);

    /// <summary>Readings that no later reading corrects.</summary>
    public static IEnumerable<Reading> Standing(this Job job)
    {
        var corrected = job.Readings.Where(r => r.Corrects is not null).Select(r => r.Corrects!.Value).ToHashSet();
        return job.Readings.Where(r => !corrected.Contains(r.Id));
    }
}
