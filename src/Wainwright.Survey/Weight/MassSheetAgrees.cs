using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Weight;

/// <summary>Base vehicle and mass sheet add up to what the scale said.</summary>
public static class MassSheetAgrees
{
    private const double Fraction = 0.03;

    private static readonly Basis Rule = new(
        Source: "Rule of this project: computed and weighed mass within 3 % of each other",
        Assumes: ["a person aboard counts 75 kg", "doubts of single masses are independent"],
        Caution: "Agreement of the sum proves no single mass: two errors can cancel. The scale rules.",
        How: Provenance.OwnRule);

    /// <summary>One check for the van when it was weighed.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        if (RoadLoad.LastWeighing(job) is not { } weighing) yield break;
        var draft = new Draft("mass-sheet-agrees", "The mass sheet adds up to what the scale said", job.Van(), Rule, "3 % of the weighed mass", Urgency.U3, Use.DriveLoaded)
        {
            Remedy = "find what is not listed, or what weighs more than it says: water in boards and foam is heavy",
            Faults = ["weight-08"],
        };
        var sheet = MassSheet.Of(job);
        foreach (var gap in sheet.MissingInShort()) draft.Miss(gap);
        foreach (var axle in job.Vehicle.Axles.Where(a => a.BareKg is null)) draft.Miss($"load of the bare base vehicle on the {axle.Name} axle");
        if (job.Vehicle.Axles.Count == 0) draft.Miss("axles of the base vehicle and their bare loads");
        if (weighing.UnlistedKg is null) draft.Miss("goods aboard at the weighing that no part lists, even if none");
        var scale = Span.SumOfIndependent(weighing.Axles.Select(a => Span.Of(a.LoadKg.Value, a.LoadKg.PlusMinus ?? 0.01 * a.LoadKg.Value)));
        var computed = Span.SumOfIndependent(
            [sheet.TotalKg, .. job.Vehicle.Axles.Where(a => a.BareKg is not null).Select(a => Doubt.Mass(a.BareKg!.Value)), weighing.UnlistedKg is { } goods ? Doubt.Mass(goods) : Span.Exactly(0)])
            + Span.Exactly(RoadLoad.PersonKg * weighing.PeopleAboard);
        draft.Use("weighed", $"{scale} kg", $"weighings[{weighing.Id}].axles", Known.Measured);
        draft.Use("computed", $"{computed} kg", "vehicle.axles[].bareKg, parts[].massKg", Known.Inferred);
        var off = computed.Likely - scale.Likely;
        // the doubt of the difference is not asked here: a difference within 3 % agrees, however well it is known
        var because = string.Create(CultureInfo.InvariantCulture, $"computed {computed.Likely:0} kg, weighed {scale.Likely:0} kg: {Math.Abs(off):0} kg {(off >= 0 ? "more on paper" : "more on the scale")}");
        yield return draft.Compare(Span.Exactly(Math.Abs(off)), Span.Exactly(Fraction * scale.Likely), "kg", because, "weigh again with the load listed");
    }
}
