using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Weight;

namespace Wainwright.Survey.Weight;

/// <summary>No axle and not the van as a whole weighs more than its plate allows, with the driver and fully loaded.</summary>
public static class VanStaysWithinItsPlate
{
    private const string NotWeighed = "it was not weighed, and what the bare base vehicle weighs is not known";

    /// <summary>For both loadings: one check for each axle and one for the whole.</summary>
    public static IEnumerable<Check> Of(Job job) => Of(job, Loading.WithDriver).Concat(Of(job, Loading.Full));

    private static IEnumerable<Check> Of(Job job, Loading loading)
    {
        var (ending, words, use) = loading == Loading.WithDriver
            ? ("", "as found, with its driver", Use.Drive)
            : ("-loaded", "with every road seat taken and its fresh water full", Use.DriveLoaded);
        var load = RoadLoad.Of(job, loading);
        var axles = job.Vehicle.Axles;
        for (var i = 0; i < axles.Count; i++)
        {
            var draft = Begun($"axle-load{ending}", $"The {axles[i].Name} axle stays within its plate {words}", axles[i].Subject(), "axle rating on the plate", use, load, "weight-02");
            draft.Use($"{axles[i].Name} axle, rating on the plate", axles[i].RatingKg, "kg", $"vehicle.axles[{axles[i].Name}].ratingKg", Known.Seen);
            if (axles[i].RatingKg is null) draft.Miss($"rating of the {axles[i].Name} axle on the vehicle's plate");
            yield return load is null
                ? draft.CannotTell("the balance needs exactly two axles, the front one first, with their places", "place of both axles along the van, or weigh each axle as loaded")
                : !load.HasBase ? draft.CannotTell(NotWeighed)
                : Judged(draft, i == 0 ? load.FrontKg : load.RearKg, axles[i].RatingKg, surelyAtLeast: false);
        }
        var whole = Begun($"plated-mass{ending}", $"The van stays within its plate {words}", job.Van(), "greatest mass on the plate", use, load, "weight-01");
        whole.Use("greatest mass on the plate", job.Vehicle.PlatedMassKg, "kg", "vehicle.platedMassKg", Known.Seen);
        if (job.Vehicle.PlatedMassKg is null) whole.Miss("greatest mass on the vehicle's plate");
        yield return load is null
            ? whole.CannotTell("the balance needs exactly two axles, the front one first, with their places", "weigh the van as loaded")
            : !load.HasBase ? whole.CannotTell(NotWeighed)
            : Judged(whole, load.TotalKg, job.Vehicle.PlatedMassKg, surelyAtLeast: true);
    }

    private static Draft Begun(string id, string claim, Subject subject, string governing, Use use, RoadLoad? load, string fault)
    {
        var draft = new Draft(id, claim, subject, AxleMoments.Basis, governing, Urgency.U0, use)
        {
            Remedy = "take load out or move it towards the other axle; weigh again",
            Faults = [fault],
        };
        foreach (var given in load?.From ?? []) draft.Use(given.What, given.Value, given.Field, given.Known);
        foreach (var assumed in load?.Assumed ?? []) draft.Assume(assumed);
        foreach (var gap in load?.Missing ?? []) draft.Miss(gap);
        return draft;
    }

    /// <param name="draft">The draft.</param>
    /// <param name="load">The load [kg], short of whatever is missing.</param>
    /// <param name="rating">The plate [kg].</param>
    /// <param name="surelyAtLeast">Whether what is missing can only add to it: so for the whole, not for one axle.</param>
    private static Check Judged(Draft draft, Span load, Measured? rating, bool surelyAtLeast)
    {
        if (rating is not { } plate) return draft.CannotTell(string.Create(CultureInfo.InvariantCulture, $"{load.Likely:0} kg, and the plate is not known"));
        var most = Span.Of(plate.Value, plate.PlusMinus ?? 0);
        var because = string.Create(CultureInfo.InvariantCulture, $"{load.Likely:0} kg against {plate.Value:0} kg: {Math.Abs(plate.Value - load.Likely):0} kg {(load.Likely <= plate.Value ? "left" : "too much")}");
        return !draft.IsComplete && surelyAtLeast && load.Low > most.High
            ? draft.FallsShort($"{because}, and not everything is counted") with { Demand = load, Capacity = most, Unit = "kg", Margin = Check.MarginOf(load, most) }
            : draft.Compare(load, most, "kg", draft.IsComplete ? because : $"{because}, as far as it is counted", "weigh each axle as loaded");
    }
}
