using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Fixings without a published method: the range that is usual, marked assumed. Common practice, no source.</summary>
internal static class UsualHold
{
    public static SoundFixing Of(FixingType type, WorthDraft draft)
    {
        var (pull, shear, gives) = type switch
        {
            FixingType.Clip => (new Spread(5, 20, 60), new Spread(5, 30, 100), "the clip opens"),
            FixingType.Strap => (new Spread(500, 1_500, 5_000), new Spread(500, 1_500, 5_000), "the strap or its anchor gives"),
            FixingType.Clamp => (new Spread(150, 400, 1_200), new Spread(150, 400, 1_200), "the clamp slips"),
            FixingType.Pin => (new Spread(0, 0, 20), new Spread(300, 800, 2_000), "it lifts off its pins"),
            FixingType.Runner => (new Spread(50, 200, 500), new Spread(100, 300, 800), "the runner gives"),
            FixingType.Weld => (new Spread(1_500, 4_000, 10_000), new Spread(1_500, 4_000, 10_000), "the weld tears"),
            _ => (new Spread(0, 50, 300), new Spread(0, 50, 300), "it gives"),
        };
        draft.Assume(string.Create(CultureInfo.InvariantCulture, $"assumed: a {type.ToString().ToLowerInvariant()} carries {pull.Low} to {pull.High} N along and {shear.Low} to {shear.High} N across (common practice, no source)"));
        draft.Look($"the {type.ToString().ToLowerInvariant()}'s rating, or a pull by hand gauge", shear.High / Math.Max(1, shear.Low));
        return new(pull, shear, Sharing.Straight, gives, Math.Max(10, pull.Likely / 5), Math.Max(10, shear.Likely / 5));
    }
}
