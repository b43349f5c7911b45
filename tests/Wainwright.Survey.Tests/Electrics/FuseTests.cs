using Wainwright.Fitout;

namespace Wainwright.Survey.Tests.Electrics;

public sealed class FuseTests
{
    static Job Van(double? mm2, double? ratedA, bool guarded = true) => A.Van(A.Part("fuse", new Overcurrent { RatedA = ratedA })) with
    {
        Lines =
        [
            new()
            {
                Id = new("D"), Name = "feed", Medium = Medium.Dc, Build = LineBuild.Cable, From = new(), To = new(), Known = Known.Seen,
                ConductorMm2 = mm2 is { } s ? new Measured(s) : null, ProtectedBy = guarded ? new PartId("fuse") : null,
            },
        ],
    };

    [Theory]
    [InlineData(4.0, 20.0, Verdict.Holds)]
    [InlineData(4.0, 40.0, Verdict.CannotTell)]
    [InlineData(4.0, 100.0, Verdict.FallsShort)]
    [InlineData(1.5, 30.0, Verdict.CannotTell)]
    [InlineData(1.5, 60.0, Verdict.FallsShort)]
    [InlineData(null, 20.0, Verdict.CannotTell)]
    [InlineData(4.0, null, Verdict.CannotTell)]
    public void A_fuse_is_judged_against_the_worst_and_the_best_insulation(double? mm2, double? ratedA, Verdict verdict) =>
        Assert.Equal(verdict, Van(mm2, ratedA).Check("fuse-guards-cable").Verdict);

    [Fact]
    public void A_cable_whose_fuse_nobody_found_cannot_tell() => Assert.Equal(Verdict.CannotTell, Van(4, 20, guarded: false).Check("fuse-guards-cable").Verdict);

    [Fact]
    public void Unknown_cables_are_named_together() =>
        Assert.Equal(SubjectKind.Van, Van(null, null).Check("fuse-guards-cable").Subject.Kind);

    [Fact]
    public void A_cable_thinner_than_the_table_is_not_guessed() => Assert.Equal(Verdict.CannotTell, Van(0.5, 3).Check("fuse-guards-cable").Verdict);
}
