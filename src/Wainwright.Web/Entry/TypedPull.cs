using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>A pull by hand gauge as typed: one step to a line, force and the movement read under it.</summary>
/// <param name="Steps">Force [N] and movement [mm], in the order taken.</param>
/// <param name="Fault">Why it cannot be read; absent when it can.</param>
public sealed record TypedPull(IReadOnlyList<(double ForceN, double MovementMm)> Steps, string? Fault)
{
    /// <summary>Reads the lines: <c>50, 0.5</c> or <c>50; 0,5</c>.</summary>
    /// <param name="text">The lines.</param>
    /// <param name="measures">Units that it was typed in.</param>
    public static TypedPull Read(string? text, Measures measures)
    {
        var steps = new List<(double, double)>();
        foreach (var (line, number) in (text ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select((l, i) => (l, i + 1)))
        {
            // where semicolons part the two, a comma is a decimal point
            if (line.Split(line.Contains(';', StringComparison.Ordinal) ? ';' : ',', StringSplitOptions.TrimEntries) is not [var force, var movement] || Force(force, measures) is not { } newton || Figures.Mm(movement, measures) is not { } mm)
                return new([], $"Line {number}: “{line}” is not a force and a movement; type 50, 0.5.");
            if (newton < 0) return new([], $"Line {number}: a pull is 0 or more.");
            steps.Add((newton, mm));
        }
        return steps.Count < 2 ? new([], "A pull test has two steps at least: the pull, and letting it off.") : new(steps, null);
    }

    /// <summary>The readings that make it up, each movement naming its force.</summary>
    /// <param name="job">The job.</param>
    /// <param name="part">The part that was pulled.</param>
    /// <param name="like">When, by whom, with what.</param>
    /// <param name="toward">The way it was pulled; absent when nobody said.</param>
    /// <param name="at">Where it was pulled; absent when nobody said.</param>
    public IEnumerable<Reading> Readings(Job job, PartId part, Reading like, Direction? toward, Place? at)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(like);
        var taken = job.Readings.Select(r => r.Id.Text).ToList();
        ReadingId Next()
        {
            var id = NextId.After(taken, "R", 3);
            taken.Add(id);
            return new(id);
        }
        foreach (var (step, i) in Steps.Select((s, i) => (s, i + 1)))
        {
            var force = like with { Id = Next(), Part = part, Quantity = Quantity.Force, Unit = Units.Of(Quantity.Force), Value = Math.Round(step.ForceN, 2), Toward = toward, At = at, What = string.Create(CultureInfo.InvariantCulture, $"pull, step {i}") };
            yield return force;
            yield return like with { Id = Next(), Part = part, Quantity = Quantity.Length, Unit = Units.Of(Quantity.Length), Value = Math.Round(step.MovementMm, 2), UnderForce = force.Id, What = string.Create(CultureInfo.InvariantCulture, $"movement under the pull, step {i}") };
        }
    }

    private static double? Force(string text, Measures measures) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) ? measures.Newton(value) : null;
}
