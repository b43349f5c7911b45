namespace Wainwright.Fitout;

/// <summary>
/// A set of accelerations that something fitted shall stand. No rule read here sets one for furniture in a van: the
/// workshop chooses, and the answer says what was chosen.
/// </summary>
public enum LoadCase
{
    /// <summary>Braking, swerving and bumps of a light van, every day.</summary>
    DrivingLightVan,

    /// <summary>Rolling over: towards the roof and to either side.</summary>
    Rollover,

    /// <summary>The rule for loose equipment in a fire-appliance cab: 9 g along the van, 3 g across and up.</summary>
    NineThreeCab,

    /// <summary>The emergency landing of a transport aircraft.</summary>
    AircraftEmergency,

    /// <summary>Ten g in every direction, as for devices in a road ambulance.</summary>
    TenAllRound,

    /// <summary>Twenty g along the van, eight across.</summary>
    TwentyForward,
}
