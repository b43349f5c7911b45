using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Combustion;

/// <summary>A fuel heater's burner takes its air from outside: another air than the one it warms.</summary>
public static class BurnerAirComesFromOutside
{
    private static readonly Basis Rule = new(
        Source: "UN Regulation 122, annex 7, paragraph 5.3.5: combustion air is not taken from the passenger space (as two texts quote it)",
        Assumes: ["the pipe was followed to its end"],
        Caution: "An intake outside proves nothing of the exhaust: test for carbon monoxide hot, doors shut, fans on. Heater work belongs to a trained technician.",
        How: Provenance.Quoted);

    /// <summary>One check for each fuel air heater.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        foreach (var (part, heater) in job.Having<AirHeater>())
        {
            var draft = new Draft("heater-burner-air", "The burner takes its air from outside", part.Subject(), Rule, "UN R122 5.3.5", Urgency.U0, Use.Heater, Use.SleepIn)
            {
                Remedy = "do not run it; lead the intake pipe outside, clear of the exhaust",
                Faults = ["heater-03"],
            };
            draft.Use("where the burner takes its air", heater.CombustionAirFrom.ToString(), $"parts[{part.Id}].airHeater.combustionAirFrom", part.Known);
            yield return heater.CombustionAirFrom switch
            {
                AirFrom.Outside => draft.Holds("its own pipe leads outside"),
                AirFrom.Room => draft.FallsShort("it draws from the room where people breathe"),
                _ => draft.CannotTell("nobody has followed the pipe", "follow the burner's air pipe to its end"),
            };
        }
    }
}
