using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Electrics;

namespace Wainwright.Survey.Electrics;

/// <summary>A residual-current device is rated to protect people and trips in time at five times its rating; at its rating too, where that was tested.</summary>
public static class ResidualCurrentTripsInTime
{
    private const double GroundFaultClassA = 6;

    /// <summary>One check for each residual-current device.</summary>
    public static IEnumerable<Check> Of(Job job) => job.Having<ResidualCurrentDevice>().Select(d => Of(d.Part, d.Device));

    internal static Check Of(Part part, ResidualCurrentDevice device)
    {
        var classA = device.RatedMa is { } rated && rated <= GroundFaultClassA;
        var draft = new Draft(
            "residual-current-trips", "The residual-current device protects people and trips in time", part.Subject(),
            classA ? GfciTripTime.Basis : ResidualCurrentLimits.Basis, classA ? "UL 943 class A trip curve" : "BS 7671 415.1.1: 30 mA, 40 ms at five times the rating; IEC 61008/61009: 300 ms at the rating",
            Urgency.U0, Use.Mains)
        {
            Remedy = "do not use mains; a qualified electrician renews and certifies it",
            Faults = ["mains-01"],
        };
        var at = $"parts[{part.Id}].residualCurrent";
        draft.Use("rated residual current", device.RatedMa, "mA", $"{at}.ratedMa", part.Known);
        draft.Use("trip time at its rating", device.TripAtRatedMs, "ms", $"{at}.tripAtRatedMs", part.Known);
        draft.Use("trip time at five times its rating", device.TripAtFiveTimesMs, "ms", $"{at}.tripAtFiveTimesMs", part.Known);
        draft.Use("tested on", device.TestedOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), $"{at}.testedOn", part.Known);
        draft.Assume("the device is of the general, not the delayed type");
        if (device.RatedMa is not { } ma) return draft.CannotTell("its rating is not known", "rated residual current on the device's label");
        if (ma > ResidualCurrentLimits.ProtectsPeopleToMilliamp)
            return draft.FallsShort(string.Create(CultureInfo.InvariantCulture, $"rated {ma:0.#} mA: above 30 mA it protects wiring, not people"));

        var once = Limit(ma, 1, classA);
        var five = Limit(ma, 5, classA);
        var (worst, limit) = (device.TripAtRatedMs, device.TripAtFiveTimesMs) switch
        {
            ({ } a, { } b) when a.Value / once >= b.Value / five => (a, once),
            (_, { } b) => (b, five),
            ({ } a, null) => (a, once),
            _ => (default(Measured?), five),
        };
        if (worst is not { } ms) return draft.CannotTell("it has not been tested with an instrument", "trip time with a tester, at five times its rating");
        if (Short(device.TripAtRatedMs, once) || Short(device.TripAtFiveTimesMs, five))
            return draft.FallsShort(string.Create(CultureInfo.InvariantCulture, $"trips in {ms.Value:0.#} ms, allowed {limit:0} ms")) with { Demand = Doubt.Meter(ms, draft), Capacity = Span.Exactly(limit), Unit = "ms", Margin = Check.MarginOf(Doubt.Meter(ms, draft), Span.Exactly(limit)) };
        // additional protection of people is proved at five times the rating; the time at the rating judges the device where it was taken
        if (device.TripAtFiveTimesMs is null) draft.Miss("trip time with a tester, at five times its rating");
        return draft.Compare(Doubt.Meter(ms, draft), Span.Exactly(limit), "ms",
            string.Create(CultureInfo.InvariantCulture, $"trips in {ms.Value:0.#} ms, allowed {limit:0} ms"), "the trip time, three times in each half-wave");

        bool Short(Measured? time, double allowed) => time is { } t && Doubt.Meter(t, draft).Low > allowed;
    }

    private static double Limit(double ratedMa, double times, bool classA) => classA
        ? 1000 * (GfciTripTime.Of(new(Math.Max(GroundFaultClassA, ratedMa * times))).LimitSeconds ?? 0)
        : ResidualCurrentLimits.All.First(p => p.Standard == "IEC 61008/61009" && p.Kind == "general" && p.TimesRating == times).MostMs ?? 0;
}
