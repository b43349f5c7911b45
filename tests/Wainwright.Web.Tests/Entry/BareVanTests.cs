using Wainwright.Fitout;
using Wainwright.Web.Entry;

namespace Wainwright.Web.Tests.Entry;

public sealed class BareVanTests
{
    public static TheoryData<string> Classes => [.. VanClass.All.Select(c => c.Name)];

    [Theory, MemberData(nameof(Classes))]
    public void Every_class_gives_a_van_without_an_error_whose_guesses_are_called_guesses(string name)
    {
        var vehicle = new BareVan(VanClass.All.Single(c => c.Name == name)).Vehicle(sideDoorRight: true);
        var job = new Job { Format = Job.CurrentFormat, Id = "V", Title = name, Vehicle = vehicle };
        Assert.DoesNotContain(JobRules.Of(job), i => i.Weight == Weight.Error);
        Assert.Equal(Known.Inferred, vehicle.LoadSpace.LengthMm.Known);
        Assert.True(vehicle.LoadSpace.LengthMm.PlusMinus > 0);
        Assert.All(vehicle.Openings, o => Assert.Equal(Known.Inferred, o.Known));
    }

    [Fact]
    public void What_the_tape_said_replaces_the_guess_and_its_doubt()
    {
        var van = new BareVan(VanClass.All[^1]);
        van.Put("length", 4321);
        Assert.Equal(new Measured(4321, null, Known.Measured), van.Vehicle(true).LoadSpace.LengthMm);
        van.Put("length", null);
        Assert.Equal(Known.Inferred, van.Vehicle(true).LoadSpace.LengthMm.Known);
    }

    [Fact]
    public void Arches_are_drawn_only_once_their_place_is_measured()
    {
        var van = new BareVan(VanClass.All[4]);
        Assert.Empty(van.Vehicle(true).LoadSpace.WheelArches);
        foreach (var (key, mm) in new[] { ("archFrom", 1900.0), ("archLength", 700), ("archHeight", 290) }) van.Put(key, mm);
        Assert.Equal([Direction.Left, Direction.Right], van.Vehicle(true).LoadSpace.WheelArches.Select(a => a.Side));
    }
}
