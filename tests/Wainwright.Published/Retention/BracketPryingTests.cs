using Wainwright.Methods.Retention;

namespace Wainwright.Published.Retention;

public sealed class BracketPryingTests
{
    // Source:    a prying spreadsheet after the AISC manual, 9th edition: d 1 in, p 3, b 1.3125, a 1.6406, t 1.0, hole 1 1/16, yield 50 ksi, bolt 31.416 kip:
    //            tc 1.166 in, alpha' 0.405, allowable 29.11 kip.
    // Seen:      in the spreadsheet (scribd.com, 207129023).
    // Tolerance: 0.01 in and 0.001 of alpha' as printed. The load does not agree to 0.01 kip: the equations give 29.12; the sheet went on from its
    //            own rounded 0.405, and with that they give its 29.11.
    [Fact]
    public void A_fitting_pries_as_the_spreadsheet_says()
    {
        var fitting = BracketPrying.Of(new(31_416 * Us.Lb, 1.3125 * Us.In, 1.6406 * Us.In, 3 * Us.In, 1 * Us.In, 1 * Us.In, 17.0 / 16 * Us.In, 50 * Us.Ksi, IsOlderForm: true));
        Assert.Equal(1.166, fitting.FullThicknessMm / Us.In, tolerance: 0.01);
        Assert.Equal(0.405, fitting.Prying, tolerance: 0.001);
        Assert.Equal(29.12, fitting.CarriesN / Us.Lb / 1000, tolerance: 0.005);
        const double delta = 1 - (17.0 / 16 / 3);
        Assert.Equal(29.11, 31.416 * Math.Pow(Us.In / fitting.FullThicknessMm, 2) * (1 + (delta * 0.405)), tolerance: 0.005);
    }
}
