using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>What a load case asks for: its figure along each axis alone, besides the 1 g down that always acts; rolling over also up and aside at once.</summary>
public static class AskedG
{
    private static readonly Vector3D Left = new(0, -1, 0), Up = new(0, 0, 1);

    private static readonly IReadOnlyList<Vector3D> Axes = [new(-1, 0, 0), new(1, 0, 0), Left, -Left, Up, -Up];

    /// <summary>The published set behind a load case.</summary>
    /// <param name="load">The load case.</param>
    public static AccelerationCase Case(LoadCase load) => load switch
    {
        LoadCase.DrivingLightVan => LoadCases.DrivingLightVan,
        LoadCase.Rollover => LoadCases.Rollover,
        LoadCase.NineThreeCab => LoadCases.NineThreeCab,
        LoadCase.AircraftEmergency => LoadCases.AircraftEmergency,
        LoadCase.TenAllRound => LoadCases.TenAllRound,
        _ => LoadCases.TwentyForward,
    };

    /// <summary>The ways it asks about and how much [g].</summary>
    /// <param name="load">The load case.</param>
    public static IReadOnlyList<(Vector3D Way, double G)> Of(LoadCase load)
    {
        IEnumerable<Vector3D> ways = load == LoadCase.Rollover ? Axes.Concat(HeldDirections.Of(ThrownWord.Roll)) : Axes;
        return [.. ways.Select(w => (w, G: Demand.Added(Case(load), w))).Where(a => a.G is > 0).Select(a => (a.w, a.G!.Value))];
    }

    /// <summary>Whether it is about every day on the road: no damage may be left, so the first yield counts and a pull test's set too.</summary>
    /// <param name="load">The load case.</param>
    public static bool IsDriving(LoadCase load) => Case(load).Kind == CaseKind.Driving;
}
