using System.Collections;

namespace Wainwright.Geometry;

/// <summary>The corner points of a way, worked out when somebody looks: a search asks thousands of ways and looks at few.</summary>
internal sealed class Walked(Trail trail, IReadOnlyList<Pose> poses) : IReadOnlyList<Waypoint>
{
    private readonly Lazy<IReadOnlyList<Waypoint>> points = new(() => trail.Waypoints(poses));

    public int Count => points.Value.Count;

    public Waypoint this[int index] => points.Value[index];

    public IEnumerator<Waypoint> GetEnumerator() => points.Value.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
