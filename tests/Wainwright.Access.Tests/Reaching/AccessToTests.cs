using Wainwright.Fitout;

namespace Wainwright.Access.Tests.Reaching;

public class AccessToTests
{
    private static readonly Lazy<RemovalPlanner> Camper = new(() => new(Demo.Camper));

    [Fact]
    public void What_is_open_is_seen_and_reached_with_nothing_else_out_and_nearly_everybody_reaches_it()
    {
        var access = Camper.Value.Access(new PartId("A50"));

        Assert.True(access.See.Now && access.Reach.Now);
        Assert.Null(access.Reach.ShortMm);
        Assert.True(access.Reach.Who is { OfMen: > 0.9, OfWomen: > 0.9 }, access.Reach.Words);
    }

    [Fact]
    public void What_is_hidden_says_what_hides_it_how_to_get_there_and_what_is_missing()
    {
        var access = Camper.Value.Access(new PartId("A52"));

        Assert.False(access.See.Now || access.Reach.Now || access.Remove.Now);
        Assert.All([access.See, access.Reach, access.Remove], a => Assert.Equal(Proof.ProvedCheapest, a.Plan!.Proof));
        Assert.Contains("once", access.See.Words, StringComparison.Ordinal);
        Assert.NotNull(access.Remove.ShortMm);
    }

    [Fact]
    public void An_unknown_part_or_joint_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Camper.Value.Access(new PartId("Z99")));
        Assert.Throws<ArgumentException>(() => Camper.Value.ToolFits(new JointId("Z99")));
    }

    [Fact]
    public void A_longer_thinner_person_never_needs_more_out()
    {
        var tall = Person.Anyone with { ForearmMm = 80, UpperArmMm = 100, BodyMm = 250, HeadMm = 180, UpperArmLongMm = 400 };
        foreach (var part in Demo.Parts("A52 A40 A48 A64"))
        {
            var easy = RemovalPlanner.Reach(Demo.Camper, [part], new AccessOptions { Person = tall, Bracket = false });
            Assert.True(easy.TotalMinutes <= Camper.Value.Reach([part]).TotalMinutes + 1e-9, part.ToString());
        }
    }
}
