using Wainwright.Methods.Retention;

namespace Wainwright.Published.Retention.Statics;

public sealed class GroupTests
{
    const double MmPerIn = 25.4;

    static ElasticGroup.Point[] Four(double halfWidthMm, double halfHeightMm) =>
        [new(-halfWidthMm, -halfHeightMm), new(-halfWidthMm, halfHeightMm), new(halfWidthMm, -halfHeightMm), new(halfWidthMm, halfHeightMm)];

    static double[] Sizes(ElasticGroup.Result result) => [.. result.ForceN.Select(f => Math.Sqrt(f.XN * f.XN + f.YN * f.YN))];

    // Source:    Shigley, Mechanical Engineering Design, 8th and 9th edition, example 8-7: four bolts at ±75, ±60 mm, 16 kN at 425 mm from their middle:
    //            r 96.0 mm, secondary force 17.7 kN, the near pair 21.0 kN, the far pair 14.8 kN; shear stress 146 MPa on 144 mm².
    // Seen:      in a university library's copy, pages 482 and 483.
    // Tolerance: printed to three figures: half of the last.
    [Fact]
    public void Four_bolts_of_a_cantilever_carry_what_the_textbook_example_says()
    {
        var group = ElasticGroup.Of(new(Four(75, 60), 0, -16_000, 425, 0));
        Assert.Equal(96.0, Math.Sqrt(group.SumOfSquaresMm2 / 4), tolerance: 0.05);
        Assert.Equal([14_800, 14_800, 21_000, 21_000], Sizes(group).Select(s => Math.Round(s / 100) * 100));
        Assert.Equal(17_700, 16_000 * 425 / (4 * Math.Sqrt(group.SumOfSquaresMm2 / 4)), tolerance: 50);
        Assert.Equal(146, group.LargestN / 144, tolerance: 0.5);
    }

    // Source:    An examination question: four bolts at ±40, ±30 mm, 10 kN at 100 mm: 7.16 kN in the worst.
    // Seen:      on interviewmania.com.
    // Tolerance: printed to three figures.
    [Fact]
    public void The_worst_of_four_bolts_carries_what_the_examination_says() =>
        Assert.Equal(7_160, ElasticGroup.Of(new(Four(40, 30), 0, -10_000, 100, 0)).LargestN, tolerance: 5);

    // Source:    AS 4100 bolt group page: two by three bolts, 80 by 70 mm: sum of r² 29 200 mm².
    // Seen:      on steelcalculator.app.
    // Tolerance: exact.
    [Fact]
    public void Two_by_three_bolts_have_the_sum_of_squares_of_the_page()
    {
        ElasticGroup.Point[] six = [.. from x in (double[])[0, 80] from y in (double[])[0, 70, 140] select new ElasticGroup.Point(x, y)];
        Assert.Equal(29_200, ElasticGroup.Of(new(six, 0, -1, 0, 0)).SumOfSquaresMm2, tolerance: 1e-6);
    }

    // Source:    AISC Steel Construction Manual, coefficient C: six bolts in a line, 3 in apart, 6 in off: 3.55.
    // Seen:      quoted in the README of an open bolt group package, "matches the AISC tables".
    // Tolerance: printed to three figures; the package says 0.01.
    [Fact]
    public void Six_bolts_in_a_line_have_the_coefficient_of_the_manual()
    {
        (double, double)[] line = [.. Enumerable.Range(0, 6).Select(i => (0.0, 3 * MmPerIn * i))];
        Assert.Equal(3.55, InstantaneousCentre.Of(new(line, 0, -1, 6 * MmPerIn, 0)).Coefficient, tolerance: 0.01);
    }

    // Source:    Bhandari, Design of Machine Elements, example 7.5: a bracket of four bolts, 25 kN at 100 mm, rows 150 and 25 mm from the edge:
    //            8 108.1 N of pull, 6 250 N of shear, 98.022 mm² at 76 MPa of shear.
    // Seen:      in an open set of worked solutions of the book.
    // Tolerance: printed to five figures.
    [Fact]
    public void A_bracket_that_tips_pulls_its_upper_bolts_as_example_seven_five_says()
    {
        var bracket = TensionRows.Of(new([new(150, 2, 1), new(25, 2, 1)], 25_000 * 100, 25_000));
        Assert.Equal(8_108.1, bracket.PullN[0], tolerance: 0.05);
        Assert.Equal(6_250, bracket.ShearN, tolerance: 1e-9);
        Assert.Equal(98.022, TensionRows.LargestShearN(bracket.PullN[0], bracket.ShearN) / 76, tolerance: 1e-3);
    }

    // Source:    the same, example 7.7: six bolts, 50 kN at 250 mm, rows at 300, 200 and 100 mm: 13 392.9 N; 133.929 mm² at 100 MPa.
    // Seen:      in the same set.
    // Tolerance: printed to six figures.
    [Fact]
    public void Three_rows_of_bolts_are_pulled_as_example_seven_seven_says()
    {
        var bracket = TensionRows.Of(new([new(300, 2, 1), new(200, 2, 1), new(100, 2, 1)], 50_000 * 250, 0));
        Assert.Equal(13_392.9, bracket.PullN[0], tolerance: 0.05);
        Assert.Equal(133.929, bracket.PullN[0] / 100, tolerance: 1e-3);
    }
}
