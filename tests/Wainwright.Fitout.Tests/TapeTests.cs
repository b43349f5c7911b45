using CsCheck;

namespace Wainwright.Fitout.Tests;

public class TapeTests
{
    [Theory]
    [InlineData("812", 812)]
    [InlineData("812 mm", 812)]
    [InlineData("81,2 cm", 812)]
    [InlineData("0.812m", 812)]
    [InlineData("-160", -160)]
    [InlineData("32 in", 812.8)]
    [InlineData("31 15/16 in", 811.2125)]
    [InlineData("31-15/16\"", 811.2125)]
    [InlineData("2' 8\"", 812.8)]
    [InlineData("2ft 8in", 812.8)]
    [InlineData("3 ft 4 5/8", 1031.875)]
    [InlineData("5/8\"", 15.875)]
    [InlineData("6'", 1828.8)]
    [InlineData("2’ 8”", 812.8)]
    public void A_tape_is_read_as_people_write_it(string text, double mm) => Assert.Equal(mm, Tape.Mm(text)!.Value, 6);

    [Theory]
    [InlineData("32", 812.8)]
    [InlineData("31 15/16", 811.2125)]
    [InlineData("3/4", 19.05)]
    [InlineData("812 mm", 812)]
    public void A_bare_number_is_inches_where_inches_are_chosen(string text, double mm) => Assert.Equal(mm, Tape.Mm(text, TapeUnit.Inch)!.Value, 6);

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("about 30")]
    [InlineData("12/0 in")]
    [InlineData("1e5")]
    [InlineData("3 4 5")]
    [InlineData("--5")]
    public void What_is_no_length_is_not_guessed(string? text) => Assert.Null(Tape.Mm(text));

    [Theory]
    [InlineData(811.2125, "31 15/16 in")]
    [InlineData(19.05, "3/4 in")]
    [InlineData(0, "0 in")]
    [InlineData(254, "10 in")]
    [InlineData(-12.7, "-1/2 in")]
    public void Inches_are_shown_in_sixteenths_in_lowest_terms(double mm, string text) => Assert.Equal(text, Tape.Inches(mm));

    [Fact]
    public void What_is_shown_in_inches_reads_back_within_a_thirty_second() =>
        Gen.Double[-3000, 6000].Sample(mm => Math.Abs(Tape.Mm(Tape.Inches(mm))!.Value - mm) <= 25.4 / 32 + 1e-9, seed: "0000KOIKMm12", iter: 500);
}
