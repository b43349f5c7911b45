using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Electrics;

namespace Wainwright.Survey.Electrics;

/// <summary>Insulation of the mains circuits resists at least as much as the wiring regulations ask.</summary>
public static class InsulationHolds
{
    /// <summary>One check for the van when it has mains.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        var mains = job.Parts.Where(p => p.Devices.Any(d => d is MainsInlet or ResidualCurrentDevice or Outlet { Medium: Medium.Mains })).ToList();
        if (mains.Count == 0) yield break;
        var volts = mains.SelectMany(p => p.Devices).Select(d => d switch { MainsInlet i => i.Volts, Outlet { Medium: Medium.Mains } o => o.Volts, _ => 0 }).Max();
        var rule = InsulationResistance.Of(new(volts > 0 ? volts : 230, ExtraLowVoltage: false));
        var draft = new Draft("mains-insulation", "The insulation of the mains circuits holds", job.Van(), InsulationResistance.Basis,
            string.Create(CultureInfo.InvariantCulture, $"BS 7671 table 64: {rule.LeastMegohm:0.#} MΩ at {rule.TestVoltDc:0} V DC"), Urgency.U0, Use.Mains)
        {
            Remedy = "do not use mains; find the damp or damaged circuit by halves; a qualified electrician mends and certifies it",
            Faults = ["mains-06", "mains-09"],
        };
        var readings = job.Standing().Where(r => r.Quantity == Quantity.Insulation).ToList();
        if (readings.Count == 0)
        {
            draft.Use("insulation resistance", null, "readings", Known.NotInspected);
            yield return draft.CannotTell("nobody has measured it", "insulation resistance of the dead circuits, electronics unplugged");
            yield break;
        }
        foreach (var r in readings) draft.Use(r.What ?? "insulation resistance", r.Value, $"MΩ{(r.AtLeast ? " or more" : "")}", $"readings[{r.Id}]", Known.Measured);
        // the worst reading speaks: one good circuit does not excuse a bad one
        var worst = readings.MinBy(r => r.Value.Value)!;
        var found = Doubt.Meter(worst.Value, draft);
        if (worst.AtLeast) found = found with { High = double.PositiveInfinity };
        if (found.Likely < InsulationResistance.InvestigateBelowMegohm && found.Low >= rule.LeastMegohm)
            draft.Assume("below 2 MΩ a second look is due: note damp and warmth, measure again dry");
        yield return draft.Compare(Span.Exactly(rule.LeastMegohm), found, "MΩ", string.Create(CultureInfo.InvariantCulture, $"lowest reading {worst.Value.Value:0.##} MΩ"), "the circuit again, dry and with loads unplugged");
    }
}
