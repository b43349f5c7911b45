using System.Collections;
using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>The facts of one thing, gathered in the order of its fields.</summary>
/// <param name="measures">Units that lengths are typed in.</param>
internal sealed class FactsOf<T>(Measures measures) : IEnumerable<Fact<T>> where T : class
{
    private readonly List<Fact<T>> facts = [];

    public void Text(string label, string? value, Func<string?, T> with, bool needed = false, bool isLong = false, string? placeholder = null) =>
        facts.Add(new(label, value ?? "", text => Nothing(text) is { } typed ? Good(with(typed)) : needed ? Bad("It needs a name.") : Good(with(null))) { Long = isLong, Placeholder = placeholder, Needed = needed });

    public void Number(string label, Measured? value, Func<Measured?, T> with, bool needed = false) =>
        facts.Add(new(label, Shown(value, v => Figures.Number(v, 3)), text => Quantity(text, Figure, with, needed, "a number")) { Needed = needed });

    public void Number(string label, double? value, Func<double?, T> with, bool needed = false) =>
        facts.Add(new(label, value is { } v ? Figures.Number(v, 3) : "", text => Quantity(text, Figure, m => with(m?.Value), needed, "a number")) { Needed = needed });

    public void Length(string label, Measured? value, Func<Measured?, T> with, bool needed = false, string? help = null) =>
        facts.Add(new($"{label}, {measures.LengthUnit()}", Shown(value, Fine), text => Quantity(text, Mm, with, needed, "a measure")) { Help = help, Needed = needed });

    public void Length(string label, double? value, Func<double?, T> with, bool needed = false, string? help = null) =>
        facts.Add(new($"{label}, {measures.LengthUnit()}", value is { } v ? Fine(v) : "", text => Quantity(text, Mm, m => with(m?.Value), needed, "a measure")) { Help = help, Needed = needed });

    public void Force(string label, Measured? value, Func<Measured?, T> with, string? help = null) =>
        facts.Add(new($"{label}, {measures.ForceUnit()}", Shown(value, v => Figures.Number(measures.Forces(v), 2)), text => Quantity(text, t => Figure(t) is { } f ? measures.Newton(f) : null, with, false, "a force")) { Help = help });

    public void Mass(string label, Measured? value, Func<Measured?, T> with, string? help = null) =>
        facts.Add(new($"{label}, {measures.MassUnit()}", Shown(value, v => measures.Mass(v)[..^3]), text => Quantity(text, t => Figures.Kg(t, measures), with, false, "a mass")) { Help = help });

    public void Tick(string label, bool value, Func<bool, T> with) => facts.Add(new(label, value ? "yes" : "no", text => Good(with(text == "yes"))) { Tick = true });

    public void Whole(string label, int? value, Func<int?, T> with, bool needed = false) =>
        facts.Add(new(label, value?.ToString(CultureInfo.InvariantCulture) ?? "", text => Nothing(text) is not { } typed ? (needed ? Bad("A whole number.") : Good(with(null)))
            : int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? Good(with(n)) : Bad("A whole number."))
        { Needed = needed });

    public void Day(string label, DateOnly? value, Func<DateOnly?, T> with) =>
        facts.Add(new(label, value?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "", text => Nothing(text) is not { } typed ? Good(with(null))
            : DateOnly.TryParseExact(typed, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? Good(with(day)) : Bad("A day is written 2026-03-14."))
        { Placeholder = "2026-03-14" });

    public void YesNo(string label, bool? value, Func<bool?, T> with) =>
        facts.Add(new(label, value switch { true => "yes", false => "no", null => "" }, text => Good(with(text switch { "yes" => true, "no" => false, _ => null }))) { Options = [("", "Nobody knows"), ("yes", "Yes"), ("no", "No")] });

    public void Choice<TEnum>(string label, TEnum value, Func<TEnum, T> with, bool needed = false) where TEnum : struct, Enum => Choice(label, value, with, Words.All<TEnum>(), needed);

    public void Choice<TEnum>(string label, TEnum value, Func<TEnum, T> with, IReadOnlyList<(string, string)> options, bool needed = false) where TEnum : struct, Enum =>
        facts.Add(new(label, value.ToString(), text => Enum.TryParse<TEnum>(text, out var chosen) ? Good(with(chosen)) : Bad("Choose one of the list.")) { Options = options, Needed = needed });

    public void Maybe<TEnum>(string label, TEnum? value, Func<TEnum?, T> with, string none = "Nobody said") where TEnum : struct, Enum =>
        facts.Add(new(label, value?.ToString() ?? "", text => text.Length == 0 ? Good(with(null)) : Enum.TryParse<TEnum>(text, out var chosen) ? Good(with(chosen)) : Bad("Choose one of the list.")) { Options = [("", none), .. Words.All<TEnum>()] });

    public void Options(string label, string value, IReadOnlyList<(string, string)> options, Func<string, T> with) =>
        facts.Add(new(label, value, text => Good(with(text))) { Options = options });

    public void Part(string label, PartId? value, Func<PartId?, T> with, string? placeholder = null) =>
        facts.Add(new(label, value?.Text ?? "", text => Good(with(Nothing(text) is { } id ? new PartId(id) : null))) { OffersParts = true, Placeholder = placeholder });

    public void Parts(string label, IReadOnlyList<PartId> value, Func<IReadOnlyList<PartId>, T> with) =>
        facts.Add(new(label, string.Join(' ', value), text => Good(with([.. text.Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries).Select(t => new PartId(t)).Distinct()]))) { Placeholder = "A20 A21" });

    public void Place(string label, Place? value, Func<Place?, T> with) =>
        facts.Add(new($"{label}, {measures.LengthUnit()}", value is { } at ? Three(at) : "", text => Nothing(text) is not { } typed ? Good(with(null)) : Spot(typed) is { } place ? Good(with(place)) : Bad(ThreeFault(typed))) { Placeholder = ThreeHint });

    public void Route(string label, IReadOnlyList<Place> value, Func<IReadOnlyList<Place>, T> with, string help = "One corner to a line: along, across, up.") =>
        facts.Add(new($"{label}, {measures.LengthUnit()}", string.Join('\n', value.Select(Three)), text =>
        {
            var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            var places = lines.Select(Spot).ToList();
            var wrong = places.IndexOf(null);
            return wrong < 0 ? Good(with([.. places.Select(p => p!.Value)])) : Bad($"Line {wrong + 1}: {ThreeFault(lines[wrong])}");
        })
        { Long = true, Placeholder = ThreeHint, Help = help });

    public IEnumerator<Fact<T>> GetEnumerator() => facts.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private string ThreeHint => measures == Measures.Us ? "14 1/2, 1 1/2, 3" : "350, 40, 120";

    private static string? Nothing(string text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static Typed<T> Good(T next) => new(next, null);

    private static Typed<T> Bad(string fault) => new(null, fault);

    private static Typed<T> Quantity(string text, Func<string, double?> read, Func<Measured?, T> with, bool needed, string what) => Nothing(text) is not { } typed
        ? needed ? Bad($"It needs {what}.") : Good(with(null))
        : TypedQuantity.Of(typed, read) is { } quantity ? Good(with(quantity)) : Bad($"“{typed}” is not {what}.");

    private static double? Figure(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) ? value : null;

    private double? Mm(string text) => Figures.Mm(text, measures);

    // bores and wire want the tenth of a millimetre that a tape does not
    private string Fine(double mm) => measures == Measures.Us ? measures.Bare(mm) : Figures.Number(mm);

    private static string Shown(Measured? value, Func<double, string> figure) => value is not { } m ? "" : m.PlusMinus is { } doubt and > 0 ? $"{figure(m.Value)} ± {figure(doubt)}" : figure(m.Value);

    private string Three(Place p) => $"{measures.Bare(p.XMm)}, {measures.Bare(p.YMm)}, {measures.Bare(p.ZMm)}";

    private Place? Spot(string text) => text.Split([',', ';'], StringSplitOptions.TrimEntries) is [var x, var y, var z] && Mm(x) is { } along && Mm(y) is { } across && Mm(z) is { } up ? new Place(along, across, up) : null;

    private string ThreeFault(string text) => $"“{text}” is not three measures; type {ThreeHint}.";
}
