using System.Buffers;
using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Survey;
using Wainwright.Survey.Retention;

namespace Wainwright.Paper;

/// <summary>The model's words as an owner reads them, and numbers with their units.</summary>
public static class PlainWords
{
    /// <summary>How a statement is known.</summary>
    public static string Of(Known known) => known switch
    {
        Known.Measured => "measured",
        Known.Seen => "seen",
        Known.Inferred => "inferred",
        Known.Told => "told",
        _ => "not inspected",
    };

    /// <summary>The same as a sentence, for the page that explains the words.</summary>
    public static string Explained(Known known) => known switch
    {
        Known.Measured => "we put an instrument to it",
        Known.Seen => "we saw it with our own eyes",
        Known.Inferred => "we concluded it from other things; nobody has seen it",
        Known.Told => "the owner or a paper said so; we did not check it",
        _ => "nobody has looked; it may be sound or not",
    };

    /// <summary>When something has to be done.</summary>
    public static string Of(Urgency urgency) => urgency switch
    {
        Urgency.U0 => "now: stop use",
        Urgency.U1 => "before the next use",
        Urgency.U2 => "within a month",
        Urgency.U3 => "at the next service",
        _ => "not yet: keep watch",
    };

    /// <summary>The worst credible harm.</summary>
    public static string Of(Severity severity) => severity switch
    {
        Severity.Catastrophic => "death or lasting disability",
        Severity.Critical => "serious injury",
        Severity.Marginal => "an injury with days off work, or damage that spreads",
        _ => "no lasting injury; damage or nuisance",
    };

    /// <summary>How likely that harm is.</summary>
    public static string Of(Likelihood likelihood) => likelihood switch
    {
        Likelihood.Frequent => "likely to happen often",
        Likelihood.Probable => "likely to happen several times",
        Likelihood.Occasional => "likely to happen some time",
        Likelihood.Remote => "unlikely, but possible",
        Likelihood.Improbable => "very unlikely",
        _ => "no longer possible",
    };

    /// <summary>A use of the van, as it follows "do not".</summary>
    public static string Of(Use use) => use switch
    {
        Use.Drive => "drive the van",
        Use.DriveLoaded => "drive with racks, lockers or tanks loaded",
        Use.SleepIn => "sleep in the van",
        Use.Heater => "run the fuel heater",
        Use.Shower => "use the shower or basin",
        Use.Gas => "use gas",
        Use.Mains => "use mains voltage, from a socket or an inverter",
        _ => "use the battery system",
    };

    /// <summary>What flows in a line, in short.</summary>
    public static string Of(Medium medium) => medium switch
    {
        Medium.Water => "fresh water",
        Medium.Waste => "waste water",
        Medium.Gas => "gas",
        Medium.Dc => "battery voltage (DC)",
        Medium.Mains => "mains voltage",
        Medium.Fuel => "fuel",
        Medium.WarmAir => "warm air",
        Medium.Exhaust => "exhaust",
        Medium.CombustionAir => "combustion air",
        _ => "signals",
    };

    /// <summary>A reading with its unit, its doubt, and "or more" where the meter was at its end.</summary>
    public static string Of(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var least = reading.AtLeast ? "at least " : "";
        if (reading is { Quantity: Quantity.Time, Value: { Value: >= 120, PlusMinus: null } }) return $"{least}{Seconds(reading.Value.Value)}";
        return $"{least}{Number(reading.Value.Value)}{(reading.Value.PlusMinus is { } t ? $" ± {Number(t)}" : "")} {reading.Unit}";
    }

    private static string Seconds(double seconds)
    {
        var (minutes, rest) = Math.DivRem((int)Math.Round(seconds), 60);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes} min{(rest == 0 ? "" : $" {rest} s")}");
    }

    /// <summary>A number as it is read: no more than three figures after the point, thousands apart.</summary>
    public static string Number(double value) => Math.Round(value, Math.Abs(value) >= 100 ? 0 : Math.Abs(value) >= 10 ? 1 : Math.Abs(value) >= 1 ? 2 : 3).ToString("#,0.###", Spaced);

    /// <summary>Money, whole units, with its currency; the currency is "money units" when the job names none.</summary>
    public static string Money(decimal amount, string? currency) => $"{Math.Round(amount).ToString("#,0", Spaced)} {currency ?? "(no currency given)"}";

    /// <summary>A figure in g: <c>2.1</c>; <c>no end</c> for what is thrown against something that only pushes, <c>falls</c> for what does not carry its own weight.</summary>
    public static string InG(double? g) => g switch
    {
        null => "–",
        double.PositiveInfinity => "no end",
        < 0 => "falls",
        { } v => v.ToString(v < 9.95 ? "0.0" : "0", CultureInfo.InvariantCulture),
    };

    /// <summary>A figure in g as a sentence has it, with the ends of our doubt: <c>2.1 g (1.2 to 3.4)</c>.</summary>
    public static string G(Span? g) => g switch
    {
        null => "not worked out",
        { High: < 0 } => "does not carry its own weight",
        { Low: double.PositiveInfinity } => "no end: thrown against what holds it",
        { } s => $"{InG(s.Likely)}{(s.Likely >= 0 && double.IsFinite(s.Likely) ? " g" : "")}{(InG(s.Low) == InG(s.High) ? "" : $" ({InG(s.Low)} to {InG(s.High)})")}",
    };

    /// <summary>The answer that a part's verdict rests on; absent when nothing was worked out.</summary>
    public static CaseAnswer? Telling(PartHolding part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Cases.Where(c => c.Verdict == part.Verdict).MinBy(c => c.FactorG is { } g ? g.Likely / c.DemandG : 1);
    }

    /// <summary>Hours and minutes.</summary>
    public static string Minutes(double minutes)
    {
        var whole = (int)Math.Round(minutes);
        return whole < 60 ? string.Create(CultureInfo.InvariantCulture, $"{whole} min") : string.Create(CultureInfo.InvariantCulture, $"{whole / 60} h {whole % 60:00} min");
    }

    /// <summary>A day as people write it in every country: 2 March 2026.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A moment, in the time of the place it was noted in.</summary>
    public static string Moment(DateTimeOffset at) => at.ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The first letter large.</summary>
    public static string Sentence(string text) => string.IsNullOrEmpty(text) ? "" : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A name without its measures: what stands before the first figure, comma or bracket.</summary>
    public static string ShortName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var end = name.AsSpan().IndexOfAny(Measures);
        var cut = (end > 2 ? name[..end] : name).Trim();
        return cut.Length == 0 ? name : cut;
    }

    /// <summary>A sentence: large first letter, one full stop.</summary>
    public static string Stop(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var whole = text.Trim();
        return Sentence(whole.Length == 0 || whole[^1] is '.' or '!' or '?' or '…' ? whole : whole + ".");
    }

    /// <summary>
    /// The text itself where it is no longer than <paramref name="most"/> letters, else as many whole clauses as fit, else whole
    /// words; always ends like a sentence, with three dots where something is left out.
    /// </summary>
    public static string FirstClause(string text, int most)
    {
        ArgumentNullException.ThrowIfNull(text);
        var whole = text.Trim().TrimEnd('.');
        if (whole.Length <= most) return whole + ".";
        var cut = Math.Max(whole.LastIndexOf("; ", most, StringComparison.Ordinal), Math.Max(whole.LastIndexOf(": ", most, StringComparison.Ordinal), whole.LastIndexOf(". ", most, StringComparison.Ordinal)));
        if (cut < most / 3) cut = whole.LastIndexOf(", ", most, StringComparison.Ordinal);
        if (cut < most / 3) cut = whole.LastIndexOf(' ', most);
        return whole[..(cut > 0 ? cut : most)].TrimEnd(',', ';', ':') + " …";
    }

    private static readonly SearchValues<char> Measures = SearchValues.Create("0123456789,(;:");

    // a narrow space between thousands cannot be taken for a decimal point in any country
    private static readonly NumberFormatInfo Spaced = new() { NumberGroupSeparator = "\u202F", NumberDecimalSeparator = "." };
}
