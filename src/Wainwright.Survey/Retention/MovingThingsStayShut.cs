using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Drawers, doors, flaps and slides stay shut in every day's driving.</summary>
public static class MovingThingsStayShut
{
    private const string Nothing = "nothing";

    /// <summary>One check for each moving thing that a driving case pulls open.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var cases = Holding.Chosen(job, []).Where(AskedG.IsDriving).DefaultIfEmpty(LoadCase.DrivingLightVan).ToList();
        foreach (var part in job.Parts)
            foreach (var thing in part.Moving)
                if (cases.Select(c => (Case: AskedG.Case(c), G: Demand.Added(AskedG.Case(c), PullWay.Of(thing.Opens)))).Where(a => a.G is > 0).OrderByDescending(a => a.G).FirstOrDefault() is { G: { } g } asked)
                    yield return Of(part, thing, asked.Case, g);
    }

    private static Check Of(Part part, MovingThing thing, AccelerationCase load, double g)
    {
        var basis = new Basis($"{load.Source}; {LatchDemand.Basis.Source}", LatchDemand.Basis.Assumes, $"{LatchDemand.Basis.Caution} {JobHolding.Caution}", load.How);
        var draft = new Draft("stays-shut", $"The {thing.Name} stays shut in driving", part.Subject(), basis, load.Title, Urgency.U1, Use.Drive)
        {
            Remedy = "a positive latch, or a turn button that needs a hand",
            Faults = [thing.Kind == MovingKind.Drawer ? "furniture-09" : "furniture-01"],
        };
        var field = $"parts[{part.Id}].moving[{thing.Name}]";
        draft.Use("mass that moves", thing.MassKg, "kg", $"{field}.massKg", part.Known);
        draft.Use("force that opens it", thing.HoldsN, "N", $"{field}.holdsN", part.Known);
        if (thing.MassKg is null) draft.Miss($"mass of {thing.Name} with what is in it: weigh it");
        var holds = thing.HoldsN ?? (thing.KeptShutBy == Nothing ? new Measured(0, 0) : (Measured?)null);
        if (holds is null) draft.Miss(thing.KeptShutBy is null ? $"what keeps {thing.Name} shut, and the force that opens it, by hand gauge" : $"the force that opens {thing.Name} ({thing.KeptShutBy}), by hand gauge at the catch");
        // a hinged leaf: its middle is half as far from the hinge as the catch
        var arms = thing.Kind is MovingKind.Drawer or MovingKind.SlidingDoor or MovingKind.Slide ? 1.0 : 2.0;
        if (arms > 1) draft.Assume("the catch is twice as far from the hinge as the middle of the leaf");
        if (!draft.IsComplete) return draft.CannotTell(string.Create(CultureInfo.InvariantCulture, $"{g:0.0#} g opens it {thing.Opens.ToString().ToLowerInvariant()}; not everything is measured"));
        var mass = Doubt.Mass(thing.MassKg!.Value);
        var demand = mass.Rising(kg => LatchDemand.ForceN(new(Math.Max(0, kg), CentreArmMm: 1, CatchArmMm: arms), g));
        var capacity = Span.Of(holds!.Value.Value, holds.Value.PlusMinus ?? 0.1 * holds.Value.Value);
        return draft.Compare(demand, capacity, "N", string.Create(CultureInfo.InvariantCulture, $"{demand.Likely:0} N pull at its catch at {g:0.0#} g {thing.Opens.ToString().ToLowerInvariant()}, {(capacity.Likely == 0 ? "nothing keeps it shut" : $"it opens at {capacity.Likely:0} N")}"), $"the force that opens {thing.Name}, and its mass");
    }
}
