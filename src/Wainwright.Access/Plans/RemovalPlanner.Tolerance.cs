using Wainwright.Fitout;

namespace Wainwright.Access;

public sealed partial class RemovalPlanner
{
    /// <summary>
    /// Plans with parts as large and as small as their measures may be off, and names the measures that decide. A solid's own
    /// tolerance counts where it has one. Larger parts are planned by as much more room between any two, never more than they
    /// were found with; smaller ones by taking half of it off every face.
    /// </summary>
    /// <param name="plan">A plan of this planner.</param>
    /// <param name="tapeMm">How far a measure may be off of which nothing is said [mm]; 5 to 10 for a tape (common practice, no source).</param>
    public TightLoose WhenMeasuresAreOff(RemovalPlan plan, double tapeMm = 5)
    {
        if (plan.Question is not { } question) throw new ArgumentException("This plan was not made by a planner.", nameof(plan));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tapeMm);
        double Own(Solid solid) => solid.PlusMinusMm ?? tapeMm;
        var job = scene.Job;
        // the room asked for grows every solid by the common tolerance: one measured better takes less of it, one measured worse more
        Job Made(Func<Part, Part> sized) => job with { Parts = [.. job.Parts.Select(p => given.IsEmpty || scene.IsStanding(p.Id) ? sized(p) : p)] };
        var tight = new RemovalPlanner(
            new(Made(p => Sized.Shaved(p, s => (tapeMm - Own(s)) / 2)), Told(tapeMm), optimistic: false), Told(tapeMm), doneBefore, null, null);
        var loose = new RemovalPlanner(new(Made(p => Sized.Shaved(p, s => Own(s) / 2)), Told(0), optimistic: false), Told(0), doneBefore, null, null);
        return new(tapeMm, tight.Plan(question.Wanted, plan.Kind), loose.Plan(question.Wanted, plan.Kind), new Deciding(scene, tapeMm).Of(plan));

        AccessOptions Told(double more) => options with
        {
            Bracket = false,
            MustStay = [.. options.MustStay, .. question.Stays],
            ClearanceMm = options.ClearanceMm + (int)Math.Ceiling(more),
            ShaveMm = options.ShaveMm + (int)Math.Ceiling(job.Parts.SelectMany(p => p.Solids).Select(s => Math.Max(0, Own(s) - tapeMm)).DefaultIfEmpty(0).Max()),
        };
    }
}
