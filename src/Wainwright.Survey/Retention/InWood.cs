using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Screws, brads and staples that bite in wood or board.</summary>
internal static class InWood
{
    // tests of plywood fall below the equation for solid wood: Ahn 2021 (abstract); by how much is common practice, no source
    private static readonly Spread PlyShare = new(0.6, 0.85, 1);

    public static SoundFixing Screw(Joint joint, FixingSize size, Substrate into, UnderHead under, WorthDraft draft)
    {
        var depth = DepthMm(joint, size, under, draft);
        var d = size.DiameterMm;
        var kind = joint.Type == FixingType.SelfDrillingScrew ? WoodFixing.SheetMetalScrew : WoodFixing.WoodScrew;
        var mean = WorthDraft.At(end => WoodHandbookWithdrawal.Of(new(kind, end(into.SpecificGravity), d, end(depth))).MeanUltimateN);
        var drawn = WorthDraft.Scattered(mean * PlyShare, LowerTwentieth.WoodPullVariation);
        var over = HeadThrough.Of(under, size.HeadMm(joint));
        var yield = ScrewSteel.BendingYieldMPa(kind, d);
        var across = WorthDraft.At(end => NdsLateral.Of(new(ScrewSteel.RootMm(kind, d), end(depth), Math.Max(0.5, end(under.ThickMm)), Fe(end(into.SpecificGravity), d), under.Of.IsMetal ? DowelBearing.ThinSteelMPa : Fe(end(under.Of.SpecificGravity), d), yield) { NominalMm = d }).YieldN);
        return new(Spread.Least(drawn, over), WorthDraft.Scattered(across, LowerTwentieth.WoodShearVariation), Sharing.Round,
            over.Likely < drawn.Likely ? "the head pulls through" : "the thread draws out",
            FixingSlip.ScrewOutNPerMm(d, depth.Likely), FixingSlip.ScrewAcrossNPerMm(1_000 * into.SpecificGravity.Likely, d, under.Of.IsMetal));
    }

    /// <summary>Brads and staples: smooth legs. Wood that dries or moves lets go of them, so at worst nothing is counted straight out.</summary>
    public static SoundFixing Nailed(Joint joint, FixingSize size, Substrate into, UnderHead under, WorthDraft draft)
    {
        var d = size.DiameterMm;
        var depth = joint.PenetrationMm is { } mm ? FixingSize.Known(mm) : draft.Usual(new(6, 12, 20), "brads or staples 6 to 20 mm in the wood", "one brad or staple pulled and measured");
        draft.Assume("brads and staples: nothing at worst, for wood that has dried, moved or been wet lets go of smooth legs");
        draft.Look("what else holds it: glue, or a screw that reaches a batten", 6);
        var held = under.Of.IsMetal ? into.SpecificGravity : under.Of.SpecificGravity;
        var mean = WorthDraft.At(end => BradsAndStaples.BradMeanUltimateN(end(into.SpecificGravity), end(held), d, end(depth), end(under.ThickMm), false));
        var across = WorthDraft.At(end => NdsLateral.Of(new(d, end(depth), Math.Max(0.5, end(under.ThickMm)), Fe(end(into.SpecificGravity), d), Fe(end(held), d), ScrewSteel.BendingYieldMPa(WoodFixing.SmoothNail, d))).YieldN);
        var legs = joint.Type == FixingType.Staple ? 2.0 : 1;
        // a staple's crown holds the board; its legs are two nails
        var pull = joint.Type == FixingType.Staple ? WorthDraft.At(end => BradsAndStaples.StapleN(WoodHandbookWithdrawal.Of(new(WoodFixing.SmoothNail, end(into.SpecificGravity), d, end(depth))).MeanUltimateN, 0)) : mean;
        var scattered = WorthDraft.Scattered(pull, LowerTwentieth.WoodPullVariation);
        return new(scattered with { Low = 0 }, WorthDraft.Scattered(across * legs, LowerTwentieth.WoodShearVariation), Sharing.Straight, joint.Type == FixingType.Staple ? "the staple draws out" : "the brad slips out",
            FixingSlip.NailAcrossNPerMm(1_000 * into.SpecificGravity.Likely, d), FixingSlip.NailAcrossNPerMm(1_000 * into.SpecificGravity.Likely, d));
    }

    private static Spread DepthMm(Joint joint, FixingSize size, UnderHead under, WorthDraft draft)
    {
        var most = joint.BaseMm is { } b ? FixingSize.Known(b) : new Spread(60, 60, 60);
        if (joint.PenetrationMm is { } mm) return Spread.Least(FixingSize.Known(mm), most);
        if (size.LengthMm is not { } length) return Spread.Least(draft.Usual(new(6, 12, 25), "6 to 25 mm of thread in the wood", "one screw pulled and measured"), most);
        // the point does not bite; where a bracket or ear is drawn with its part, the head may stand on thinner stuff than was taken
        var (least, likely) = (Math.Max(1, length - under.ThickMm.High - 3), Math.Max(1, length - under.ThickMm.Likely - 2));
        var depth = Spread.Least(new(least, likely, Math.Max(likely, length - Math.Min(under.ThickMm.Low, 2))), most);
        draft.Assume(string.Create(CultureInfo.InvariantCulture, $"assumed: {depth.Low:0} to {depth.High:0} mm of the screw's {length:0} mm in the wood"));
        draft.Look("one screw pulled, and the thread that was in the wood measured", Math.Max(1, depth.High / depth.Low));
        return depth;
    }

    private static double Fe(double gravity, double diameterMm) => DowelBearing.OfMPa(gravity, diameterMm);
}

/// <summary>A head or washer drawn through what it holds.</summary>
internal static class HeadThrough
{
    // mean breaking load over a US working value: 5 is what the Wood Handbook has for screws and nails drawn out; for heads no source
    private const double LowOverWorking = 3, LikelyOverWorking = 5, HighOverWorking = 8;

    /// <summary>Board: the lesser of two practices, the European one for its density, the US one for its thickness. Sheet: pull-over.</summary>
    public static Spread Of(UnderHead under, Spread headMm)
    {
        if (under.Of.IsMetal)
        {
            var over = WorthDraft.At(end => SheetScrewAisi.PullOverN(SheetScrewAisi.Edition.S100Of2016, Math.Max(0.3, end(under.ThickMm)), end(BodySteel.TensileMPa), end(headMm)));
            return WorthDraft.Scattered(over, LowerTwentieth.SheetVariation);
        }
        double One(Func<Spread, double> end, double overWorking, double overCharacteristic)
        {
            var (gravity, head) = (end(under.Of.SpecificGravity), end(headMm));
            return Math.Min(overCharacteristic * HeadPullThrough.CharacteristicN(WoodDensity.CharacteristicKgPerM3(gravity), head), overWorking * HeadPullThrough.AllowableN(gravity, head, Math.Max(0.5, end(under.ThickMm))));
        }
        return new(One(s => s.Low, LowOverWorking, 1), One(s => s.Likely, LikelyOverWorking, 1.3), One(s => s.High, HighOverWorking, 1.8));
    }
}
