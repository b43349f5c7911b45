using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Electrics;

namespace Wainwright.Survey.Electrics;

/// <summary>A fuel heater's plug keeps its volts while the glow pin draws.</summary>
public static class HeaterKeepsItsVolts
{
    /// <summary>One check for each fuel air heater.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        foreach (var (part, heater) in job.Having<AirHeater>())
        {
            var draft = new Draft("heater-supply-volts", "The heater's plug loses no more than 3 % of the supply while the glow pin draws", part.Subject(),
                VoltageDrop.Basis, "3 % for circuits whose failure affects safety", Urgency.U2, Use.Heater)
            {
                Remedy = "renew crimps and earth, thicker feed",
                Faults = ["heater-08", "dc-07"],
            };
            draft.Assume("the battery stood at its nominal voltage or above while it was measured");
            var field = $"parts[{part.Id}].airHeater.startVolts";
            draft.Use("volts at its plug, glow pin drawing", heater.StartVolts, "V", field, part.Known);
            var batteries = job.Having<Battery>().Select(b => b.Device.Volts).Distinct().ToList();
            if (batteries.Count == 0) draft.Miss("nominal voltage of the battery that feeds the heater");
            if (heater.StartVolts is null) draft.Miss("volts at the heater's plug while the glow pin draws");
            if (heater.StartVolts is not { } volts || batteries.Count == 0)
            {
                yield return draft.CannotTell("the volts at its plug are not known");
                continue;
            }
            var nominal = Nominal(batteries.Min());
            yield return draft.Compare(Span.Exactly(nominal * (1 - VoltageDrop.CriticalFraction)), Doubt.Meter(volts, draft), "V",
                string.Create(CultureInfo.InvariantCulture, $"{volts.Value:0.0} V at the plug of a {nominal:0} V system"), "battery and plug at the same moment, glow pin drawing");
        }
    }

    // a lithium iron phosphate battery is sold as 12.8 V, the system is called 12 V all the same
    private static double Nominal(double volts) => volts < 18 ? 12 : volts < 36 ? 24 : 48;
}
