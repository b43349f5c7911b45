using Wainwright.Fitout;
using Wainwright.Web.Entry;

namespace Wainwright.Web.Tests.Entry;

public sealed class AdoptedTests
{
    private static readonly Joint Added = SmallVan.Job.Joints[0] with { Id = new("A20-mend-1"), Type = FixingType.RivetNut, Points = [new(1000, 1700, 600)] };

    [Fact]
    public void A_plan_is_taken_in_as_one_change_and_taken_back_whole()
    {
        var job = SmallVan.Job;
        var planned = job with { Joints = [.. job.Joints, Added], Parts = [job.Parts[0], job.Parts[1] with { Shelves = [new() { Name = "top", LipMm = 60 }] }] };
        var edits = Adopted.Of(job, planned, job);
        Assert.Equal(["parts/A21", "joints/A20-mend-1"], edits.Select(e => e.Where));
        var change = new Change("planned", edits);
        var taken = change.On(job).Job!;
        Assert.Equal(JobFile.Write(planned), JobFile.Write(taken));
        Assert.Equal(JobFile.Write(job), JobFile.Write(change.Inverse().On(taken, undoing: true).Job!));
    }

    [Fact]
    public void What_has_changed_since_the_plan_was_made_is_left_as_it_is_now()
    {
        var before = SmallVan.Job;
        var now = before with { Parts = [before.Parts[0] with { Note = "looked at since" }, before.Parts[1]] };
        var taken = new Change("planned", Adopted.Of(now, before with { Joints = [.. before.Joints, Added] }, before)).On(now).Job!;
        Assert.Equal("looked at since", taken.Parts[0].Note);
        Assert.Equal(3, taken.Joints.Count);
    }

    [Fact]
    public void A_plan_that_changes_nothing_is_no_edit() => Assert.Empty(Adopted.Of(SmallVan.Job, SmallVan.Job with { Note = "x" }, SmallVan.Job));
}
