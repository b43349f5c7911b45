using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention.Statics;

/// <summary>Against a general linear solver on made-up bodies, and the smooth region between polyhedra.</summary>
public sealed class GeneralProgramTests
{
    public static TheoryData<int, int> Bodies => new() { { 1, 1 }, { 2, 1 }, { 3, 1 }, { 4, 1 }, { 6, 1 }, { 9, 1 }, { 15, 1 }, { 3, 2 }, { 4, 3 } };

    [Theory, MemberData(nameof(Bodies))]
    public void The_factor_is_the_one_that_a_general_linear_solver_finds(int screws, int bodies)
    {
        var asked = 0;
        for (var number = 1; number <= 30; number++)
        {
            var held = Some.Cupboard(1000 * screws + 100 * bodies + number, screws, bodies);
            var shape = number % 2 == 0 ? RegionShape.Inside(8) : RegionShape.Outside(12);
            var ways = ThrowDirections.All.Where((_, i) => (i + number) % 6 == 0).ToList();
            var ours = LoadFactor.Of(held, ways, shape);
            for (var i = 0; i < ways.Count; i++)
            {
                var theirs = GeneralProgram.Factor(held, ways[i], shape);
                Assert.Equal(theirs is not null, ours[i].CarriesItself);
                if (theirs is { } g && double.IsFinite(g)) Assert.Equal(0, (g - ours[i].LowG) / (1 + g), tolerance: 1e-6);
                else if (theirs is { }) Assert.Equal(double.PositiveInfinity, ours[i].LowG);
                asked++;
            }
        }
        Assert.InRange(asked, 100, 200);
    }

    [Theory, InlineData(2), InlineData(5), InlineData(12)]
    public void Polyhedra_inside_and_around_bracket_the_smooth_answer_within_one_in_a_hundred(int screws)
    {
        for (var number = 1; number <= 10; number++)
        {
            var held = Some.Cupboard(77 + number, screws);
            var smooth = LoadFactor.Of(held, ThrowDirections.All);
            var inside = LoadFactor.Of(held, ThrowDirections.All, RegionShape.Inside(48));
            var around = LoadFactor.Of(held, ThrowDirections.All, RegionShape.Outside(48));
            for (var i = 0; i < smooth.Count; i++)
            {
                if (double.IsInfinity(smooth[i].LowG)) continue;
                Assert.InRange(smooth[i].LowG, inside[i].LowG - 1e-6, around[i].HighG + 1e-6);
                Assert.InRange(around[i].HighG - inside[i].LowG, 0, 0.01 * (1 + smooth[i].LowG) + 1e-6);
            }
        }
    }
}
