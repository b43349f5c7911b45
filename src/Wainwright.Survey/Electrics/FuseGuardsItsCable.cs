using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Electrics;

namespace Wainwright.Survey.Electrics;

/// <summary>The fuse of a DC cable is no larger than the cable can carry.</summary>
public static class FuseGuardsItsCable
{
    /// <summary>One check for each DC cable whose conductor or fuse is recorded.</summary>
    public static IEnumerable<Check> Of(Job job) =>
        job.Lines.Where(l => l is { Medium: Medium.Dc, Build: LineBuild.Cable } && (l.ConductorMm2 is not null || l.ProtectedBy is not null)).Select(l => Of(job, l));

    private static Check Of(Job job, Line line)
    {
        var draft = new Draft("fuse-guards-cable", "The fuse is no larger than the cable can carry", line.Subject(), Ampacity.Basis,
            "33 CFR 183.425 table 5 and 183.455", Urgency.U0, Use.Dc)
        {
            Remedy = "fuse out; fit one that the cable can carry, or a thicker cable",
            Faults = ["dc-01", "dc-02"],
        };
        draft.Assume("insulation rating not recorded: 60 °C at worst, 105 °C with the rule's 150 % at best");
        var device = job.Parts.FirstOrDefault(p => p.Id == line.ProtectedBy);
        var rated = device?.Devices.OfType<Overcurrent>().FirstOrDefault()?.RatedA;
        draft.Use("conductor", line.ConductorMm2, "mm²", $"lines[{line.Id}].conductorMm2", line.Known);
        draft.Use("guarded by", device?.Name, $"lines[{line.Id}].protectedBy", line.Known);
        draft.Use("fuse rating", rated, "A", $"parts[{line.ProtectedBy}].overcurrent.ratedA", device?.Known ?? Known.NotInspected);
        if (line.ConductorMm2 is null) draft.Miss($"conductor size of {line.Name}, from its sheath or by calliper");
        if (line.ProtectedBy is null) draft.Miss($"the fuse that guards {line.Name}, traced from the battery");
        else if (rated is null) draft.Miss($"rating of the fuse that guards {line.Name}");
        if (line.ConductorMm2 is not { } mm2 || rated is not { } amp) return draft.CannotTell("cable or fuse is not known");

        var gauges = WireGauge.Stocked.Where(g => WireGauge.AreaMm2(g) <= 1.001 * mm2.Value).ToList();
        if (gauges.Count == 0) return draft.CannotTell("the cable is thinner than any that the table holds", $"a table for {mm2.Value.ToString(CultureInfo.InvariantCulture)} mm², or a thicker cable");
        // the next smaller gauge of the table stands for a metric size: never a larger one
        var gauge = gauges[^1];
        var carries = new Span(Ampacity.Of(new(gauge, 60)).Amp, Ampacity.Of(new(gauge, 75)).Amp, FuseRule.LargestAmp(Ampacity.Of(new(gauge, 105)).Amp));
        return draft.Compare(Span.Exactly(amp), carries, "A",
            string.Create(CultureInfo.InvariantCulture, $"{amp:0.#} A fuse on {mm2.Value:0.##} mm², which carries {carries.Low:0} A at worst"), "insulation temperature printed on the cable, and what runs beside it");
    }
}
