using Wainwright.Fitout;

namespace Wainwright.Survey.Tests.Damp;

public sealed class OpenedBoardIsDryTests
{
    const string Id = "opened-board-is-dry";

    static readonly DateTimeOffset Day0 = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);

    static Job Van(string conditions, params IReadOnlyList<double> percent) => A.Van(A.Part("board")) with
    {
        Points =
        [
            new() { Id = new("dry"), At = new(0, 0, 0), Where = "aisle", Part = new("other") },
            new() { Id = new("P"), At = new(0, 0, 0), Where = "under the leak", Part = new("board"), Mode = "long pins", DryReference = new PointId("dry") },
        ],
        Readings = [Read("dry", 0, 12, conditions), .. percent.Select((v, i) => Read("P", 4 * i, v, conditions))],
    };

    static Reading Read(string point, int day, double percent, string conditions) => new()
    {
        Id = new($"{point}-{day}"), Quantity = Quantity.Moisture, Value = percent, Unit = "%", Point = new PointId(point), TakenAt = Day0.AddDays(day), AirC = 20, Conditions = conditions,
    };

    [Fact]
    public void Under_target_and_flat_with_the_heat_off_it_holds() => Assert.Equal(Verdict.Holds, Van("heat off", 25, 14, 13.6).Check(Id).Verdict);

    [Theory]
    [InlineData(25, 18, 15.4)] // over the target
    [InlineData(25, 16, 13.6)] // only just there
    [InlineData(25, 14.8, 13.2)] // still falling
    public void Over_its_target_or_still_moving_it_falls_short(double first, double second, double third)
    {
        var check = Van("heat off", first, second, third).Check(Id);
        Assert.Equal(Verdict.FallsShort, check.Verdict);
        Assert.Contains("P not to be covered", check.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_word_on_the_heat_it_cannot_tell_and_names_it()
    {
        var check = Van("opened", 25, 14, 13.6).Check(Id);
        Assert.Equal(Verdict.CannotTell, check.Verdict);
        Assert.Equal(["P: whether heat was off before each reading"], check.Missing);
    }

    [Fact]
    public void A_board_that_never_was_wet_or_a_job_read_once_has_no_such_check()
    {
        Assert.DoesNotContain(Checks.All(Van("heat off", 12.5, 12, 12.1), A.Day), c => c.Id == Id);
        Assert.DoesNotContain(Checks.All(Van("heat off", 25), A.Day), c => c.Id == Id);
    }
}
