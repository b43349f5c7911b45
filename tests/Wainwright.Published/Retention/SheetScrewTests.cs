using Wainwright.Methods.Retention;
using static Wainwright.Methods.Retention.SheetScrewAisi;

namespace Wainwright.Published.Retention;

public sealed class SheetScrewTests
{
    const Edition Older = Edition.S100Of2012, Newer = Edition.S100Of2016;

    static double ShearLb(double headIn, double farIn, double dIn, double ksi) => ShearN(headIn * Us.In, ksi * Us.Ksi, farIn * Us.In, ksi * Us.Ksi, dIn * Us.In) / Us.Lb;

    static double PullOutLb(Edition edition, double farIn, double dIn, double ksi) => PullOutN(edition, farIn * Us.In, ksi * Us.Ksi, dIn * Us.In) / Us.Lb;

    static double PullOverLb(double sheetIn, double headIn, double ksi) => PullOverN(Older, sheetIn * Us.In, ksi * Us.Ksi, headIn * Us.In) / Us.Lb;

    // Source:    evaluation report ESR-1976, table 2, allowable pull-out, steel of 45 ksi, lb.
    // Seen:      the report's page in a building permit of Everett WA (lfportal.everettwa.gov, doc 1596364, p. 38).
    // Tolerance: printed to the pound, sheets to the mil: 0.6 lb.
    [Theory]
    [InlineData(0.190, new[] { 0.018, 0.024, 0.030, 0.036, 0.048, 0.060, 0.075, 0.105, 0.125 }, new[] { 44.0, 58, 73, 87, 116, 145, 182, 254, 303 })]
    [InlineData(0.216, new[] { 0.018, 0.024, 0.030, 0.036, 0.048, 0.060, 0.075, 0.105, 0.125, 0.187, 0.250 }, new[] { 50.0, 66, 83, 99, 132, 165, 207, 289, 344, 515, 689 })]
    [InlineData(0.250, new[] { 0.018, 0.024, 0.030, 0.036, 0.048, 0.060, 0.075, 0.105, 0.125, 0.187, 0.250 }, new[] { 57.0, 77, 96, 115, 153, 191, 239, 335, 398, 596, 797 })]
    public void A_screw_pulls_out_of_sheet_as_the_report_tables(double dIn, double[] sheetsIn, double[] lb) =>
        Assert.All(sheetsIn.Zip(lb), c => Assert.Equal(c.Second, PullOutLb(Older, c.First, dIn, 45) / SafetyFactor(Older, Limit.PullOut), tolerance: 0.6));

    // Source:    evaluation report ESR-1976, table 4, allowable shear, steel of 45 ksi, lb: both sheets alike, and far sheet 2.67 times the near one.
    // Seen:      the same permit, p. 39. Its cells between (far sheet up to 2.5 times) are not S100: the author interpolated in gauge. Left out.
    // Tolerance: printed to the pound.
    [Theory]
    [InlineData(0.018, 0.018, 66)]
    [InlineData(0.030, 0.030, 143)]
    [InlineData(0.048, 0.048, 289)]
    [InlineData(0.060, 0.060, 404)]
    [InlineData(0.105, 0.105, 808)]
    [InlineData(0.125, 0.125, 962)]
    [InlineData(0.018, 0.048, 139)]
    public void A_screw_shears_between_sheets_as_the_report_tables(double headIn, double farIn, double lb) =>
        Assert.Equal(lb, ShearLb(headIn, farIn, 0.190, 45) / SafetyFactor(Older, Limit.Shear), tolerance: 1);

    // Source:    a stud industry's screw table after S100 section E4: steel of 33 ksi, allowable shear, pull-out, pull-over, lb.
    // Seen:      scanned in a building permit of Tigard OR (930449). 36.5 prints as 37.
    // Tolerance: printed to the pound.
    [Theory]
    [InlineData(0.0188, 0.138, 0.272, 44, 24, 84)]
    [InlineData(0.0188, 0.190, 0.340, 52, 33, 105)]
    [InlineData(0.0283, 0.138, 0.272, 82, 37, 127)]
    [InlineData(0.0283, 0.164, 0.272, 89, 43, 127)]
    public void Studs_are_held_as_their_industry_tables(double sheetIn, double dIn, double headIn, double shear, double pullOut, double pullOver)
    {
        Assert.Equal(shear, ShearLb(sheetIn, sheetIn, dIn, 33) / 3, tolerance: 1);
        Assert.Equal(pullOut, PullOutLb(Older, sheetIn, dIn, 33) / 3, tolerance: 1);
        Assert.Equal(pullOver, PullOverLb(sheetIn, headIn, 33) / 3, tolerance: 1);
    }

    // Source:    AISI D110-16, design examples, p. 1-31: far sheet 0.0451 in of 45 ksi, screw 0.190 in: tilting 789 lb, bearing 1 041 lb; near sheet 0.0566 in of 65 ksi: bearing 1 887 lb.
    // Seen:      quoted in the tests of an open library of S100.
    // Tolerance: 1 %, the library's own.
    [Fact]
    public void The_design_manuals_screw_tilts_and_bears_as_printed()
    {
        Assert.Equal(789, TiltingN(0.0451 * Us.In, 45 * Us.Ksi, 0.190 * Us.In) / Us.Lb, tolerance: 7.89);
        Assert.Equal(1_041, BearingN(0.0451 * Us.In, 45 * Us.Ksi, 0.190 * Us.In) / Us.Lb, tolerance: 10.41);
        Assert.Equal(1_887, BearingN(0.0566 * Us.In, 65 * Us.Ksi, 0.190 * Us.In) / Us.Lb, tolerance: 18.87);
    }

    // Source:    AISI D110-16, p. 2-23, with the factor of S100-16 supplement 3, p. 22: the same screw pulls out at 306 lb.
    // Seen:      quoted in the tests of the same library.
    // Tolerance: 1 %.
    [Fact]
    public void The_newer_text_pulls_it_out_sooner() => Assert.Equal(306, PullOutLb(Newer, 0.0451, 0.190, 45), tolerance: 3.06);

    // Source:    a fastener maker's technical guide, p. 216: nominal pull-over, steel of 45 ksi, heads of 0.415 and 0.311 in, lb.
    // Seen:      in the guide (viewer.joomag.com).
    // Tolerance: printed to five or ten pounds: 6 lb.
    [Theory]
    [InlineData(0.415, new[] { 0.030, 0.036, 0.048, 0.060, 0.075 }, new[] { 835.0, 1010, 1340, 1680, 2100 })]
    [InlineData(0.311, new[] { 0.030, 0.036 }, new[] { 630.0, 755 })]
    public void A_head_goes_through_sheet_as_the_guide_tables(double headIn, double[] sheetsIn, double[] lb) =>
        Assert.All(sheetsIn.Zip(lb), c => Assert.Equal(c.Second, PullOverLb(c.First, headIn, 45), tolerance: 6));

    // Source:    a drilling screw's data sheet: half the nominal shear of equal sheets, steel of 45 ksi, numbers 10 and 12, lb.
    // Seen:      in the sheet (manualshelf.com eaj580, p. 4).
    // Tolerance: printed to five pounds: 3 lb.
    [Theory]
    [InlineData(0.190, new[] { 0.048, 0.060, 0.075 }, new[] { 435.0, 605, 845 })]
    [InlineData(0.216, new[] { 0.048, 0.060, 0.075, 0.105, 0.125, 0.1875 }, new[] { 460.0, 645, 900, 1380, 1640, 2460 })]
    public void Drilling_screws_shear_as_their_sheet_says(double dIn, double[] sheetsIn, double[] lb) =>
        Assert.All(sheetsIn.Zip(lb), c => Assert.Equal(c.Second, 0.5 * ShearLb(c.First, c.First, dIn, 45), tolerance: 3));

    // Source:    the same sheet: average pull-out as tested from steel of 45 ksi, by screw and drill point, lb.
    // Seen:      in the sheet. In the thinner sheets the tests fall below the equation, by as much as 37 % (number 12, point 3, 0.048 in: 250 lb
    //            for 397). Its screws with wings fall further (0.060 in: 250 lb for 574) and are not covered.
    // Tolerance: none: the finding is that every test lies inside the range that this project counts on, and some far below the equation.
    [Theory]
    [InlineData(0.164, new[] { 0.048, 0.060, 0.075, 0.105 }, new[] { 300.0, 335, 525, 855 })]
    [InlineData(0.190, new[] { 0.048, 0.060, 0.075, 0.105 }, new[] { 275.0, 405, 475, 835 })]
    [InlineData(0.190, new[] { 0.060, 0.075, 0.105 }, new[] { 370.0, 410, 745 })]
    [InlineData(0.216, new[] { 0.048, 0.060, 0.075, 0.105 }, new[] { 315.0, 450, 535, 920 })]
    [InlineData(0.216, new[] { 0.048, 0.060, 0.075, 0.105 }, new[] { 250.0, 405, 480, 825 })]
    [InlineData(0.250, new[] { 0.060, 0.075, 0.105 }, new[] { 410.0, 470, 865 })]
    public void Tested_drill_points_fall_below_the_equation_but_inside_the_range_counted_on(double dIn, double[] sheetsIn, double[] testedLb)
    {
        Assert.All(sheetsIn.Zip(testedLb), c => Assert.InRange(c.Second / PullOutLb(Older, c.First, dIn, 45), Tested.Low, Tested.High));
        Assert.Contains(sheetsIn.Zip(testedLb), c => c.Second < PullOutLb(Older, c.First, dIn, 45));
    }
}
