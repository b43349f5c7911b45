using System.Text;
using Wainwright.Fitout;

namespace Wainwright.Web.Shown;

/// <summary>The model's words as people read them.</summary>
public static class Words
{
    /// <summary>A value of a list in words: <c>RivetNut</c> is <c>rivet nut</c>.</summary>
    public static string Of(Enum value) => value switch
    {
        PartSystem.Dc or Medium.Dc => "DC",
        Use.Dc => "the DC system",
        PartSystem.Vehicle => "base vehicle",
        Use.Drive => "driving",
        Use.DriveLoaded => "driving with the fit-out loaded",
        Use.SleepIn => "sleeping in it",
        Use.Heater => "the fuel heater",
        Use.Shower => "shower and basin",
        Use.Gas => "gas",
        Use.Mains => "mains",
        Known.NotInspected => "not inspected",
        FixingState.NotSeen => "not seen",
        Urgency.U0 => "stop use now",
        Urgency.U1 => "before next use",
        Urgency.U2 => "within a month",
        Urgency.U3 => "at next service",
        Urgency.U4 => "watch",
        ReleaseWay.ByHand => "by hand",
        Quantity.CarbonMonoxide => "carbon monoxide",
        _ => Spaced(value.ToString()),
    };

    /// <summary>Every value of a list with its words, to choose from.</summary>
    public static IReadOnlyList<(string Value, string Text)> All<T>() where T : struct, Enum => [.. Enum.GetValues<T>().Select(v => (v.ToString(), Capital(Of(v))))];

    /// <summary>The same with a capital.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>One or many: <c>1 part</c>, <c>3 parts</c>.</summary>
    public static string Count(int n, string one, string? many = null) => $"{n} {(n == 1 ? one : many ?? one + "s")}";

    private static string Spaced(string name)
    {
        var text = new StringBuilder();
        foreach (var c in name)
        {
            if (char.IsUpper(c) && text.Length > 0) text.Append(' ');
            text.Append(char.ToLowerInvariant(c));
        }
        return text.ToString();
    }
}
