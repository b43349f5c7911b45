using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Combustion;

/// <summary>A carbon monoxide alarm is there where something burns; every alarm is in date and its button works.</summary>
public static class AlarmIsInDate
{
    private static readonly Basis Rule = new(
        Source: "Date printed on the alarm; EN 50291 and UL 2034 alarms have a stated life (common practice: a sensor past its date is taken as dead)",
        Assumes: ["the printed date is the unit's own"],
        Caution: "An alarm is the last line, not a licence to run a faulty burner. The button proves the sounder, not the sensor.",
        How: Provenance.CommonPractice);

    /// <summary>One check for each alarm, and one for the van when something burns and no carbon monoxide alarm is recorded.</summary>
    public static IEnumerable<Check> Of(Job job, DateOnly today)
    {
        var alarms = job.Having<Alarm>().ToList();
        foreach (var (part, alarm) in alarms) yield return InDate(part, alarm, today);

        var burns = job.Parts.Any(p => p.Devices.Any(d => d is AirHeater or GasAppliance));
        if (!burns || alarms.Exists(a => SensesCarbonMonoxide(a.Device))) yield break;
        yield return new Draft("co-alarm-present", "A carbon monoxide alarm is fitted where something burns", job.Van(), Rule, "alarm present", Urgency.U0, Use.SleepIn, Use.Heater, Use.Gas)
        {
            Remedy = "fit an alarm near the sleepers' breathing height",
            Faults = ["escape-01"],
        }.CannotTell("something burns in this van and no carbon monoxide alarm is recorded", "look for a carbon monoxide alarm; record it with its date, or fit one");
    }

    private static bool SensesCarbonMonoxide(Alarm alarm) => alarm.Senses is Senses.CarbonMonoxide or Senses.CarbonMonoxideAndSmoke;

    private static Check InDate(Part part, Alarm alarm, DateOnly today)
    {
        var monoxide = SensesCarbonMonoxide(alarm);
        var draft = new Draft(
            monoxide ? "co-alarm-in-date" : "alarm-in-date", "The alarm is in date and its button works", part.Subject(), Rule, "printed date, test button",
            monoxide ? Urgency.U0 : Urgency.U1, monoxide ? [Use.SleepIn, Use.Heater, Use.Gas] : [Use.SleepIn])
        {
            Remedy = "fit a new alarm near the sleepers' breathing height",
            Faults = [monoxide ? "escape-01" : "escape-02"],
        };
        var at = $"parts[{part.Id}].alarm";
        draft.Use("runs out on", alarm.Expires?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), $"{at}.expires", part.Known);
        draft.Use("test button works", alarm.TestButtonWorks?.ToString(), $"{at}.testButtonWorks", part.Known);
        if (alarm.TestButtonWorks == false) return draft.FallsShort("its test button does not sound it");
        if (alarm.Expires is { } expires)
        {
            var days = expires.DayNumber - today.DayNumber;
            if (days < 0) return draft.FallsShort(string.Create(CultureInfo.InvariantCulture, $"it ran out {-days} days ago"));
        }
        else
        {
            draft.Miss("date printed on the alarm");
        }
        if (alarm.TestButtonWorks is null) draft.Miss("press the alarm's test button");
        return draft.IsComplete ? draft.Holds("in date, and its button sounds it") : draft.CannotTell("date or test is not known");
    }
}
