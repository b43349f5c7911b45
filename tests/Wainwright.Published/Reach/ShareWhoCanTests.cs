using Wainwright.Methods.Reach;
using static Wainwright.Methods.Reach.BodyMeasures;
using static Wainwright.Methods.Reach.ShareWhoCan;

namespace Wainwright.Published.Reach;

public sealed class ShareWhoCanTests
{
    // Source:    ANSUR II (US Army 2012, public data), counted person by person among 4 082 men and 1 986 women: bare forearm through
    //            a round hole and elbow to finger tip at least the depth; tensed upper arm through a hole and thumb-tip reach.
    // Seen:      the data themselves.
    // Tolerance: a normal law stands in for the count; on 28 such shares the worst miss was 2.4 points: 2.5.
    [Theory]
    [InlineData(People.Men, Limb.ToTheElbow, 110, 430, 93.4)]
    [InlineData(People.Women, Limb.ToTheElbow, 110, 430, 66.0)]
    [InlineData(People.Men, Limb.ToTheElbow, 120, 450, 90.5)]
    [InlineData(People.Women, Limb.ToTheElbow, 120, 450, 32.1)]
    [InlineData(People.Men, Limb.ToTheShoulder, 130, 700, 92.2)]
    [InlineData(People.Women, Limb.ToTheShoulder, 130, 700, 86.0)]
    public void As_many_reach_it_as_were_counted(People whose, Limb limb, double openingMm, double depthMm, double ofHundred) =>
        Assert.Equal(ofHundred, 100 * ShareWhoCan.Of(new(whose, limb, openingMm, depthMm)).Share, tolerance: 2.5);

    // Source:    the same, shoulders along a slot and chest across it.
    // Seen:      the data themselves.
    // Tolerance: as above.
    [Theory]
    [InlineData(People.Men, 560, 300, 91.8)]
    [InlineData(People.Women, 560, 300, 96.7)]
    [InlineData(People.Men, 500, 320, 38.8)]
    [InlineData(People.Women, 500, 320, 95.0)]
    public void As_many_bodies_pass_as_were_counted(People whose, double widthMm, double heightMm, double ofHundred) =>
        Assert.Equal(ofHundred, 100 * OfBodies(whose, widthMm, heightMm), tolerance: 2.5);
}
