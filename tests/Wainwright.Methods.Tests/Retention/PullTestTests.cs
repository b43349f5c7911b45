using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention;

public sealed class PullTestTests
{
    static readonly PullTest.Step[] Held = [new(0, 0), new(50, 0.1), new(100, 0.2), new(200, 0.5), new(300, 1.1), new(0, 0.3)];

    [Fact]
    public void The_first_third_gives_the_stiffness_and_the_last_reading_the_set()
    {
        var test = PullTest.Of(Held, letGo: false);
        Assert.Equal(500, test.InitialNPerMm!.Value, tolerance: 1e-9);
        Assert.Equal(300, test.GreatestN);
        Assert.Equal(0.3, test.PermanentSetMm);
        Assert.Empty(test.Missing);
    }

    [Fact]
    public void What_held_lifts_the_low_strength_and_proves_nothing_above()
    {
        var test = PullTest.Of(Held, letGo: false);
        Assert.Equal(new Spread(300, 500, 900), PullTest.Strength(new(100, 500, 900), test));
        Assert.Equal(new Spread(400, 500, 900), PullTest.Strength(new(400, 500, 900), test));
        Assert.Equal(new Spread(300, 300, 300), PullTest.Strength(new(10, 20, 30), test));
    }

    [Fact]
    public void What_let_go_is_the_strength_whatever_was_assumed()
    {
        var test = PullTest.Of([new(100, 0.2), new(200, 0.5)], letGo: true);
        Assert.Null(test.PermanentSetMm);
        var left = PullTest.Strength(new(1_000, 2_000, 3_000), test);
        Assert.Equal(200, left.Likely, tolerance: 1e-9);
        Assert.True(left.High < 1_000);
    }

    [Fact]
    public void Without_movement_there_is_no_stiffness_and_it_says_what_to_read()
    {
        var test = PullTest.Of([new(200, 0)], letGo: false);
        Assert.Null(test.InitialNPerMm);
        Assert.Equal(2, test.Missing.Count);
        Assert.Equal(new Spread(1, 2, 3), PullTest.Stiffness(new(1, 2, 3), test));
    }

    [Fact]
    public void Measured_stiffness_takes_the_place_of_the_assumed() =>
        Assert.Equal(500, PullTest.Stiffness(new(1, 2, 3), PullTest.Of(Held, letGo: false)).Likely, tolerance: 1e-9);

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentException>(() => PullTest.Of([], letGo: false));
        Assert.Throws<ArgumentOutOfRangeException>(() => PullTest.Of([new(-1, 0)], letGo: false));
        Assert.Throws<ArgumentOutOfRangeException>(() => PullTest.Of([new(1, double.NaN)], letGo: false));
    }
}
