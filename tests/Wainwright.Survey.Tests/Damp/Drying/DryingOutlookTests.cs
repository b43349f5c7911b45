using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Tests.Damp.Drying;

public sealed class DryingOutlookTests
{
    static DryingOutlook Of(Survey.Damp.DampMap map, double days, params IReadOnlyList<DryingCare> cares) => DryingOutlook.Of(map, days, cares, stop: TestContext.Current.CancellationToken);

    [Fact]
    public void Under_vinyl_it_is_said_how_long_it_takes_and_what_opens_it()
    {
        var map = WetFloor.Map(24, WetFloor.Ply(), WetFloor.Vinyl());
        var outlook = Of(map, 90, DryingCare.AsBuilt, DryingCare.FinishLifted);
        Assert.Equal(DryingOutlook.FarDays, outlook.Far!.Days);
        var floor = Assert.Single(DryingOutlook.Wet(map));
        var lifted = outlook.Forecasts[1].Sheets[floor].Days;
        Assert.Matches(@"^under vinyl 2 mm \(V1\).*: .* as it stands; lift the finish: ", outlook.InWords(floor));
        Assert.EndsWith(FormattableString.Invariant($"lift the finish: {lifted.Low:0} to {lifted.High:0} days"), outlook.InWords(floor), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_floor_dries_as_it_stands_and_nothing_further_is_looked_at()
    {
        var outlook = Of(WetFloor.Map(24, WetFloor.Ply()), 90, DryingCare.AsBuilt);
        Assert.Null(outlook.Far);
        Assert.StartsWith("dries as it stands in ", outlook.InWords(0), StringComparison.Ordinal);
    }

    [Fact]
    public void With_no_other_care_asked_for_the_others_are_pointed_to()
    {
        var map = WetFloor.Map(24, WetFloor.Ply(), WetFloor.Vinyl());
        Assert.EndsWith("as it stands; ask for the other cares", Of(map, 30, DryingCare.AsBuilt).InWords(0), StringComparison.Ordinal);
        Assert.EndsWith("none of the cares dries it within the days looked at: open the other side too, or cut", Of(map, 0.5, DryingCare.AsBuilt, DryingCare.FinishLifted).InWords(0), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Of(map, 30));
    }
}
