using Wainwright.Fitout;
using Wainwright.Web.Entry;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Entry;

public sealed class TypedPullTests
{
    private static readonly Reading Like = new() { Id = new("R"), Quantity = Quantity.Force, Value = 0, Unit = "N", TakenAt = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero), TakenBy = "fitter" };

    [Fact]
    public void Each_line_is_a_force_and_the_movement_under_it()
    {
        Assert.Equal([(50, 0.5), (150, 3), (0, 1)], TypedPull.Read("50, 0.5\n150,3\n\n0, 1", Measures.Metric).Steps);
        Assert.Equal([(50.5, 0.5), (0, 0)], TypedPull.Read("50,5; 0,5\n0; 0", Measures.Metric).Steps);
        // 1 lbf = 4.4482216152605 N, 1/8 in = 3.175 mm, by definition
        var us = TypedPull.Read("10, 1/8\n0, 0", Measures.Us).Steps[0];
        Assert.Equal((44.482216152605, 3.175), (Math.Round(us.ForceN, 12), us.MovementMm));
    }

    [Theory]
    [InlineData("50, 0.5", "two steps")]
    [InlineData("50, 0.5\nhard", "Line 2")]
    [InlineData("-5, 0.5\n0, 0", "0 or more")]
    [InlineData("", "two steps")]
    public void What_cannot_be_read_is_said(string text, string fault) => Assert.Contains(fault, TypedPull.Read(text, Measures.Metric).Fault, StringComparison.Ordinal);

    [Fact]
    public void A_pull_is_stored_as_readings_in_which_each_movement_names_its_force()
    {
        var pull = TypedPull.Read("50, 0.5\n0, 0.2", Measures.Metric);
        var readings = pull.Readings(SmallVan.Job, new("A20"), Like, Direction.Forward, new(1, 2, 3)).ToList();
        Assert.Equal(["R001", "R002", "R003", "R004"], readings.Select(r => r.Id.Text));
        Assert.Equal([null, "R001", null, "R003"], readings.Select(r => r.UnderForce?.Text));
        Assert.Equal(Direction.Forward, readings[0].Toward);
        var changed = new Change("pulled", [.. readings.Select(r => Edit.Put(SmallVan.Job, "readings", r.Id.Text, r))]).On(SmallVan.Job);
        Assert.DoesNotContain(changed.Issues, i => i.Weight == Weight.Error);
        var pulled = Assert.Single(Survey.Retention.PulledPart.Of(changed.Job!));
        Assert.Equal([(50, 0.5), (0, 0.2)], pulled.Steps.Select(s => (s.ForceN, s.MovementMm)));
    }
}
