using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>The worth of a fixing being worked out: what was assumed, and what would tell.</summary>
internal sealed class WorthDraft
{
    private readonly List<string> assumed = [];
    private readonly List<Look> looks = [];

    public void Assume(string what)
    {
        if (!assumed.Contains(what)) assumed.Add(what);
    }

    /// <summary>A measure that nobody took: a usual range stands for it, and the look that would replace it is remembered.</summary>
    public Spread Usual(Spread range, string assumption, string look)
    {
        Assume($"assumed: {assumption}");
        Look(look, range.High / Math.Max(range.Low, range.High / 20));
        return range;
    }

    public void Look(string what, double ratio) => looks.Add(new(what, ratio));

    public FixingWorth Made(SoundFixing sound, Spread pullLeft, Spread shearLeft) => new(
        sound.PullN * pullLeft, sound.ShearN * shearLeft, sound.Sharing, sound.GivesBy, sound.PullNPerMm * pullLeft.Likely, sound.ShearNPerMm * shearLeft.Likely, assumed, [.. looks.OrderByDescending(l => l.Ratio)]);

    /// <summary>A rising function of quantities in doubt, all at their worst, likely and best together.</summary>
    public static Spread At(Func<Func<Spread, double>, double> of) => new(of(s => s.Low), of(s => s.Likely), of(s => s.High));

    /// <summary>A mean breaking load in doubt, with the scatter of tests about it.</summary>
    public static Spread Scattered(Spread mean, double variation) => new(LowerTwentieth.Of(mean.Low, variation).Low, LowerTwentieth.Of(mean.Likely, variation).Likely, LowerTwentieth.Of(mean.High, variation).High);
}
