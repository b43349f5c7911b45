using Wainwright.Fitout;
using Wainwright.Methods.Combustion;

namespace Wainwright.Survey.Combustion;

/// <summary>Cabin air gets back to a fuel heater through holes as large as its hot-air outlets. Not the burner's own air.</summary>
public static class CirculationAirIsEnough
{
    /// <summary>One check for each fuel air heater.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        foreach (var (part, heater) in job.Having<AirHeater>())
        {
            var draft = new Draft(
                "heater-circulation-air", "The holes that let cabin air back to the heater are as large as its hot-air outlets", part.Subject(),
                CirculationAir.Basis, "grid rule: holes add up to at least the duct's section", Urgency.U1, Use.Heater, Use.SleepIn)
            {
                Remedy = "open a guarded return-air inlet of at least the outlet's section, where luggage cannot block it",
                Faults = ["heater-10"],
            };
            var at = $"parts[{part.Id}].airHeater";
            var outlets = Together(heater.HotAirOutlets, $"{at}.hotAirOutlets", "hot-air outlet", part, draft);
            var inlets = Together(heater.CirculationInlets, $"{at}.circulationInlets", "return-air inlet", part, draft);
            if (outlets is not { } demand || inlets is not { } capacity)
            {
                yield return draft.CannotTell("the openings are not all measured");
                continue;
            }
            var likely = CirculationAir.Of(new([capacity.Likely], demand.Likely));
            var because = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"inlets {capacity.Likely:0} mm² for outlets {demand.Likely:0} mm²: ratio {likely.Ratio:0.00}");
            yield return draft.Compare(demand.Times(CirculationAir.LeastRatio), capacity, "mm²", because, "every hole and outlet with a calliper, and the open part of each grille");
        }
    }

    /// <summary>Free area of all openings [mm²]; absent, with the gaps named, when one is not measured.</summary>
    private static Span? Together(IReadOnlyList<Aperture> openings, string field, string what, Part part, Draft draft)
    {
        if (openings.Count == 0)
        {
            draft.Use(what, null, field, part.Known);
            draft.Miss($"size of every {what}: none is recorded");
            return null;
        }
        Span? all = Span.Exactly(0);
        for (var i = 0; i < openings.Count; i++)
        {
            var one = Area(openings[i], $"{field}[{i}]", $"{what} “{openings[i].Name}”", part, draft);
            all = all is { } sum && one is { } area ? sum + area : null;
        }
        return all;
    }

    private static Span? Area(Aperture hole, string field, string what, Part part, Draft draft)
    {
        Span face;
        if (hole.DiameterMm is { } d)
        {
            draft.Use($"{what}: diameter", d, "mm", $"{field}.diameterMm", part.Known);
            face = Positive(Doubt.Calliper(d, draft)).Rising(mm => mm > 0 ? FreeArea.OfRoundMm2(mm) : 0);
        }
        else if (hole is { WidthMm: { } w, HeightMm: { } h })
        {
            draft.Use($"{what}: width", w, "mm", $"{field}.widthMm", part.Known);
            draft.Use($"{what}: height", h, "mm", $"{field}.heightMm", part.Known);
            var (wide, high) = (Positive(Doubt.Calliper(w, draft)), Positive(Doubt.Calliper(h, draft)));
            face = new(wide.Low * high.Low, wide.Likely * high.Likely, wide.High * high.High);
        }
        else
        {
            draft.Use(what, null, field, part.Known);
            draft.Miss($"diameter, or width and height, of the {what}");
            return null;
        }
        if (hole.OpenFraction is { } open)
        {
            draft.Use($"{what}: open part of its cover", open, "", $"{field}.openFraction", part.Known);
            var share = Span.Of(open.Value, open.PlusMinus ?? 0.05);
            face = new(face.Low * Math.Max(0, share.Low), face.Likely * share.Likely, face.High * Math.Min(1, share.High));
        }
        else
        {
            draft.Assume($"nothing lies over the {what}: no cover is recorded");
        }
        return face.Times(hole.Count);
    }

    private static Span Positive(Span mm) => new(Math.Max(0, mm.Low), mm.Likely, mm.High);
}
