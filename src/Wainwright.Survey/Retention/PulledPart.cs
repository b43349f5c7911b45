using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>A part that somebody pulled by hand gauge, and what that says of it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Steps">Force and movement, in the order taken.</param>
/// <param name="Test">What the method makes of them.</param>
/// <param name="Toward">The way it was pulled; absent when nobody said.</param>
/// <param name="Readings">Ids of the movements.</param>
/// <param name="ReachedG">Throw that loads it as the greatest pull did [g]; absent when mass, way or place are not known.</param>
/// <param name="KeepsAtG">Throw after which it keeps a millimetre [g]: set taken to grow with the pull. Absent when it sprang back, or was not let off.</param>
public sealed record PulledPart(
    Part Part, IReadOnlyList<PullTest.Step> Steps, PullTest.Result Test, Direction? Toward, IReadOnlyList<ReadingId> Readings, Span? ReachedG, Span? KeepsAtG)
{
    /// <summary>Set that a rule shows [mm]; own rule.</summary>
    public const double SetShownMm = 1;

    /// <summary>Every pull of a job: the movements of a part that name the force they were read under.</summary>
    /// <param name="job">The job.</param>
    public static IReadOnlyList<PulledPart> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var standing = job.Standing().ToList();
        var forces = standing.Where(r => r.Quantity == Quantity.Force).GroupBy(r => r.Id).ToDictionary(g => g.Key, g => g.First());
        var parts = job.Parts.GroupBy(p => p.Id).ToDictionary(g => g.Key, g => g.First());
        var who = new WhoHolds(job);
        return [.. standing.Where(r => r is { Quantity: Quantity.Length, UnderForce: not null, Part: not null } && forces.ContainsKey(r.UnderForce.Value) && parts.ContainsKey(r.Part.Value))
            .GroupBy(r => r.Part!.Value).Select(g => Of(parts[g.Key], [.. g.OrderBy(r => r.TakenAt)], forces, who))];
    }

    /// <summary>What was seen, in words.</summary>
    public string Words()
    {
        var top = Steps.MaxBy(s => s.ForceN);
        var way = Toward is { } t ? $" {t.ToString().ToLowerInvariant()}" : "";
        var kept = Test.PermanentSetMm is { } set ? string.Create(CultureInfo.InvariantCulture, $", {set:0.#} mm of it stayed") : ", and was not let off under the eye";
        return string.Create(CultureInfo.InvariantCulture, $"pulled{way} with {top.ForceN:0} N it moved {top.MovementMm:0.#} mm{kept}");
    }

    private static PulledPart Of(Part part, List<Reading> moved, Dictionary<ReadingId, Reading> forces, WhoHolds who)
    {
        var pulls = moved.ConvertAll(m => forces[m.UnderForce!.Value]);
        var steps = moved.Zip(pulls, (m, f) => new PullTest.Step(Math.Max(0, f.Value.Value), m.Value.Value)).ToList();
        var test = PullTest.Of(steps, letGo: false);
        var toward = pulls.Select(p => p.Toward).FirstOrDefault(t => t is not null);
        var reached = ReachedBy(part, test.GreatestN, toward, pulls.Select(p => p.At).FirstOrDefault(a => a is not null), who);
        Span? keeps = test.PermanentSetMm is >= SetShownMm and var set && reached is { } g ? g.Times(SetShownMm / set) : null;
        return new(part, steps, test, toward, [.. moved.Select(m => m.Id)], reached, keeps);
    }

    /// <summary>For a part that stands and was pulled along the floor, the throw that turns it about its foot as much; else that pulls as much.</summary>
    private static Span? ReachedBy(Part part, double pullN, Direction? toward, Place? at, WhoHolds who)
    {
        var chain = who.Chain(part);
        if (toward is not { } way || chain.Missing.Count > 0 || chain.Bodies[0].Kg.Low <= 0 || part.Bounds() is not var (low, _)) return null;
        var upright = way is Direction.Up or Direction.Down;
        var arm = upright || at is not { } place || part.Overhead ? 1 : (place.ZMm - low.ZMm) / Math.Max(1, chain.Bodies[0].CentreMm.Z - low.ZMm);
        double Of(double kg) => pullN * arm / (kg * Pulse.GravityMPerS2);
        var kg = chain.Bodies[0].Kg;
        return new(Of(kg.High), Of(kg.Likely), Of(kg.Low));
    }
}
