namespace Wainwright.Methods.Moisture.Vapour;

/// <summary>Steady vapour flow through layers between two airs, and the planes at which water falls out.</summary>
/// <remarks>
/// Temperatures follow thermal resistance, vapour pressure follows s_d. Where the straight line would pass above saturation, the pressure is the
/// tightest string below it: the lower hull of the two air states and saturation at every interface (thick layers are cut into slices). Each
/// corner of the string is a plane; what arrives there more than leaves falls out.
/// </remarks>
public static class LayeredWall
{
    /// <summary>Glaser's method.</summary>
    public static readonly Basis Basis = new(
        Source: "Glaser's method as in ISO 13788:2002 (form and a worked wall as an open program carries them; the standard was not opened)",
        Assumes: ["steady state", "vapour only: no air leaks, no rain, no water taken up or given off", "resistances that do not change with moisture"],
        Caution: "Shows where it can condense, not how wet it gets. In a van the metal is the plane, and air gets behind every lining.",
        How: Provenance.Quoted);

    const double SliceThermal = 0.25; // ISO 13788 cuts layers at 0.25 m²·K/W (from memory)
    const double AirPermeability = 2.0e-10; // ISO 13788, rounded, in kg/(m·s·Pa); Schirmer gives 1.94e-10 at 20 °C

    /// <param name="Name">What it is.</param>
    /// <param name="ThermalM2KPerW">Thermal resistance [m²·K/W], 0 or more.</param>
    /// <param name="AirLayerM">s_d [m], 0 or more; infinite for metal.</param>
    public sealed record Layer(string Name, double ThermalM2KPerW, double AirLayerM);

    /// <param name="Layers">From inside to outside, at least one.</param>
    /// <param name="InsideC">Air inside [°C].</param>
    /// <param name="InsideHumidityFraction">Humidity inside [0–1].</param>
    /// <param name="OutsideC">Air outside [°C].</param>
    /// <param name="OutsideHumidityFraction">Humidity outside [0–1].</param>
    /// <param name="InsideFilmM2KPerW">Surface resistance inside [m²·K/W].</param>
    /// <param name="OutsideFilmM2KPerW">Surface resistance outside [m²·K/W].</param>
    public sealed record Input(
        IReadOnlyList<Layer> Layers, double InsideC, double InsideHumidityFraction, double OutsideC, double OutsideHumidityFraction,
        double InsideFilmM2KPerW = 0.13, double OutsideFilmM2KPerW = 0.04);

    /// <summary>One interface or slice.</summary>
    /// <param name="After">Layer that ends or is cut here; empty at the inside face.</param>
    /// <param name="AirLayerM">s_d from the inside face [m].</param>
    /// <param name="TemperatureC">Temperature [°C].</param>
    /// <param name="SaturationPa">Saturation pressure [Pa].</param>
    /// <param name="VapourPa">Vapour pressure [Pa].</param>
    /// <param name="CondensesGramPerM2Day">Water that falls out here [g/(m²·d)], 0 where none does.</param>
    public sealed record Plane(string After, double AirLayerM, double TemperatureC, double SaturationPa, double VapourPa, double CondensesGramPerM2Day);

    /// <param name="Planes">From inside to outside.</param>
    /// <param name="EntersGramPerM2Day">Water that enters from inside [g/(m²·d)].</param>
    /// <param name="LeavesGramPerM2Day">Water that leaves outside [g/(m²·d)].</param>
    public sealed record Result(IReadOnlyList<Plane> Planes, double EntersGramPerM2Day, double LeavesGramPerM2Day);

    /// <summary>Temperatures, pressures and condensation.</summary>
    /// <exception cref="ArgumentException">No layers.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(Input wall)
    {
        if (wall.Layers.Count == 0) throw new ArgumentException("layers: at least one", nameof(wall));
        var slices = Slices(wall.Layers);
        double total = Must.NotBeNegative(wall.InsideFilmM2KPerW) + Must.NotBeNegative(wall.OutsideFilmM2KPerW) + slices.Sum(s => s.ThermalM2KPerW);
        Must.BePositive(total);
        double thermal = wall.InsideFilmM2KPerW, air = 0;
        double At(double r) => wall.InsideC + ((wall.OutsideC - wall.InsideC) * r / total);

        List<(string After, double Air, double C, double Sat)> points = [("", 0, At(thermal), SaturationPressure.Of(new(At(thermal))).PressurePa)];
        foreach (var s in slices)
        {
            thermal += s.ThermalM2KPerW;
            air += s.AirLayerM;
            points.Add((s.Name, air, At(thermal), SaturationPressure.Of(new(At(thermal))).PressurePa));
        }
        double inside = SaturationPressure.Of(new(wall.InsideC)).PressurePa * Must.BeWithin(wall.InsideHumidityFraction, 0, 1);
        double outside = SaturationPressure.Of(new(wall.OutsideC)).PressurePa * Must.BeWithin(wall.OutsideHumidityFraction, 0, 1);
        // both faces count as at the air's vapour pressure unless they are colder than its dew point
        var xs = points.Select(p => p.Air).ToArray();
        var caps = points.Select(p => p.Sat).ToArray();
        caps[0] = Math.Min(caps[0], inside);
        caps[^1] = Math.Min(caps[^1], outside);
        var pressure = Hull(xs, caps);
        double Flow(int from) => xs[from + 1] > xs[from] ? AirPermeability * (pressure[from] - pressure[from + 1]) / (xs[from + 1] - xs[from]) * 1000 * 86_400 : double.NaN;
        var planes = new List<Plane>();
        for (var i = 0; i < points.Count; i++)
        {
            var falls = 0.0;
            if (i > 0 && i < points.Count - 1 && Before(i) is var into && After(i) is var outOf && !double.IsNaN(into) && !double.IsNaN(outOf) && xs[i + 1] > xs[i])
                falls = Math.Max(0, into - outOf);
            planes.Add(new(points[i].After, xs[i], points[i].C, points[i].Sat, pressure[i], falls < 1e-9 ? 0 : falls));
        }
        return new(planes, After(0), Before(points.Count - 1));

        double Before(int i)
        {
            for (var k = i - 1; k >= 0; k--)
                if (xs[k + 1] > xs[k]) return Flow(k);
            return double.NaN;
        }

        double After(int i)
        {
            for (var k = i; k < xs.Length - 1; k++)
                if (xs[k + 1] > xs[k]) return Flow(k);
            return double.NaN;
        }
    }

    static List<Layer> Slices(IReadOnlyList<Layer> layers)
    {
        List<Layer> slices = [];
        foreach (var layer in layers)
        {
            var count = Math.Max(1, (int)Math.Ceiling(Must.NotBeNegative(layer.ThermalM2KPerW) / SliceThermal));
            // a metal skin stops everything: a very long way of air stands for it, so that the string stays a string
            var air = double.IsPositiveInfinity(layer.AirLayerM) ? Tight : Must.NotBeNegative(layer.AirLayerM);
            for (var i = 0; i < count; i++) slices.Add(new(layer.Name, layer.ThermalM2KPerW / count, air / count));
        }
        return slices;
    }

    const double Tight = 1e9;

    /// <summary>The largest convex line not above any point, both ends held.</summary>
    static double[] Hull(double[] xs, double[] caps)
    {
        List<int> hull = [];
        for (var i = 0; i < xs.Length; i++)
        {
            // of two points at one place only the lower counts
            if (hull.Count > 0 && xs[hull[^1]] == xs[i])
            {
                if (caps[i] >= caps[hull[^1]]) continue;
                hull.RemoveAt(hull.Count - 1);
            }
            while (hull.Count > 1)
            {
                var (a, b) = (hull[^2], hull[^1]);
                if ((caps[b] - caps[a]) * (xs[i] - xs[a]) < (caps[i] - caps[a]) * (xs[b] - xs[a])) break;
                hull.RemoveAt(hull.Count - 1);
            }
            hull.Add(i);
        }
        var line = new double[xs.Length];
        for (int i = 0, k = 0; i < xs.Length; i++)
        {
            while (k < hull.Count - 1 && xs[hull[k + 1]] < xs[i]) k++;
            var (a, b) = (hull[k], hull[Math.Min(k + 1, hull.Count - 1)]);
            line[i] = xs[b] == xs[a] || xs[i] <= xs[a] ? caps[a] : caps[a] + ((caps[b] - caps[a]) * (xs[i] - xs[a]) / (xs[b] - xs[a]));
        }
        return line;
    }
}
