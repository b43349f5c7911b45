using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Electrics;

namespace Wainwright.Survey.Electrics;

/// <summary>The fuse of a DC cable is no larger than the cable can carry.</summary>
public static class FuseGuardsItsCable
{
    /// <summary>One check for each DC cable whose conductor and fuse are known, and one for all the others together.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        var cables = job.Lines.Where(l => l is { Medium: Medium.Dc, Build: LineBuild.Cable }).Select(l => (Line: l, RatedA: Rating(job, l))).ToList();
        foreach (var (line, rated) in cables)
            if (line.ConductorMm2 is { } mm2 && rated is { } amp) yield return Of(job, line, mm2, amp);

        var unknown = cables.Where(c => c.Line.ConductorMm2 is null || c.RatedA is null).Select(c => c.Line).ToList();
        if (unknown.Count == 0) yield break;
        var rest = Begun(job.Van());
        foreach (var line in unknown.Take(Named))
        {
            rest.Use($"{line.Name}: conductor", line.ConductorMm2, "mm²", $"lines[{line.Id}].conductorMm2", line.Known);
            rest.Use($"{line.Name}: guarded by", line.ProtectedBy?.Text, $"lines[{line.Id}].protectedBy", line.Known);
            if (line.ConductorMm2 is null) rest.Miss($"conductor size of {line.Name}, from its sheath or by calliper");
            rest.Miss(line.ProtectedBy is null ? $"the fuse that guards {line.Name}, traced from the battery; none if it is a return to the negative" : $"rating of the fuse that guards {line.Name}");
        }
        if (unknown.Count > Named) rest.Miss(string.Create(CultureInfo.InvariantCulture, $"the same of {unknown.Count - Named} more cables"));
        yield return rest.CannotTell(string.Create(CultureInfo.InvariantCulture, $"{unknown.Count} of {cables.Count} DC cables: conductor or fuse not known"));
    }

    private const int Named = 6;

    private static double? Rating(Job job, Line line) =>
        job.Parts.FirstOrDefault(p => p.Id == line.ProtectedBy)?.Devices.OfType<Overcurrent>().FirstOrDefault()?.RatedA;

    private static Draft Begun(Subject subject) => new(
        "fuse-guards-cable", "The fuse is no larger than the cable can carry", subject, Ampacity.Basis, "33 CFR 183.425 table 5 and 183.455", Urgency.U0, Use.Dc)
    {
        Remedy = "fuse out; fit one that the cable can carry, or a thicker cable",
        Faults = ["dc-01", "dc-02"],
    };

    private static Check Of(Job job, Line line, Measured mm2, double amp)
    {
        var draft = Begun(line.Subject());
        var device = job.Parts.First(p => p.Id == line.ProtectedBy);
        draft.Assume("insulation rating not recorded: 60 °C at worst, 105 °C with the rule's 150 % at best");
        draft.Use("conductor", mm2, "mm²", $"lines[{line.Id}].conductorMm2", line.Known);
        draft.Use("fuse rating", amp, "A", $"parts[{device.Id}].overcurrent.ratedA", device.Known);
        var gauges = WireGauge.Stocked.Where(g => WireGauge.AreaMm2(g) <= 1.001 * mm2.Value).ToList();
        if (gauges.Count == 0) return draft.CannotTell("the cable is thinner than any that the table holds", $"a table for {mm2.Value.ToString(CultureInfo.InvariantCulture)} mm², or a thicker cable");
        // the next smaller gauge of the table stands for a metric size: never a larger one
        var gauge = gauges[^1];
        var carries = new Span(Ampacity.Of(new(gauge, 60)).Amp, Ampacity.Of(new(gauge, 75)).Amp, FuseRule.LargestAmp(Ampacity.Of(new(gauge, 105)).Amp));
        return draft.Compare(Span.Exactly(amp), carries, "A",
            string.Create(CultureInfo.InvariantCulture, $"{amp:0.#} A fuse on {mm2.Value:0.##} mm², which carries {carries.Low:0} A at worst"), "insulation temperature printed on the cable, and what runs beside it");
    }
}
