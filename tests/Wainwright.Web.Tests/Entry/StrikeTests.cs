using Wainwright.Fitout;
using Wainwright.Web.Entry;

namespace Wainwright.Web.Tests.Entry;

public sealed class StrikeTests
{
    [Fact]
    public void A_part_goes_with_its_joints_and_whatever_named_it_stays()
    {
        var change = new Change("strike", [.. Strike.Part(SmallVan.Job, new("A20"))]);
        var job = change.On(SmallVan.Job).Job!;
        Assert.Equal(["A21"], job.Parts.Select(p => p.Id.Text));
        Assert.Empty(job.Joints);
        Assert.Empty(job.Parts[0].StandsOn);
        Assert.Null(job.Lines[0].From.Part);
        Assert.Equal("loose", Assert.Single(job.Findings).What);
    }

    [Fact]
    public void A_joint_goes_alone_and_the_line_ends_at_none_that_anybody_saw()
    {
        var job = new Change("strike", [.. Strike.Joint(SmallVan.Job, new("J1"))]).On(SmallVan.Job).Job!;
        Assert.Equal(["J2"], job.Joints.Select(j => j.Id.Text));
        Assert.Null(job.Lines[0].From.Joint);
        Assert.Equal(new PartId("A20"), job.Lines[0].From.Part);
        Assert.Empty(job.Findings[0].Joints);
    }

    [Fact]
    public void Taking_it_back_brings_all_of_it_again()
    {
        var change = new Change("strike", [.. Strike.Part(SmallVan.Job, new("A20"))]);
        var back = change.Inverse().On(change.On(SmallVan.Job).Job!, undoing: true).Job!;
        Assert.Equal(Sorted(SmallVan.Job), Sorted(back));
    }

    // what was taken out comes back at the end of its list; the store keeps the ranks
    private static IEnumerable<string> Sorted(Job job) => Section.Lists.SelectMany(s => s.All(job).Select(e => $"{s.Name} {e.Id} {e.Entry}")).Order(StringComparer.Ordinal);
}
