using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Screws, rivets and rivet nuts in thin sheet.</summary>
internal static class InSheet
{
    public static SoundFixing Of(Joint joint, FixingSize size, UnderHead under, Spread sheetMm, WorthDraft draft)
    {
        var strength = BodySteel.TensileMPa;
        var d = size.DiameterMm;
        var far = WorthDraft.At(end => joint.Type is FixingType.RivetNut or FixingType.Rivet
            ? SheetScrewAisi.BearingN(end(sheetMm), end(strength), d)
            : Math.Min(SheetScrewAisi.BearingN(end(sheetMm), end(strength), d), SheetScrewAisi.TiltingN(end(sheetMm), end(strength), d)));
        var near = under.Of.IsMetal
            ? WorthDraft.At(end => SheetScrewAisi.BearingN(Math.Max(0.3, end(under.ThickMm)), end(strength), d))
            : WorthDraft.At(end => d * end(under.ThickMm) * DowelBearing.OfMPa(end(under.Of.SpecificGravity), d));
        var shear = WorthDraft.Scattered(Spread.Least(far, near), LowerTwentieth.SheetVariation);
        var (outN, gives) = Out(joint, d, sheetMm, ref shear, draft);
        var over = HeadThrough.Of(under, size.HeadMm(joint));
        return new(Spread.Least(outN, over), shear, Sharing.Straight, over.Likely < outN.Likely ? "the head pulls through" : gives, FixingSlip.InSheetNPerMm.Likely, 2 * FixingSlip.InSheetNPerMm.Likely);
    }

    private static (Spread, string) Out(Joint joint, double d, Spread sheetMm, ref Spread shear, WorthDraft draft)
    {
        switch (joint.Type)
        {
            case FixingType.RivetNut:
                draft.Assume("assumed: a rivet nut leaves thin sheet at 2 to 8 kN");
                return (RivetNut.OutOfSheetN * Math.Min(1, d / 6), "the rivet nut pulls out");
            case FixingType.Rivet:
                draft.Assume("assumed: open-end rivets with aluminium body, their make not known");
                double[] tabled = [3.2, 4.0, 4.8];
                var rivet = BlindRivet.Of(tabled.Last(t => t <= Math.Max(3.2, d) + 0.05), BlindRivet.Body.Aluminium);
                shear = Spread.Least(shear, rivet.ShearN);
                var through = WorthDraft.At(end => SheetScrewAisi.PullOverN(SheetScrewAisi.Edition.S100Of2016, end(sheetMm), end(BodySteel.TensileMPa), 1.6 * d));
                return (Spread.Least(rivet.PullN, WorthDraft.Scattered(through, LowerTwentieth.SheetVariation)), "the rivet pulls out");
            default:
                var strips = WorthDraft.At(end => SheetScrewAisi.PullOutN(SheetScrewAisi.Edition.S100Of2016, end(sheetMm), end(BodySteel.TensileMPa), d));
                return (WorthDraft.Scattered(strips, LowerTwentieth.SheetVariation), "the thread strips out of the sheet");
        }
    }
}
