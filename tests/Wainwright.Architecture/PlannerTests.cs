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

    /// <summary>A scan that sees nothing would pass the test above.</summary>
    [Fact]
    public void The_scan_does_see_what_the_planner_reads_of_a_part()
    {
        using var access = new Compiled(House.Assembly("Access"));
        Assert.Contains("Part.get_StandsOn", access.MembersTouched);
        Assert.Contains("Part.get_Solids", access.MembersTouched);
        Assert.NotEmpty(access.Texts);
    }
}
