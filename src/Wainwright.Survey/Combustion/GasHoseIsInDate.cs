using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Combustion;

/// <summary>A gas hose is younger than ten years.</summary>
public static class GasHoseIsInDate
{
    private const int Years = 10;

    private static readonly Basis Rule = new(
        Source: "EN 1949 practice as an Austrian workshop restates it: regulator and hoses ten years from manufacture",
        Assumes: ["the date printed on the hose is its own"],
        Caution: "Some countries allow five years: local codes rule. A hose in date can still be chafed or brittle. Gas work belongs to licensed people.",
        How: Provenance.Quoted);

    /// <summary>One check for each gas hose.</summary>
    public static IEnumerable<Check> Of(Job job, DateOnly today)
    {
        foreach (var hose in job.Lines.Where(l => l is { Medium: Medium.Gas, Build: LineBuild.Hose }))
        {
            var draft = new Draft("gas-hose-in-date", "The gas hose is less than ten years old", hose.Subject(), Rule, "ten years from manufacture", Urgency.U1, Use.Gas)
            {
                Remedy = "gas off; new hose by a licensed person",
                Faults = ["gas-02"],
            };
            draft.Use("made on", hose.MadeOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), $"lines[{hose.Id}].madeOn", hose.Known);
            if (hose.MadeOn is not { } made)
            {
                yield return draft.CannotTell("its date is not known", "date printed on the hose");
                continue;
            }
            Span age = Span.Exactly(today.DayNumber - made.DayNumber), limit = Span.Exactly(made.AddYears(Years).DayNumber - made.DayNumber);
            yield return draft.Compare(age, limit, "days", string.Create(CultureInfo.InvariantCulture, $"{age.Likely / 365.25:0.0} years old"), "the date");
        }
    }
}
