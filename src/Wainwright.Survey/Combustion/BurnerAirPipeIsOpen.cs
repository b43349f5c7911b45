using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Combustion;

/// <summary>The burner's air pipe is not crushed.</summary>
public static class BurnerAirPipeIsOpen
{
    private const double LeastOfBore = 0.9;

    private static readonly Basis Rule = new(
        Source: "Rule of this project: nine tenths of the bore the maker asks for; UN Regulation 122, annex 7, 5.3.5.2 asks that the intake cannot be blocked (as quoted)",
        Assumes: ["measured at the narrowest place"],
        Caution: "Length and bends count too: the maker's book rules.",
        How: Provenance.OwnRule);

    /// <summary>One check for each fuel air heater.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        foreach (var (part, heater) in job.Having<AirHeater>())
        {
            var draft = new Draft("heater-burner-air-pipe", "The burner's air pipe is open to its bore", part.Subject(), Rule, "nine tenths of the maker's bore", Urgency.U1, Use.Heater)
            {
                Remedy = "renew the pipe and route it where nothing can crush it",
                Faults = ["heater-04"],
            };
            var at = $"parts[{part.Id}].airHeater";
            draft.Use("narrowest bore", heater.CombustionIntakeBoreMm, "mm", $"{at}.combustionIntakeBoreMm", part.Known);
            draft.Use("bore the maker asks for", heater.CombustionIntakeNominalMm, "mm", $"{at}.combustionIntakeNominalMm", part.Known);
            if (heater.CombustionIntakeBoreMm is null) draft.Miss("bore of the burner's air pipe at its narrowest");
            if (heater.CombustionIntakeNominalMm is null) draft.Miss("bore the maker asks for, from the heater's book");
            yield return heater is { CombustionIntakeBoreMm: { } bore, CombustionIntakeNominalMm: { } nominal }
                ? draft.Compare(Span.Exactly(LeastOfBore * nominal), Doubt.Calliper(bore, draft), "mm", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{bore.Value:0.#} mm at its narrowest, the maker asks for {nominal:0.#} mm"), "the bore with a drill shank or calliper")
                : draft.CannotTell("the bore is not known");
        }
    }
}
