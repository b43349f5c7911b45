using Wainwright.Methods.Reach;
using static Wainwright.Methods.Reach.BodyMeasures;

namespace Wainwright.Access;

/// <summary>The body that gets to a thing: how much room it takes and how far it reaches. Bare skin or light clothing.</summary>
public sealed record Person
{
    /// <summary>In words, to stand in an answer.</summary>
    public required string Name { get; init; }

    /// <summary>Breadth of the hand with what it needs to move [mm].</summary>
    public required int HandMm { get; init; }

    /// <summary>Thickness of the forearm at its thickest, tensed [mm].</summary>
    public required double ForearmMm { get; init; }

    /// <summary>
    /// What elbow and upper arm need across [mm]: the thickness of the upper arm, tensed, but never less than the common figure for an arm
    /// to the shoulder (125 mm, source not checked): an elbow has to bend.
    /// </summary>
    public required double UpperArmMm { get; init; }

    /// <summary>Room for head and shoulder, the same in every direction [mm]; the depth of the chest.</summary>
    public required int BodyMm { get; init; }

    /// <summary>Room for the head, the same in every direction so that it may turn [mm].</summary>
    public required int HeadMm { get; init; }

    /// <summary>Hand from the wrist to the finger tip [mm].</summary>
    public required double HandLongMm { get; init; }

    /// <summary>From the elbow to the centre of the grip [mm].</summary>
    public required double ElbowToGripMm { get; init; }

    /// <summary>From the elbow to the finger tip [mm].</summary>
    public required double ElbowToFingertipMm { get; init; }

    /// <summary>From the shoulder's joint to the elbow [mm].</summary>
    public required double UpperArmLongMm { get; init; }

    /// <summary>Openings for the large man (95th percentile), reach of the small woman (5th): who can be sent to any van.</summary>
    public static Person Anyone { get; } = Made("anyone, reckoned with a large man's body and a small woman's reach", m => Find(People.Men, m).P95, m => Find(People.Women, m).P5);

    /// <summary>The man at a percentile of size and reach.</summary>
    /// <param name="share">Share of men who are not larger, more than 0 and less than 1.</param>
    public static Person Man(double share) => Of(People.Men, Normal(share), Normal(share));

    /// <summary>Somebody so many standard deviations from the mean in size and in reach.</summary>
    internal static Person Of(People whose, double size, double reach)
    {
        double At(Measure measure, double z) => Find(whose, measure).Mean + z * Find(whose, measure).Deviation;
        return Made(whose == People.Women ? "a woman" : "a man", m => At(m, size), m => At(m, reach));
    }

    private static double Normal(double share) => (Find(People.Men, Measure.Stature).At(share) - Find(People.Men, Measure.Stature).Mean) / Find(People.Men, Measure.Stature).Deviation;

    private static Person Made(string name, Func<Measure, double> size, Func<Measure, double> reach) => new()
    {
        Name = name,
        // hand and head in whole millimetres with a little to move; common practice, no source
        HandMm = (int)Math.Ceiling(size(Measure.HandBreadth)) + 4,
        HeadMm = (int)Math.Ceiling(size(Measure.HeadLength)) + 5,
        ForearmMm = DiameterMm(size(Measure.ForearmCircumference)),
        UpperArmMm = Math.Max(DiameterMm(size(Measure.UpperArmCircumference)), AccessOpening.For(AccessOpening.Passing.ArmToShoulder, AccessOpening.Wear.Light)!.Value.RoundMm),
        BodyMm = (int)Math.Ceiling(size(Measure.ChestDepth) / 2) * 2,
        HandLongMm = reach(Measure.HandLength),
        ElbowToGripMm = reach(Measure.ElbowToGrip),
        ElbowToFingertipMm = reach(Measure.ElbowToFingertip),
        // the reach is taken from the wall behind the back: half the chest lies between it and the joint (our rule)
        UpperArmLongMm = reach(Measure.ThumbTipReach) - reach(Measure.ElbowToGrip) - reach(Measure.ChestDepth) / 2,
    };
}
