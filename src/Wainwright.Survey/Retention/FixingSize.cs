using System.Globalization;
using System.Text.RegularExpressions;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Diameter and length of a fixing, read from its size as the trade writes it: <c>M6</c>, <c>4x30</c>, <c>5.5</c>.</summary>
/// <param name="DiameterMm">Nominal diameter [mm].</param>
/// <param name="LengthMm">Length under the head [mm]; absent when not written.</param>
/// <param name="Said">Whether a size was written; else the smallest that is usual for its type was taken.</param>
internal sealed partial record FixingSize(double DiameterMm, double? LengthMm, bool Said)
{
    public static FixingSize Of(Joint joint)
    {
        if (joint.Size is { } size && Numbers().Match(size) is { Success: true } m)
            return new(Number(m.Groups["d"].Value), m.Groups["l"].Length > 0 ? Number(m.Groups["l"].Value) : null, true);
        return new(joint.Type switch { FixingType.Brad => 1.2, FixingType.Staple => 1.2, FixingType.Rivet => 3.2, FixingType.Bolt or FixingType.RivetNut or FixingType.HandKnob => 5, _ => 3.5 }, null, false);
    }

    /// <summary>Head or washer [mm]: as measured, else usual for the type; common practice, no source.</summary>
    public Spread HeadMm(Joint joint)
    {
        if (joint.HeadMm is { } head) return Known(head);
        var times = joint.Type switch
        {
            FixingType.Brad => 1.0,
            FixingType.CupWasherScrew => 3.5,
            FixingType.Rivet => 2.0,
            // M6: 10 mm across the head's flats, 12 mm with the usual washer
            FixingType.Bolt or FixingType.RivetNut or FixingType.HandKnob => 2.0,
            _ => 1.9,
        };
        return new Spread(0.9, 1, 1.1) * (times * DiameterMm);
    }

    /// <summary>A measured value with its tolerance, a tenth where nobody gave one.</summary>
    public static Spread Known(Measured value) => new(Math.Max(0, value.Value - (value.PlusMinus ?? 0.1 * value.Value)), value.Value, value.Value + (value.PlusMinus ?? 0.1 * value.Value));

    private static double Number(string text) => double.Parse(text.Replace(',', '.'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s*M?(?<d>[0-9]{1,2}(?:[.,][0-9]{1,2})?)(?:\s*[x×]\s*(?<l>[0-9]{1,3}(?:[.,][0-9]{1,2})?))?", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Numbers();
}
