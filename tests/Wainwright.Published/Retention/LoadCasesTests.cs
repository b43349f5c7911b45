using Wainwright.Methods.Retention;

namespace Wainwright.Published.Retention;

public sealed class LoadCasesTests
{
    static AccelerationCase Row(string id) => Assert.Single(PublishedCases.All, c => c.Id == id);

    // Source:    14 CFR 25.561(b)(3): upward 3.0, forward 9.0, sideward 3.0 on the airframe and 4.0 on seats and attachments, downward 6.0, rearward 1.5.
    // Seen:      in a mirror of the official text (federal.elaws.us).
    // Tolerance: exact.
    [Fact]
    public void Emergency_landing_is_as_the_paragraph_has_it()
    {
        var airframe = Row("cfr-25-561");
        Assert.Equal((9.0, 1.5, 3.0, 3.0, 6.0), (airframe.ForwardG, airframe.RearwardG, airframe.SidewaysG, airframe.UpG, airframe.DownG));
        Assert.Equal(4.0, LoadCases.AircraftEmergency.SidewaysG);
    }

    // Source:    49 CFR 393.102(a)(1) and (2): 0.8, 0.5, 0.5 against breaking strength; 0.435, 0.5, 0.25 against working limit.
    // Seen:      in the public text.
    // Tolerance: exact.
    [Fact]
    public void Cargo_is_as_the_carriers_rule_has_it()
    {
        var (breaking, working) = (Row("cfr-393-102-breaking"), Row("cfr-393-102-working"));
        Assert.Equal((0.8, 0.5, 0.5), (breaking.ForwardG, breaking.RearwardG, breaking.SidewaysG));
        Assert.Equal((0.435, 0.5, 0.25), (working.ForwardG, working.RearwardG, working.SidewaysG));
    }

    // Source:    VDI 2700 part 16, over 2.0 to 3.5 t, in ESV paper 09-0008: figure 1 says 0.8 and 0.6, the text 0.9 and 0.7.
    // Seen:      in the paper. It contradicts itself; both are shown and the higher is taken.
    // Tolerance: exact.
    [Fact]
    public void The_contradiction_of_the_cargo_paper_is_shown()
    {
        var figure = Row("vdi-2700-16-to-3.5");
        Assert.Equal((0.8, 0.6), (figure.ForwardG, figure.SidewaysG));
        Assert.Equal((0.9, 0.7), (LoadCases.DrivingLightVan.ForwardG, LoadCases.DrivingLightVan.SidewaysG));
        Assert.All((IEnumerable<AccelerationCase>)[figure, LoadCases.DrivingLightVan], c => Assert.Contains(c.Notes, n => n.Contains("contradicts itself", StringComparison.Ordinal)));
    }
}
