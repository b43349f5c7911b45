namespace Wainwright.Fitout.Tests;

public class DirectionTests
{
    // Golden: these words fix the vehicle axes for the whole project. Forward is towards the driver, left is the driver's left.
    [Theory]
    [InlineData(Direction.Forward, -1, 0, 0)]
    [InlineData(Direction.Rearward, 1, 0, 0)]
    [InlineData(Direction.Left, 0, -1, 0)]
    [InlineData(Direction.Right, 0, 1, 0)]
    [InlineData(Direction.Down, 0, 0, -1)]
    [InlineData(Direction.Up, 0, 0, 1)]
    public void Directions_are_these_steps_in_vehicle_axes(Direction direction, double x, double y, double z) =>
        Assert.Equal(new Place(x, y, z), direction.Step());

    [Fact]
    public void The_axes_are_right_handed()
    {
        var (x, y, z) = (Direction.Rearward.Step(), Direction.Right.Step(), Direction.Up.Step());
        Assert.Equal(z, new Place(x.YMm * y.ZMm - x.ZMm * y.YMm, x.ZMm * y.XMm - x.XMm * y.ZMm, x.XMm * y.YMm - x.YMm * y.XMm));
    }

    [Fact]
    public void The_opposite_goes_back() =>
        Assert.All(Enum.GetValues<Direction>(), d => Assert.Equal(default, d.Step() + d.Opposite().Step()));
}
