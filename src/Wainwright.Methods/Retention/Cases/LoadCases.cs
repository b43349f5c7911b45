using static Wainwright.Methods.Provenance;

namespace Wainwright.Methods.Retention;

/// <summary>Sets of accelerations to choose from. No rule read here sets one for furniture in a van: the choice is the workshop's.</summary>
/// <remarks>Seats, belts, child restraints and gas containers are out of scope: their regulations and licensed people decide.</remarks>
public static class LoadCases
{
    /// <summary>Cases to choose from.</summary>
    public static readonly Basis Basis = new(
        Source: "each case names its own; that it is used for furniture is this project's choice",
        Assumes: ["static load in place of a blow of 50 to 150 ms", "each direction alone"],
        Caution: "Holding a case certifies nothing. Seats, belts, child restraints, gas containers and structure: the regulation and a licensed engineer.",
        How: OwnRule);

    const string Static = "A crash pulse is dynamic: a stiff part may feel up to twice it, loose things behind a gap far more.";

    /// <summary>Every day in a light van.</summary>
    public static AccelerationCase DrivingLightVan { get; } = new(
        "driving-light-van", "Driving, light van", CaseKind.Driving, 0.9, 0.5, 0.7, 1.0, 1.0, false,
        "VDI 2700 part 16, over 2.0 to 3.5 t, the higher of two figures in ESV paper 09-0008; up and down, for a bump: this project's choice, no source", Quoted,
        "Stays in place under full braking, swerving and rough road.", "Says nothing of a crash, nor of years of shaking.")
    {
        Notes =
        [
            "The paper contradicts itself for this class: its figure 1 says 0.8 forward and 0.6 sideways, its text 0.9 and 0.7. The higher is taken.",
            "One g up and one g down besides gravity, for a bump, are this project's choice: no source gives them.",
            "EN 12195-1 does not cover vehicles of 3.5 t and less, and says that light ones may reach more.",
        ],
    };

    /// <summary>Rolling over.</summary>
    public static AccelerationCase Rollover { get; } = new(
        "rollover", "Rolling over", CaseKind.Crash, null, null, 4.0, 3.0, null, false,
        "chosen after 14 CFR 25.561(b)(3) (3 g up, 4 g sideways for attachments) and NFPA 1901 (3 g)", OwnRule,
        "Stays on floor and walls when the van turns on its side or roof.", "No figure is published for furniture in a van that rolls. " + Static);

    /// <summary>Loose equipment in a fire-appliance cab.</summary>
    public static AccelerationCase NineThreeCab { get; } = new(
        "nine-three-cab", "9–3 cab rule", CaseKind.Crash, 9, 9, 3, 3, 3, false,
        "NFPA 1901, 14.1.11, as quoted in three articles of the fire trade", Quoted,
        "Meets what that rule asks of mounts for equipment in a cab, as a static load.", "Written for equipment in fire-appliance cabs. " + Static);

    /// <summary>Emergency landing.</summary>
    public static AccelerationCase AircraftEmergency { get; } = new(
        "aircraft-emergency", "Aircraft emergency landing", CaseKind.Crash, 9, 1.5, 4.0, 3, 6, false,
        "14 CFR 25.561(b)(3), ultimate, each alone; sideways 3.0 for the airframe, 4.0 for seats and their attachments", Read,
        "Meets that paragraph's inertia forces as a static load.", "Written for transport aircraft. " + Static)
    {
        Notes = ["Items changed quickly: 1.33 times on their local attachments (25.561(c)(2))."],
    };

    /// <summary>Ten everywhere.</summary>
    public static AccelerationCase TenAllRound { get; } = new(
        "ten-all-round", "Ten all round", CaseKind.Crash, 10, 10, 10, 10, 10, false,
        "EN 1789, 4.5.9 and 5.3, road ambulances, all fixed devices; the text itself was not opened", FromMemory,
        "Meets ten times its weight in every direction as a static load.", "From memory. Written for ambulances. " + Static);

    /// <summary>Twenty along, eight across.</summary>
    public static AccelerationCase TwentyForward { get; } = new(
        "twenty-forward", "Twenty forward", CaseKind.Crash, 20, 20, 8, null, null, false,
        "figures of UN R67 17.4.5 and R110 17.4.4 for containers in light vehicles", FromMemory,
        "Meets twenty times its weight along the van and eight across as a static load.", "From memory. Not an approval of any gas container: that is out of scope. " + Static);

    /// <summary>The six a workshop may choose.</summary>
    public static IReadOnlyList<AccelerationCase> Choices { get; } = [DrivingLightVan, Rollover, NineThreeCab, AircraftEmergency, TenAllRound, TwentyForward];
}
