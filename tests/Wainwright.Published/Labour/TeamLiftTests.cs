using Wainwright.Methods.Labour;

namespace Wainwright.Published.Labour;

public sealed class TeamLiftTests
{
    // Source:    UK team-lifting practice: two men at 25 kg each 33 kg, three 37.5 kg; two women at 16 kg each 21 kg, three 24 kg.
    // Seen:      in a safety consultancy's answer.
    // Tolerance: it prints whole kilograms for pairs: 0.4 kg.
    [Theory]
    [InlineData(25, 2, 33)]
    [InlineData(25, 3, 37.5)]
    [InlineData(16, 2, 21)]
    [InlineData(16, 3, 24)]
    public void A_team_lifts_what_the_practice_allows(double eachKg, int people, double togetherKg) =>
        Assert.Equal(togetherKg, TeamLift.Of(new([.. Enumerable.Repeat(eachKg, people)])).TogetherKg, tolerance: 0.4);
}
