using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Bolts and hand knobs: through, into a captive nut, an insert or a thread.</summary>
internal static class Bolted
{
    public static SoundFixing Of(Joint joint, FixingSize size, Substrate into, UnderHead under, WorthDraft draft)
    {
        var bolt = BoltN(joint, size, draft);
        var head = size.HeadMm(joint);
        var d = size.DiameterMm;
        // in wood the nut's washer, tee or insert has to pull through what it sits in
        var thick = joint.BaseMm is { } mm ? FixingSize.Known(mm) : into.IsMetal ? draft.Usual(BodySteel.ThicknessMm(into.Sheet), "sheet of 0.65 to 1.5 mm under the nut", "thickness of the sheet") : draft.Usual(new(9, 12, 18), "board of 9 to 18 mm", "thickness of the board it goes through");
        var steel = BodySteel.TensileMPa;
        var (far, near) = (HeadThrough.Of(new(into, thick), head), HeadThrough.Of(under, head));
        var pull = Spread.Least(bolt.Pull, Spread.Least(far, near));
        Spread Bearing(Substrate of, Spread mmThick) => of.IsMetal
            ? WorthDraft.At(end => SheetScrewAisi.BearingN(Math.Max(0.5, end(mmThick)), end(steel), d))
            : WorthDraft.At(end => d * end(mmThick) * DowelBearing.OfMPa(end(of.SpecificGravity), d, 45));
        var shear = Spread.Least(bolt.Shear, WorthDraft.Scattered(Spread.Least(Bearing(into, thick), Bearing(under.Of, under.ThickMm)), LowerTwentieth.SheetVariation));
        var gives = bolt.Pull.Likely <= Math.Min(far.Likely, near.Likely) ? "the bolt breaks" : far.Likely <= near.Likely ? (into.IsMetal ? "the nut pulls through the sheet" : "the nut pulls through the board") : "the head pulls through";
        var stiff = into.IsMetal ? FixingSlip.InSheetNPerMm.Likely : FixingSlip.ScrewAcrossNPerMm(1_000 * into.SpecificGravity.Likely, d, under.Of.IsMetal);
        return new(pull, shear, Sharing.Straight, gives, stiff, 2 * stiff);
    }

    private static (Spread Pull, Spread Shear) BoltN(Joint joint, FixingSize size, WorthDraft draft)
    {
        double[] tabled = [3, 4, 5, 6, 8, 10, 12];
        var nominal = tabled.Last(t => t <= Math.Max(3, size.DiameterMm));
        var graded = joint.Grade?.Trim() switch
        {
            "4.6" => BoltStrength.PropertyClass.C46,
            "4.8" => BoltStrength.PropertyClass.C48,
            "5.6" => BoltStrength.PropertyClass.C56,
            "5.8" => BoltStrength.PropertyClass.C58,
            "6.8" => BoltStrength.PropertyClass.C68,
            "8.8" => BoltStrength.PropertyClass.C88,
            "9.8" => BoltStrength.PropertyClass.C98,
            "10.9" => BoltStrength.PropertyClass.C109,
            "12.9" => BoltStrength.PropertyClass.C129,
            _ => (BoltStrength.PropertyClass?)null,
        };
        if (graded is { } grade)
        {
            var known = BoltStrength.Of(new(nominal, grade));
            return (Spread.Exactly(known.BreakingN), Spread.Exactly(known.ShearN));
        }
        draft.Assume("assumed: bolt of class 4.6 to 8.8, its head not read");
        var (soft, hard) = (BoltStrength.Of(new(nominal, BoltStrength.PropertyClass.C46)), BoltStrength.Of(new(nominal, BoltStrength.PropertyClass.C88)));
        return (new(soft.BreakingN, soft.BreakingN * 1.3, hard.BreakingN), new(soft.ShearN, soft.ShearN * 1.3, hard.ShearN));
    }
}
