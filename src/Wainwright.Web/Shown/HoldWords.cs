using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;
using Wainwright.Survey;
using Wainwright.Survey.Retention;

namespace Wainwright.Web.Shown;

/// <summary>Figures in g as they are read on a screen. What they mean and whether they hold, Survey has said.</summary>
public static class HoldWords
{
    /// <summary>One figure: <c>2.1</c>, <c>no end</c> for what is thrown against what only pushes, <c>falls</c> for what does not carry its own weight.</summary>
    public static string One(double g) => double.IsNaN(g) ? "–" : double.IsPositiveInfinity(g) ? "no end" : g < 0 ? "falls" : g.ToString(g < 9.95 ? "0.0" : "0", CultureInfo.InvariantCulture);

    /// <summary>A figure with the ends of its doubt: <c>2.1 g (1.2 to 3.4)</c>.</summary>
    public static string G(Span? g) => g is not { } span ? "cannot tell" : One(span.Low) == One(span.High) ? Unit(span.Likely) : $"{Unit(span.Likely)} ({One(span.Low)} to {One(span.High)})";

    /// <summary>The likely figure with its unit.</summary>
    public static string Unit(double g) => !double.IsFinite(g) || g < 0 ? One(g) : $"{One(g)} g";

    /// <summary>The answer that a part's verdict rests on.</summary>
    public static CaseAnswer? Telling(PartHolding part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Cases.Where(c => c.Verdict == part.Verdict).MinBy(Share);
    }

    /// <summary>The crash cases' answer that is shortest; absent where only driving is asked.</summary>
    public static CaseAnswer? Crash(PartHolding part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Cases.Where(c => Case(c.Case).Kind == CaseKind.Crash).OrderBy(c => c.Verdict switch { Verdict.FallsShort => 0, Verdict.CannotTell => 1, _ => 2 }).ThenBy(Share).FirstOrDefault();
    }

    /// <summary>The way that the push goes which a part's verdict rests on; absent when it could not be worked out.</summary>
    public static Thrown? Worst(PartHolding part) => Telling(part) is { FactorG: not null } telling ? part.Directions.FirstOrDefault(d => d.Words == telling.Worst) : null;

    /// <summary>What a load case asks, where it comes from, what it proves and does not.</summary>
    public static AccelerationCase Case(LoadCase load) => AskedG.Case(load);

    /// <summary>What it asks, in g: <c>9 forward, 9 rearward, 3 sideways, 3 up, 3 down</c>.</summary>
    public static string Asks(AccelerationCase of)
    {
        ArgumentNullException.ThrowIfNull(of);
        (double? G, string Way)[] asked = [(of.ForwardG, "forward"), (of.RearwardG, "rearward"), (of.SidewaysG, "to either side"), (of.UpG, "up"), (of.DownIsGravity ? null : of.DownG, "down")];
        return string.Join(", ", asked.Where(a => a.G is not null).Select(a => $"{Figures.Number(a.G!.Value)} g {a.Way}"));
    }

    /// <summary>A joint in short: <c>4 × wood screw 4x30</c>.</summary>
    public static string Joint(Joint joint)
    {
        ArgumentNullException.ThrowIfNull(joint);
        return $"{joint.Count} × {Words.Of(joint.Type)}{(joint.Size is { } size ? $" {size}" : "")}";
    }

    /// <summary>Whether a check is of what moves in a part or stands on it: a part that holds may still let its drawer fly open.</summary>
    public static bool IsOfMoving(Check check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Id is "stays-shut" or "shelf-goods-stay" or "lid-stays-up" or "tank-fittings-dry";
    }

    private static double Share(CaseAnswer answer) => answer.FactorG is { } g ? g.Likely / answer.DemandG : 1;
}
