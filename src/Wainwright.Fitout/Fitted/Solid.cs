using System.Text.Json.Serialization;

namespace Wainwright.Fitout;

/// <summary>One solid of a part, in vehicle axes. A hollow thing is several: its panels.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "shape")]
[JsonDerivedType(typeof(BoxSolid), "box")]
[JsonDerivedType(typeof(CylinderSolid), "cylinder")]
[JsonDerivedType(typeof(PrismSolid), "prism")]
public abstract record Solid
{
    /// <summary>What it is within its part, for example <c>left side</c>.</summary>
    public string? Name { get; init; }

    /// <summary>Tolerance of every measure of this solid [mm]; absent when nobody said.</summary>
    [Limits(0, 500)]
    public double? PlusMinusMm { get; init; }

    /// <summary>Turn about the vertical through the solid's centre [degrees], from x towards y.</summary>
    [Limits(-180, 180)]
    public double YawDeg { get; init; }

    /// <summary>Tilt about the solid's own lengthwise (x) axis through its centre [degrees], from y towards z, before the yaw.</summary>
    [Limits(-180, 180)]
    public double TiltDeg { get; init; }

    /// <summary>The corners or, for a cylinder, the corners of its enclosing box, placed in the van.</summary>
    public IEnumerable<Place> Corners()
    {
        var (low, high) = Unturned();
        var middle = new Place((low.XMm + high.XMm) / 2, (low.YMm + high.YMm) / 2, (low.ZMm + high.ZMm) / 2);
        return UnturnedCorners().Select(c => middle + Turned(c - middle));
    }

    /// <summary>The smallest box along the vehicle axes that holds the placed solid.</summary>
    public (Place Low, Place High) Bounds()
    {
        if (YawDeg == 0 && TiltDeg == 0) return Unturned();
        var corners = Corners().ToList();
        return (new(corners.Min(c => c.XMm), corners.Min(c => c.YMm), corners.Min(c => c.ZMm)),
            new(corners.Max(c => c.XMm), corners.Max(c => c.YMm), corners.Max(c => c.ZMm)));
    }

    /// <summary>Volume [mm³].</summary>
    public abstract double VolumeMm3();

    /// <summary>The bounds before yaw and tilt.</summary>
    protected abstract (Place Low, Place High) Unturned();

    /// <summary>Corners before yaw and tilt.</summary>
    protected virtual IEnumerable<Place> UnturnedCorners()
    {
        var (low, high) = Unturned();
        foreach (var x in (double[])[low.XMm, high.XMm])
            foreach (var y in (double[])[low.YMm, high.YMm])
                foreach (var z in (double[])[low.ZMm, high.ZMm])
                    yield return new(x, y, z);
    }

    private Place Turned(Place p)
    {
        var (sinTilt, cosTilt) = Math.SinCos(TiltDeg * Math.PI / 180);
        var (sinYaw, cosYaw) = Math.SinCos(YawDeg * Math.PI / 180);
        var (y, z) = (p.YMm * cosTilt - p.ZMm * sinTilt, p.YMm * sinTilt + p.ZMm * cosTilt);
        return new(p.XMm * cosYaw - y * sinYaw, p.XMm * sinYaw + y * cosYaw, z);
    }
}

/// <summary>A box.</summary>
public sealed record BoxSolid : Solid
{
    /// <summary>The corner with the smallest x, y and z, before yaw and tilt [mm].</summary>
    public required Place At { get; init; }

    /// <summary>Length along x, width along y, height along z [mm], each above 0.</summary>
    public required Place Size { get; init; }

    /// <inheritdoc/>
    public override double VolumeMm3() => Size.XMm * Size.YMm * Size.ZMm;

    /// <inheritdoc/>
    protected override (Place Low, Place High) Unturned() => (At, At + Size);
}

/// <summary>The axis a cylinder lies along.</summary>
public enum Axis
{
    /// <summary>Front to rear.</summary>
    X,

    /// <summary>Left to right.</summary>
    Y,

    /// <summary>Floor to roof.</summary>
    Z,
}

/// <summary>A cylinder along one of the vehicle axes.</summary>
public sealed record CylinderSolid : Solid
{
    /// <summary>Centre of the end with the smaller coordinate, before yaw and tilt [mm].</summary>
    public required Place At { get; init; }

    /// <summary>The axis it lies along.</summary>
    public required Axis Along { get; init; }

    /// <summary>Diameter [mm].</summary>
    [Limits(0.1, 10_000)]
    public required double DiameterMm { get; init; }

    /// <summary>Length [mm].</summary>
    [Limits(0.1, 10_000)]
    public required double LengthMm { get; init; }

    /// <inheritdoc/>
    public override double VolumeMm3() => Math.PI / 4 * DiameterMm * DiameterMm * LengthMm;

    /// <inheritdoc/>
    protected override (Place Low, Place High) Unturned()
    {
        var r = DiameterMm / 2;
        return Along switch
        {
            Axis.X => (At - new Place(0, r, r), At + new Place(LengthMm, r, r)),
            Axis.Y => (At - new Place(r, 0, r), At + new Place(r, LengthMm, r)),
            _ => (At - new Place(r, r, 0), At + new Place(r, r, LengthMm)),
        };
    }
}

/// <summary>A convex outline drawn out along an axis: a wedge, a sloping panel, a bevelled tank.</summary>
public sealed record PrismSolid : Solid
{
    /// <summary>The axis it is drawn out along; the outline lies across it.</summary>
    public required Axis Along { get; init; }

    /// <summary>
    /// Corners of the outline in order round it, convex, at least three, all with the same coordinate along the axis [mm].
    /// </summary>
    public required IReadOnlyList<Place> Outline { get; init; }

    /// <summary>How far the outline is drawn out towards the greater coordinate [mm].</summary>
    [Limits(0.1, 10_000)]
    public required double LengthMm { get; init; }

    /// <summary>The outline as points of its plane: (y, z) along x, (x, z) along y, (x, y) along z [mm].</summary>
    public IReadOnlyList<(double U, double V)> Plane() => [.. Outline.Select(p => Along switch
    {
        Axis.X => (p.YMm, p.ZMm),
        Axis.Y => (p.XMm, p.ZMm),
        _ => (p.XMm, p.YMm),
    })];

    /// <inheritdoc/>
    public override double VolumeMm3()
    {
        var plane = Plane();
        var twice = 0.0;
        for (var i = 0; i < plane.Count; i++)
        {
            var (a, b) = (plane[i], plane[(i + 1) % plane.Count]);
            twice += a.U * b.V - b.U * a.V;
        }
        return Math.Abs(twice) / 2 * LengthMm;
    }

    /// <inheritdoc/>
    protected override IEnumerable<Place> UnturnedCorners() => Outline.Concat(Outline.Select(p => p + Drawn()));

    /// <inheritdoc/>
    protected override (Place Low, Place High) Unturned() => (
        new(Outline.Min(p => p.XMm), Outline.Min(p => p.YMm), Outline.Min(p => p.ZMm)),
        new Place(Outline.Max(p => p.XMm), Outline.Max(p => p.YMm), Outline.Max(p => p.ZMm)) + Drawn());

    private Place Drawn() => Along switch { Axis.X => new(LengthMm, 0, 0), Axis.Y => new(0, LengthMm, 0), _ => new(0, 0, LengthMm) };
}
