using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>What stands on an open shelf stays there in every day's driving.</summary>
public static class ShelfGoodsStay
{
    private const double TownMPerS = 50 / 3.6;
    private static readonly Span UsualFriction = new(0.2, 0.4, 0.6);

    /// <summary>One check for each shelf with an open side: that side that is worst.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var cases = Holding.Chosen(job, []).Where(AskedG.IsDriving).DefaultIfEmpty(LoadCase.DrivingLightVan).ToList();
        foreach (var part in job.Parts)
            foreach (var shelf in part.Shelves.Where(s => s.OpenSides.Count > 0))
                if (cases.SelectMany(c => shelf.OpenSides.Select(side => (Case: AskedG.Case(c), Side: side, G: Demand.Added(AskedG.Case(c), PullWay.Of(side))))).Where(a => a.G is > 0).OrderByDescending(a => a.G).FirstOrDefault() is { G: { } g } asked)
                    yield return Of(part, shelf, asked.Case, asked.Side, g);
    }

    private static Check Of(Part part, OpenShelf shelf, AccelerationCase load, Direction side, double g)
    {
        var basis = new Basis($"{load.Source}; {ShelfLip.Basis.Source}", ShelfLip.Basis.Assumes, $"{ShelfLip.Basis.Caution} {JobHolding.Caution}", load.How);
        var draft = new Draft("shelf-goods-stay", $"What stands on the {shelf.Name} stays there in driving", part.Subject(), basis, load.Title, Urgency.U1, Use.DriveLoaded)
        {
            Remedy = "a lip or bar as high as the middle of the tallest thing, or a net; empty it until then",
            Faults = ["furniture-01"],
        };
        var field = $"parts[{part.Id}].shelves[{shelf.Name}]";
        draft.Use("lip", shelf.LipMm, "mm", $"{field}.lipMm", part.Known);
        draft.Use("middle of the tallest thing above the shelf", shelf.CentreMm, "mm", $"{field}.centreMm", part.Known);
        draft.Use("depth of its foot", shelf.FootMm, "mm", $"{field}.footMm", part.Known);
        if (shelf.LipMm is null) draft.Miss($"height of the lip of the {shelf.Name}, 0 when it has none");
        if (shelf.CentreMm is null) draft.Miss($"height of the middle of the tallest thing on the {shelf.Name}");
        if (shelf.FootMm is null) draft.Miss($"depth of the foot of the tallest thing on the {shelf.Name}");
        if (shelf.Friction is null) draft.Assume("friction 0.2 to 0.6 (common practice, no source)");
        var flies = shelf.HeaviestKg is { } heavy ? LooseEnergy.Of(heavy.Value, TownMPerS) : (LooseEnergy.Result?)null;
        var energy = flies is { } e ? string.Create(CultureInfo.InvariantCulture, $"; flying free at 50 km/h its heaviest thing brings {e.EnergyJ:0} J, a fall from {e.DropMm / 1000:0.0} m") : "";
        var asked = string.Create(CultureInfo.InvariantCulture, $"{g:0.0#} g asked {side.ToString().ToLowerInvariant()}");
        if (!draft.IsComplete) return draft.CannotTell($"{asked}; not everything is measured{energy}");
        var friction = shelf.Friction is { } mu ? Span.Of(mu.Value, mu.PlusMinus ?? 0.1) : UsualFriction;
        var lip = Tape(shelf.LipMm!.Value);
        var centre = Tape(shelf.CentreMm!.Value);
        var foot = Tape(shelf.FootMm!.Value);
        double Leaves(double f, double c, double b, double l) => ShelfLip.Of(new(Math.Max(0, f), Math.Max(1, c), Math.Max(1, b), Math.Max(0, l))).LeavesAtG;
        // no lip is no lip: a tape does not put one there
        var none = shelf.LipMm.Value.Value == 0;
        var leaves = new Span(Leaves(friction.Low, centre.High, foot.Low, none ? 0 : lip.Low), Leaves(friction.Likely, centre.Likely, foot.Likely, none ? 0 : lip.Likely), Leaves(friction.High, centre.Low, foot.High, none ? 0 : lip.High));
        var words = $"{(none ? "no lip" : string.Create(CultureInfo.InvariantCulture, $"lip {lip.Likely:0} mm"))}: {(double.IsFinite(leaves.Low) ? $"it leaves at {Worded.G(leaves)}" : "it stays, however hard it is thrown")}, {asked}{energy}";
        if (!double.IsFinite(leaves.Low)) return draft.Holds(words);
        if (double.IsFinite(leaves.High)) return draft.Compare(Span.Exactly(g), leaves, "g", words, $"lip, foot and friction of the {shelf.Name}");
        return leaves.Low >= g ? draft.Holds(words) : draft.CannotTell($"{words}: within the doubt of the measurement", $"measure closer: lip of the {shelf.Name} and the middle of the tallest thing");
    }

    private static Span Tape(Measured mm) => Span.Of(mm.Value, mm.PlusMinus ?? 5);
}
