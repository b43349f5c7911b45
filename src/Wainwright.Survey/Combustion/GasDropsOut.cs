using Wainwright.Fitout;
using Wainwright.Methods;

namespace Wainwright.Survey.Combustion;

/// <summary>The gas locker has a low opening large enough for gas to drop out.</summary>
public static class GasDropsOut
{
    private const double LeastMm2 = 10_000;

    private static readonly Basis Rule = new(
        Source: "DVGW G 607 (German partner of EN 1949): opening that cannot be closed, at least 100 cm² free, in or just above the locker floor; as two pages quote it",
        Assumes: ["the opening leads outside and is not covered below"],
        Caution: "Other countries ask for other areas: local codes rule. Gas work belongs to licensed people.",
        How: Provenance.Quoted);

    /// <summary>One check for the van's gas stores together.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        var stores = job.Having<GasStore>().ToList();
        if (stores.Count == 0) yield break;
        var measured = stores.Where(s => s.Device.DropOutMm2 is not null).ToList();
        foreach (var (part, store) in measured.DefaultIfEmpty(stores[0]))
        {
            var draft = new Draft("gas-drop-out", "Leaking gas can drop out of the locker", part.Subject(), Rule, "100 cm² free, low", Urgency.U0, Use.Gas, Use.SleepIn)
            {
                Remedy = "valve shut, cylinder out; reopen the drop-out to its full area",
                Faults = ["gas-04"],
            };
            draft.Use("free area of the low opening", store.DropOutMm2, "mm²", $"parts[{part.Id}].gasStore.dropOutMm2", part.Known);
            if (store.DropOutMm2 is not { } free)
            {
                yield return draft.CannotTell("the opening is not measured", "free area of the locker's low drop-out, with its cover on");
                continue;
            }
            if (free.PlusMinus is null) draft.Assume("5 % doubt on the area: no tolerance was recorded (common practice, no source)");
            yield return draft.Compare(Span.Exactly(LeastMm2), Span.Of(free.Value, free.PlusMinus ?? 0.05 * free.Value), "mm²", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{free.Value / 100:0.#} cm² free, 100 cm² asked for"), "the opening and its grille");
        }
    }
}
