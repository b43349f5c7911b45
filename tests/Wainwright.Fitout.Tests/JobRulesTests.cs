using System.Text.Json.Nodes;

namespace Wainwright.Fitout.Tests;

public class JobRulesTests
{
    static IReadOnlyList<Issue> Rules(Func<Job, Job> bend) => JobRules.Of(bend(Samples.Small()));

    static Job WithPart(Job job, Part part) => job with { Parts = [.. job.Parts, part] };

    static Part Box(string id, Place at, Place size) => new() { Id = new(id), Name = id, System = PartSystem.Furniture, Known = Known.Measured, Solids = [new BoxSolid { At = at, Size = size }] };

    [Fact]
    public void The_small_van_is_clean() => Assert.Empty(JobRules.Of(Samples.Small()));

    [Fact]
    public void Two_parts_of_one_id_are_reported_with_both_places()
    {
        var issue = Assert.Single(Rules(j => WithPart(j, j.Parts[0])));
        Assert.Equal("job.parts[2].id", issue.Where);
        Assert.Contains("parts[0]", issue.Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_outside_the_shell_needs_to_say_so()
    {
        var issue = Assert.Single(Rules(j => WithPart(j, Box("P3", new(1900, 0, 0), new(300, 200, 200)))));
        Assert.Contains("200 mm beyond the rear doors", issue.Rule, StringComparison.Ordinal);
        Assert.Empty(Rules(j => WithPart(j, Box("P3", new(1900, 0, 0), new(300, 200, 200)) with { Outside = true })));
    }

    [Fact]
    public void A_ring_of_parts_standing_on_each_other_is_named()
    {
        var issue = Assert.Single(Rules(j => j with { Parts = [j.Parts[0] with { StandsOn = [new("P2")] }, j.Parts[1]] }));
        Assert.Equal(Weight.Error, issue.Weight);
        Assert.Contains("P1 on P2 on P1", issue.Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_held_only_by_one_another_are_a_doubt_not_an_error()
    {
        var ring = Rules(j =>
        {
            var parts = new[] { "X", "Y", "Z" }.Select((id, i) => Box(id, new(900 + 210 * i, 0, 0), new(200, 200, 200))).ToList();
            Joint Held(string a, string b) => j.Joints[0] with { Id = new($"{a}-{b}"), Part = new(a), To = new(b) };
            return j with { Parts = [.. j.Parts, .. parts], Joints = [.. j.Joints, Held("X", "Y"), Held("Y", "Z"), Held("Z", "X")] };
        });
        Assert.Equal(3, ring.Count);
        Assert.All(ring, i => Assert.Equal(Weight.Doubt, i.Weight));
    }

    [Fact]
    public void A_joint_holding_a_part_to_itself_is_an_error() =>
        Assert.Contains(Rules(j => j with { Joints = [j.Joints[0] with { To = new("P1") }] }), i => i.Weight == Weight.Error && i.Where.EndsWith(".to", StringComparison.Ordinal));

    [Fact]
    public void Whatever_is_named_must_be_there()
    {
        var issues = Rules(j => j with
        {
            Joints = [j.Joints[0] with { Part = new("NO1") }],
            Findings = [j.Findings[0] with { Parts = [new("NO2")], Readings = [new("NO3")] }],
        });
        Assert.Equal(["NO1", "NO2", "NO3"], issues.Select(i => i.Rule.Split('“', '”')[1]));
    }

    [Fact]
    public void A_reading_in_the_wrong_unit_is_refused_with_the_right_one()
    {
        var issue = Assert.Single(Rules(j => j with { Readings = [j.Readings[0] with { Unit = "kg" }] }));
        Assert.Contains("%", issue.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void An_outline_that_is_not_convex_is_refused()
    {
        var dart = new PrismSolid { Along = Axis.Z, LengthMm = 100, Outline = [new(100, 100, 600), new(300, 100, 600), new(200, 150, 600), new(200, 400, 600)] };
        var issue = Assert.Single(Rules(j => WithPart(j, Box("P3", default, default) with { Solids = [dart] })));
        Assert.Contains("not convex", issue.Rule, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" A1")]
    [InlineData("A/1")]
    [InlineData("..\\A")]
    [InlineData("A\u0007")]
    public void Ids_that_would_hurt_are_refused(string id) => Assert.False(JobRules.IsGoodId(id));

    [Theory]
    [InlineData("A14t")]
    [InlineData("vent 2, rear")]
    [InlineData("Ø-12")]
    public void Free_form_ids_are_taken(string id) => Assert.True(JobRules.IsGoodId(id));

    [Fact]
    public void A_doubt_about_something_not_inspected_asks_what_would_tell()
    {
        var issue = Assert.Single(Rules(j => j with { Findings = [j.Findings[0] with { Known = Known.NotInspected }] }));
        Assert.Equal(Weight.Doubt, issue.Weight);
    }

    [Fact]
    public void A_size_of_nothing_is_refused() =>
        Assert.Contains(Rules(j => WithPart(j, Box("P3", new(900, 0, 0), new(100, 0, 100)))), i => i.Where.EndsWith(".size", StringComparison.Ordinal));
}
