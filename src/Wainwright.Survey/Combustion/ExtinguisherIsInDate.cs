using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Combustion;

/// <summary>An extinguisher is in date.</summary>
public static class ExtinguisherIsInDate
{
    private static readonly Basis Rule = new(
        Source: "Service date on the extinguisher (common practice, no source)",
        Assumes: ["the pressure gauge is in the green"],
        Caution: "People first: get out. An extinguisher behind the fire is none.",
        How: Provenance.CommonPractice);

    /// <summary>One check for each extinguisher.</summary>
    public static IEnumerable<Check> Of(Job job, DateOnly today)
    {
        foreach (var (part, extinguisher) in job.Having<Extinguisher>())
        {
            var draft = new Draft("extinguisher-in-date", "The extinguisher is in date", part.Subject(), Rule, "service date", Urgency.U2, Use.SleepIn, Use.Drive)
            {
                Remedy = "service or renew it, and mount it by the door",
                Faults = ["escape-07"],
            };
            draft.Use("due on", extinguisher.Due?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), $"parts[{part.Id}].extinguisher.due", part.Known);
            yield return extinguisher.Due switch
            {
                null => draft.CannotTell("its date is not known", "service date on the extinguisher's label"),
                { } due when due < today => draft.FallsShort(string.Create(CultureInfo.InvariantCulture, $"due {today.DayNumber - due.DayNumber} days ago")),
                _ => draft.Holds("in date"),
            };
        }
    }
}
