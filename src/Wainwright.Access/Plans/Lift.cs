using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Labour;

namespace Wainwright.Access;

/// <summary>A load against what people may lift.</summary>
/// <param name="MassKg">Its mass.</param>
/// <param name="OneKg">What one person may lift of its size from where it lies [kg]: an upper bound in a van, where people kneel and twist.</param>
/// <param name="TwoKg">What two may lift together, one at each end [kg]; an upper bound too.</param>
/// <param name="People">How many are wanted for it; absent when three are not enough.</param>
/// <param name="Words">The same in words with its sources.</param>
public sealed record Lift(double MassKg, double OneKg, double TwoKg, int? People, string Words)
{
    // knuckle height of a standing person in the lifting equation
    private const double CarryHeightMm = 750;
    // hands at the end of a load held by two: as close as the equation allows a small box, 25 cm deep
    private const double EndDepthMm = 250;

    /// <summary>A load of known mass and size; nothing where either is not known, or it is loose goods, cans excepted: those are lifted with what is in them.</summary>
    internal static Lift? Of(IReadOnlyList<Part> load, double onePersonKg)
    {
        if ((load[0].LooseGoods && !Can.Is(load[0])) || load.Any(p => p.EmptyKg is null)) return null;
        var bounds = load.Select(p => p.Bounds()).OfType<(Place Low, Place High)>().ToList();
        if (bounds.Count == 0) return null;
        var mass = load.Sum(p => p.EmptyKg!.Value.Value + Can.FillKg(p));
        var depth = Math.Min(bounds.Max(b => b.High.XMm) - bounds.Min(b => b.Low.XMm), bounds.Max(b => b.High.YMm) - bounds.Min(b => b.Low.YMm));
        var hands = (bounds.Min(b => b.Low.ZMm) + bounds.Max(b => b.High.ZMm)) / 2;
        var one = Math.Min(onePersonKg, Recommended(depth, hands));
        var each = Math.Min(onePersonKg, Recommended(EndDepthMm, hands));
        var two = each > 0 ? TeamLift.Of(new([each, each])).TogetherKg : 0;
        int? people = mass <= one ? 1 : mass <= two ? 2 : each > 0 && mass <= TeamLift.Of(new([each, each, each])).TogetherKg ? 3 : null;
        return new(mass, one, two, people, string.Create(CultureInfo.InvariantCulture,
            $"{mass:0.#} kg; one person at most {one:0.#} kg from there, two together {two:0.#} kg ({LiftingEquation.Basis.Source}; {TeamLift.Basis.Source}; not more than the workshop's {onePersonKg:0.#} kg each). In a van, bent and kneeling, the true limits are lower."));
    }

    /// <summary>Hands at the middle of the load, straight ahead, now and then, hand-holds less than good.</summary>
    private static double Recommended(double depthMm, double handsMm) => LiftingEquation.Of(new(
        (handsMm >= 250 ? 200 : 250) + depthMm / 2, Math.Max(0, handsMm), Math.Abs(handsMm - CarryHeightMm), 0, 1, LiftingEquation.Grip.Fair, Cramped: true)).RecommendedKg;
}
