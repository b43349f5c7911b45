using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Finds the measures that decide a plan: one load and one axis at a time, a millimetre more or less until it goes or does not.</summary>
/// <remarks>By slides and quarter turns; a load that goes tilted or folded, and the reach of a hand, are not looked at.</remarks>
internal sealed class Deciding(Scene scene, double tapeMm)
{
    private readonly Shell shell = VanShell.ForParts(scene.Job.Vehicle);

    public IReadOnlyList<MeasureAgain> Of(RemovalPlan plan)
    {
        var index = ItemKey.Index(scene);
        var (done, found) = (new ItemSet(scene.Items.Count), new List<MeasureAgain>());
        foreach (var item in plan.Order.Select(k => index[k]))
        {
            if (scene.Items[item] is TakeOut { Part.FoldsTo: null, Part.Outside: false } or TakePiece)
                foreach (var axis in Enum.GetValues<Axis>())
                {
                    if (Grown(item, done, axis) is { } tight) found.Add(tight);
                    if (Shrunk(item, done, axis, plan) is { } loose) found.Add(loose);
                }
            done.Add(item);
        }
        return [.. found.OrderBy(m => Math.Abs(m.SpareMm)).ThenBy(m => m.Part.Text, StringComparer.Ordinal)];
    }

    /// <summary>Whether the load no longer goes when it is larger within its tolerance, and how much larger it may be.</summary>
    private MeasureAgain? Grown(int item, ItemSet done, Axis axis)
    {
        var most = ToleranceMm(item);
        if (most < 1 || Goes(item, done, axis, 0) is Stuck || Goes(item, done, axis, most) is not Stuck stuck) return null;
        var spare = Enumerable.Range(0, most).Last(mm => Goes(item, done, axis, mm) is WayOut);
        return Told(item, axis, spare, Parts(stuck.Wall), $"goes with {spare} mm to spare");
    }

    /// <summary>Whether the load would pass a part that now comes out for it, were it smaller within its tolerance.</summary>
    private MeasureAgain? Shrunk(int item, ItemSet done, Axis axis, RemovalPlan plan)
    {
        var most = ToleranceMm(item);
        foreach (var passed in plan.Steps.Where(s => s.Why is { Reason: OrderReason.Geometry } && s.Why.ForPart == PartOf(item).Id && s.Kind == StepKind.TakeOut).Select(s => scene.OutItem(s.Part!.Value)).Where(done.Has))
        {
            var kept = done.Without(passed);
            if (most < 1 || Goes(item, kept, axis, 0) is WayOut || Goes(item, kept, axis, -most) is not WayOut) continue;
            var less = Enumerable.Range(1, most).First(mm => Goes(item, kept, axis, -mm) is WayOut);
            return Told(item, axis, -less, [((IsOut)scene.Items[passed]).Part], $"would pass {Wording.Name(((IsOut)scene.Items[passed]).Part)} were it {less} mm less");
        }
        return null;
    }

    private Answer Goes(int item, ItemSet gone, Axis axis, int moreMm)
    {
        var (load, solids) = scene.Items[item] is TakePiece piece ? ([piece.Part], piece.Solids) : (((TakeOut)scene.Items[item]).Load.ToList(), (IReadOnlyList<Solid>)[.. ((TakeOut)scene.Items[item]).Load.Where(p => !p.Outside).SelectMany(p => p.Solids)]);
        var boxes = PartBody.Of(solids).Outer.Select(b => Stretched(b, (int)axis, moreMm)).Where(b => !b.IsEmpty).ToList();
        if (boxes.Count == 0) return new WayOut([], new(gone.Size), null);
        var others = scene.Standing.SelectMany(p => p.Solids.Where(s => !solids.Contains(s)).GroupBy(s => scene.OutItem(p, s))
            .Where(g => !load.Contains(p) || load.Count == 1).Select(g => new Obstacle(g.Key, PartBody.Of(g).Outer))).ToList();
        // what stands against it as found still does when it is larger
        var fit = new Fit(scene.Options.ClearanceMm, scene.Options.ShaveMm + Math.Max(0, moreMm));
        return new Mover(boxes, others, shell, fit, Moves.SlidesAndQuarterTurns).Ask(gone);
    }

    private static Box Stretched(Box box, int axis, int mm)
    {
        // half on each side, the odd millimetre at the far one
        var (low, high) = (mm >= 0 ? mm / 2 : -(-mm / 2), mm >= 0 ? mm - mm / 2 : mm + -mm / 2);
        return axis switch
        {
            0 => box with { X0 = box.X0 - low, X1 = box.X1 + high },
            1 => box with { Y0 = box.Y0 - low, Y1 = box.Y1 + high },
            _ => box with { Z0 = box.Z0 - low, Z1 = box.Z1 + high },
        };
    }

    private Part PartOf(int item) => Wording.PartOf(scene, scene.Items[item])!;

    private int ToleranceMm(int item) => (int)Math.Ceiling(PartOf(item).Solids.Max(s => s.PlusMinusMm ?? tapeMm));

    private List<Part> Parts(ItemSet wall) => [.. wall.Select(scene.PartBehind).OfType<Part>().Distinct()];

    private MeasureAgain Told(int item, Axis axis, int spare, List<Part> beside, string what)
    {
        var part = PartOf(item);
        var bounds = part.Bounds()!.Value;
        var recorded = Sized.Along(bounds.High - bounds.Low, axis);
        var past = beside.Count > 0 ? string.Join(", ", beside.Take(3).Select(Wording.Name)) : "the van itself";
        return new(part.Id, axis, recorded, spare, [.. beside.Select(p => p.Id)], string.Create(CultureInfo.InvariantCulture,
            $"Measure {Sized.Measure(axis)} of {Wording.Name(part)} again, to the mm (recorded {recorded:0.#}): it {what}; so does the gap it goes through at {past}."));
    }
}
