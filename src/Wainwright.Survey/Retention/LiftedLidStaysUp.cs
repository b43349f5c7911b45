using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>A lid on gas springs stays up when open, cold and warm, and does not hit the ceiling before.</summary>
public static class LiftedLidStaysUp
{
    private const double ColdC = -10, WarmC = 40;

    /// <summary>One check for each lid or flap with gas springs.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        foreach (var part in job.Parts)
            foreach (var thing in part.Moving.Where(m => m.Springs is not null))
                yield return Of(job, part, thing, thing.Springs!);
    }

    private static Check Of(Job job, Part part, MovingThing thing, GasSpring springs)
    {
        var basis = GasSpringBalance.Basis;
        var draft = new Draft("lid-stays-up", $"The {thing.Name} stays up when open, from {ColdC:0} to {WarmC:0} °C, and clears the ceiling", part.Subject(), basis, "moments about its hinge", Urgency.U2, Use.SleepIn)
        {
            Remedy = "springs of the right force and place, or a prop; a stop before the ceiling",
            Faults = ["furniture-01"],
        };
        var field = $"parts[{part.Id}].moving[{thing.Name}]";
        draft.Use("mass", thing.MassKg, "kg", $"{field}.massKg", part.Known);
        draft.Use("force of one spring", springs.ForceN, "N", $"{field}.springs.forceN", part.Known);
        if (thing.MassKg is null) draft.Miss($"mass of {thing.Name}");
        if (thing.Hinge is null) draft.Miss($"where the hinge of {thing.Name} is");
        if (thing.CentreShut is null) draft.Miss($"where the middle of {thing.Name} is when shut");
        if (thing.OpensDeg is null) draft.Miss($"how far {thing.Name} opens");
        if (springs.ForceN is null) draft.Miss($"force printed on the springs of {thing.Name}");
        if (springs.DrawnOutMm is null || springs.StrokeMm is null) draft.Miss($"length drawn out and stroke of the springs of {thing.Name}");
        if (!draft.IsComplete) return draft.CannotTell("not everything is measured");
        var (hinge, centre) = (thing.Hinge!.Value, thing.CentreShut!.Value);
        // seen along the hinge: across is the way from hinge to middle
        var along = Math.Abs(centre.XMm - hinge.XMm) >= Math.Abs(centre.YMm - hinge.YMm);
        double Across(Place p) => along ? (p.XMm - hinge.XMm) * Math.Sign(centre.XMm - hinge.XMm) : (p.YMm - hinge.YMm) * Math.Sign(centre.YMm - hinge.YMm);
        double Above(Place p) => p.ZMm - hinge.ZMm;
        var lid = new GasSpringBalance.Lid(thing.MassKg!.Value.Value, Across(centre), Above(centre), Across(springs.FixedAt), Above(springs.FixedAt), Across(springs.MovingAt), Above(springs.MovingAt),
            springs.Count, springs.ForceN!.Value.Value, springs.DrawnOutMm!.Value, springs.StrokeMm!.Value);
        var open = thing.OpensDeg!.Value;
        if (thing.FarEdgeShut is { } edge && LidSwing.MeetsAtDegrees(Math.Max(0, Across(edge)), Above(edge), job.Vehicle.LoadSpace.HeightMm.Value - hinge.ZMm) is { } meets && meets < open)
            return draft.FallsShort(string.Create(CultureInfo.InvariantCulture, $"its edge meets the ceiling at {meets:0}°, it is said to open {open:0}°"));
        var (cold, warm) = (GasSpringBalance.At(lid, open, ColdC), GasSpringBalance.At(lid, open, WarmC));
        var demand = Span.Of(cold.WeightNm, (thing.MassKg.Value.PlusMinus ?? 0.05 * thing.MassKg.Value.Value) / thing.MassKg.Value.Value * Math.Abs(cold.WeightNm));
        // springs of one print part by a tenth: common practice, no source
        var capacity = new Span(0.9 * cold.LiftNm, 0.5 * (cold.LiftNm + warm.LiftNm), 1.1 * cold.LiftNm);
        var words = string.Create(CultureInfo.InvariantCulture, $"open {open:0}°: the springs lift {cold.LiftNm:0} N m cold and {warm.LiftNm:0} warm, its weight shuts with {cold.WeightNm:0}");
        draft.Assume("springs of one print part by a tenth (common practice, no source)");
        return draft.Compare(demand, capacity with { High = Math.Max(capacity.High, capacity.Likely) }, "N m", words, $"mass and spring force of {thing.Name}");
    }
}
