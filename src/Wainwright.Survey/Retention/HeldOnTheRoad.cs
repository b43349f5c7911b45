using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Every heavy or overhead part stays where it is: in every day's driving, and in the crash case that was chosen.</summary>
public static class HeldOnTheRoad
{
    // lighter parts are in wain hold; here only what maims: rule of this project
    private const double HeavyKg = 10, HeavyOverheadKg = 3;

    /// <summary>One check for each such part and kind of load case.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var who = new WhoHolds(job);
        var worth = new JointWorths(job);
        var pulled = PulledPart.Of(job).ToLookup(p => p.Part.Id);
        var cases = Holding.Chosen(job, []);
        foreach (var part in job.Parts.Where(p => Asked(p, who, pulled)))
        {
            var held = Holding.Quick(job, part, cases, who, worth, pulled);
            foreach (var kind in cases.GroupBy(AskedG.IsDriving).OrderBy(k => k.Key ? 0 : 1))
                yield return Judged(job, held, [.. kind], kind.Key, worth, who);
        }
    }

    private static bool Asked(Part part, WhoHolds who, ILookup<PartId, PulledPart> pulled)
    {
        if (part.System is PartSystem.Floor or PartSystem.Insulation || (part.System == PartSystem.Lining && !part.Overhead)) return false;
        // where nobody recorded how it is held, wain hold and the overhead check say so; a loose bag is no fitted part
        if (part.LooseGoods || (!who.Of(part.Id).Any() && part.StandsOn.Count == 0)) return false;
        return pulled.Contains(part.Id) || Laden.Of(part) is not { } laden || laden.Kg.High >= (part.Overhead ? HeavyOverheadKg : HeavyKg);
    }

    private static Check Judged(Job job, PartHolding held, IReadOnlyList<LoadCase> cases, bool driving, JointWorths worth, WhoHolds who)
    {
        var part = held.Part;
        var answer = held.Cases.Where(c => cases.Contains(c.Case)).OrderBy(c => c.Verdict switch { Verdict.FallsShort => 0, Verdict.CannotTell => 1, _ => 2 }).FirstOrDefault();
        var load = AskedG.Case(answer?.Case ?? cases[0]);
        var basis = new Basis($"{load.Source}; limit analysis: {LoadFactor.Basis.Source}", LoadFactor.Basis.Assumes, $"{JobHolding.Caution} {load.DoesNotProve}", load.How);
        var (id, claim) = driving ? ("held-in-driving", "It stays in place under braking, swerving and rough road, and nothing is left bent") : ("held-in-crash", "It does not come loose in the crash case that was chosen");
        var draft = new Draft(id, claim, part.Subject(), basis, load.Title, driving ? Urgency.U0 : Urgency.U2, Loaded(part) ? Use.DriveLoaded : Use.Drive)
        {
            Remedy = "unload it until it is held; wain hold --fix names the cheapest fixings that would hold it",
            Faults = Faults(part, who),
        };
        draft.Use("mass with what it holds", part.EmptyKg is null ? null : string.Create(CultureInfo.InvariantCulture, $"{held.OwnKg:0.#} kg"), $"parts[{part.Id}].massKg", part.EmptyKg?.Known ?? part.Known);
        foreach (var joint in who.Of(part.Id)) draft.Use(JointWords.Of(joint), joint.StateCount is { } n ? $"{n} {joint.State}" : $"{joint.State}", $"joints[{joint.Id}]", joint.Known);
        foreach (var assumed in held.Assumed) draft.Assume(assumed);
        if (answer is null) return draft.CannotTell(held.Because, held.NextLook ?? $"how {part.Name} is held");
        // the sentence of this kind of case, not of the worst of all
        var because = Worded.Of(held, job, cases, worth).Because;
        var check = answer.Verdict switch
        {
            Verdict.Holds => draft.Holds(because),
            Verdict.FallsShort => draft.FallsShort(because),
            _ => draft.CannotTell(because, Worded.Of(held, job, cases, worth).NextLook ?? $"a pull on {part.Name} by hand gauge"),
        };
        if (answer.FactorG is not { } g || !double.IsFinite(g.High) || !double.IsFinite(g.Low)) return check;
        var asked = Span.Exactly(answer.DemandG);
        return check with { Demand = asked, Capacity = g, Unit = "g", Margin = Check.MarginOf(asked, g) };
    }

    private static bool Loaded(Part part) => part.Contents.Count > 0 || part.Devices.Any(d => d is Tank or WaterHeater);

    private static List<string> Faults(Part part, WhoHolds who)
    {
        var joints = who.Of(part.Id).ToList();
        List<string> faults = [];
        if (part.Overhead && part.System == PartSystem.Furniture) faults.Add("attach-01");
        if (part.Overhead && part.System == PartSystem.Lining) faults.Add("ceiling-01");
        if (joints.Exists(j => j.Type == FixingType.RivetNut)) faults.Add("attach-02");
        if (joints.Exists(j => j.Type == FixingType.SelfDrillingScrew)) faults.Add("attach-03");
        if (part.Devices.Any(d => d is Tank)) faults.Add("water-06");
        if (part.Devices.Any(d => d is Battery)) faults.Add("dc-09");
        if (part.System == PartSystem.Appliance) faults.Add("furniture-02");
        if (part.Devices.Any(d => d is GasStore) && part.Contents.Count + part.Solids.Count(s => s is CylinderSolid) > 0) faults.Add("gas-09");
        if (joints.Exists(j => j.Type == FixingType.Pin)) faults.Add("furniture-04");
        if (joints.Exists(j => j is { Type: FixingType.Bolt, Base: { } b } && b.Contains("floor plate", StringComparison.OrdinalIgnoreCase))) faults.Add("furniture-06");
        return faults;
    }
}
