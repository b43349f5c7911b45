using Wainwright.Fitout;

namespace Wainwright.Survey.Retention;

/// <summary>Load cases in words.</summary>
public static class LoadCaseWords
{
    /// <summary>What people call it.</summary>
    public static string Of(LoadCase load) => load switch
    {
        LoadCase.DrivingLightVan => "driving",
        LoadCase.Rollover => "rolling over",
        LoadCase.NineThreeCab => "9-3 cab rule",
        LoadCase.AircraftEmergency => "aircraft emergency landing",
        LoadCase.TenAllRound => "ten all round",
        _ => "twenty forward",
    };
}
