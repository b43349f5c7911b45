using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Weight;

namespace Wainwright.Survey.Weight;

/// <summary>Left and right wheels carry about the same.</summary>
public static class SidesAreLevel
{
    /// <summary>One check for the van: from a weighing of the sides where there is one; from the mass sheet it can fall short but never hold.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        var draft = new Draft("sides-level", "Left and right wheels differ by no more than 3 % of the load", job.Van(), SideMoments.Basis, "3 % of the load (one truck maker's rule)", Urgency.U3, Use.Drive)
        {
            Remedy = "move heavy things to the lighter side",
            Faults = ["weight-03"],
        };
        var weighing = RoadLoad.LastWeighing(job);
        if (weighing is { LeftKg: { } left, RightKg: { } right })
        {
            draft.Use("left wheels", left, "kg", $"weighings[{weighing.Id}].leftKg", Known.Measured);
            draft.Use("right wheels", right, "kg", $"weighings[{weighing.Id}].rightKg", Known.Measured);
            yield return Compared(draft, Doubt.Scale(left, draft), Doubt.Scale(right, draft));
            yield break;
        }
        if (job.Parts.Count == 0 && weighing is null) yield break;
        var sheet = MassSheet.Of(job);
        foreach (var gap in sheet.MissingInShort()) draft.Miss(gap);
        draft.Use("track", job.Vehicle.TrackMm, "mm", "vehicle.trackMm", Known.Measured);
        if (job.Vehicle.TrackMm is null) draft.Miss("track of the van: between the wheels of an axle, middle to middle");
        foreach (var axle in job.Vehicle.Axles.Where(a => a.BareKg is null)) draft.Miss($"load of the bare base vehicle on the {axle.Name} axle");
        if (job.Vehicle.Axles.Count == 0) draft.Miss("axles of the base vehicle and their bare loads");
        draft.Assume("the base vehicle and its people are level; the wheels stand either side of the middle of the load space");
        if (job.Vehicle.TrackMm is not { } track)
        {
            yield return draft.CannotTell("the sides were not weighed and cannot be computed", "weigh left and right wheels");
            yield break;
        }
        var middle = job.Vehicle.LoadSpace.WidthMm.Value / 2;
        var bare = job.Vehicle.Axles.Sum(a => a.BareKg?.Value ?? 0);
        Span Side(bool rightSide) => Span.Exactly(bare / 2) + Span.SumOfIndependent(sheet.Rows.Where(r => r.At is not null)
            .Select(r => r.Kg.Times(0.5 + (rightSide ? 1 : -1) * (r.At!.Value.YMm - middle) / track.Value)));
        // how the base vehicle itself leans is not known: a sum can accuse, it cannot acquit
        var computed = Compared(draft, Side(rightSide: false), Side(rightSide: true));
        yield return computed.Verdict == Verdict.Holds
            ? draft.CannotTell($"by the mass sheet {computed.Because}; how the base vehicle leans is not known", "weigh left and right wheels") with { Demand = computed.Demand, Capacity = computed.Capacity, Unit = computed.Unit, Margin = computed.Margin }
            : computed;
    }

    private static Check Compared(Draft draft, Span left, Span right)
    {
        var likely = Math.Abs(right.Likely - left.Likely);
        var doubt = Math.Sqrt(Math.Pow((left.High - left.Low) / 2, 2) + Math.Pow((right.High - right.Low) / 2, 2));
        var because = string.Create(CultureInfo.InvariantCulture, $"left {left.Likely:0} kg, right {right.Likely:0} kg");
        return draft.Compare(new(Math.Max(0, likely - doubt), likely, likely + doubt), Span.Exactly(SideMoments.OneMakersLimitFraction * (left.Likely + right.Likely)), "kg", because, "weigh left and right wheels on the same scale");
    }
}
