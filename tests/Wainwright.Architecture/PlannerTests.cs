namespace Wainwright.Architecture;

/// <summary>A removal plan comes from geometry, joints and services, never from what people usually do first.</summary>
public sealed class PlannerTests
{
    [Fact]
    public void The_planner_never_reads_what_is_usually_taken_out_first()
    {
        using var access = new Compiled(House.Assembly("Access"));
        Assert.DoesNotContain(access.MembersTouched, m => m.Contains("TakeOutFirst", StringComparison.Ordinal) || m.StartsWith("UsualOrder.", StringComparison.Ordinal));
        Assert.DoesNotContain(access.Texts, t => t.Contains("TakeOutFirst", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void The_scan_does_see_members_of_the_model_where_they_are_read()
    {
        using var cli = new Compiled(House.Assembly("Cli"));
        Assert.Contains("JobFile.Read", cli.MembersTouched);
    }
}
