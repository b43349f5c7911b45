using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Glue, sealant and hook tape.</summary>
internal static class Stuck
{
    public static SoundFixing Of(Joint joint, Part part, WorthDraft draft)
    {
        var spots = Math.Max(1, Math.Max(joint.Count, joint.Points.Count));
        var (bond, words) = joint.Type switch
        {
            FixingType.HookTape => (BondStrength.Bond.HookAndLoop, "hook-and-loop tape"),
            FixingType.Sealant => (BondStrength.Bond.Silicone, "sealant no stronger than silicone"),
            _ => (BondStrength.Bond.ElasticPolyurethane, "elastic polyurethane"),
        };
        // what is bonded was not seen and no edge is kept from peeling: a tenth at worst, as makers count for age, heat and dirty paint
        var stress = BondStrength.ShortShearMPa(bond) * new Spread(0.1, 0.5, 1);
        if (joint.Type == FixingType.Adhesive && part.System == PartSystem.Insulation) (stress, words) = (new(0.002, 0.01, 0.05), "spray glue on fleece, 2 to 50 kPa (common practice, no source)");
        var area = joint.BondedMm2 is { } known
            ? FixingSize.Known(known) * (1.0 / spots)
            : draft.Usual(joint.Type == FixingType.HookTape ? new(500, 2_000, 8_000) : new(100, 1_000, 5_000), joint.Type == FixingType.HookTape ? "5 to 80 cm² of tape a strip" : "1 to 50 cm² bonded a spot", "one spot freed, and the area that had truly bonded measured");
        draft.Assume(string.Create(CultureInfo.InvariantCulture, $"assumed: {words}"));
        var strength = WorthDraft.At(end => end(area) * end(stress));
        return new(strength, strength, Sharing.Straight, "the bond peels", strength.Likely / 2, strength.Likely / 2);
    }
}
