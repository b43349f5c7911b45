namespace Wainwright.Methods.Moisture.Drying;

/// <summary>Wetting and drying of layered sheets over time: finite volumes, implicit, to the last gram.</summary>
/// <remarks>
/// Each step is vapour first (pressure unknown, saturated where water stands free), then free water (wicking, leaks): two symmetric positive systems, backward Euler.
/// New water is always the old plus the fluxes, each taken from one slice and given to another, so that nothing is lost however well the system is solved.
/// First order in time; second order across the thickness. Not for use by two threads at once.
/// </remarks>
public sealed partial class DryingRun
{
    const double LeastScaleKgPerM3 = 20; // foam and vinyl hold next to nothing: errors there are judged against this

    readonly SheetNet _net;
    readonly StepControl _control;
    readonly int _slices;
    readonly SliceKind?[] _places; // by build-up and slice; null where a build-up has fewer slices than the most
    readonly SliceTables _tables; // the same as numbers
    readonly SliceKind[] _kinds; // the same per node; nothing stands in for the null ones
    readonly int[] _linkA, _linkB;
    readonly double[] _volume, _water, _area;
    readonly LineSystem _system;

    /// <summary>A run that starts with every slice at rest at one humidity.</summary>
    /// <param name="net">Sheets.</param>
    /// <param name="humidityFraction">Humidity at the start [0–1].</param>
    /// <param name="control">Steps; null for the usual.</param>
    /// <exception cref="ArgumentException">A cell or link names something that is not there, or a layer makes no sense.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number leaves its range.</exception>
    public DryingRun(SheetNet net, double humidityFraction, StepControl? control = null)
    {
        _net = net;
        _control = control ?? new();
        Must.BePositive(_control.Tolerance);
        Must.BePositive(_control.LongestDays);
        if (_control.FixedDays is { } days) Must.BePositive(days);
        if (net.BuildUps.Count == 0 || net.BuildUps.Any(b => b.Layers.Count == 0)) throw new ArgumentException("build-ups: one or more, each with a layer", nameof(net));
        if (net.Cells.Count == 0) throw new ArgumentException("cells: at least one", nameof(net));

        var longest = net.BuildUps.Max(b => b.Layers.Sum(l => l.Slices));
        _slices = (longest + 3) / 4 * 4;
        _places = new SliceKind?[net.BuildUps.Count * _slices];
        for (var b = 0; b < net.BuildUps.Count; b++)
        {
            var slice = b * _slices;
            for (var layer = 0; layer < net.BuildUps[b].Layers.Count; layer++)
                for (var i = 1; i <= net.BuildUps[b].Layers[layer].Slices; i++)
                    _places[slice++] = new(net.BuildUps[b].Layers[layer], layer, i == net.BuildUps[b].Layers[layer].Slices);
        }

        _tables = new(_places, _slices);
        var nodes = net.Cells.Count * _slices;
        (_kinds, _volume, _water, _area) = (new SliceKind[nodes], new double[nodes], new double[nodes], new double[net.Cells.Count]);
        Array.Fill(_kinds, SliceKind.Nothing);
        Must.BeWithin(humidityFraction, 0, 1);
        for (var cell = 0; cell < net.Cells.Count; cell++)
        {
            var c = net.Cells[cell];
            Within(c.BuildUp, net.BuildUps.Count, "build-up");
            Within(c.Top, net.Faces.Count, "face");
            Within(c.Bottom, net.Faces.Count, "face");
            _area[cell] = Must.BePositive(c.AreaMm2) / 1e6;
            for (var k = 0; k < _slices; k++)
            {
                var node = (cell * _slices) + k;
                _volume[node] = 1e-9; // nothing: there must be something to divide by
                if (_places[(c.BuildUp * _slices) + k] is not { } kind) continue;
                _kinds[node] = kind;
                _volume[node] = _area[cell] * kind.ThicknessM;
                _water[node] = kind.Water(humidityFraction);
            }
        }
        foreach (var face in net.Faces)
        {
            if (!double.IsPositiveInfinity(face.Resistance)) Must.BePositive(face.Resistance);
            Must.NotBeNegative(face.VapourPa);
        }
        foreach (var link in net.Links)
        {
            Within(link.A, net.Cells.Count, "cell");
            Within(link.B, net.Cells.Count, "cell");
            Must.NotBeNegative(link.Conductance);
        }
        (_linkA, _linkB) = ([.. net.Links.Select(l => l.A)], [.. net.Links.Select(l => l.B)]);
        _system = new(net.Cells.Count, _slices, _linkA, _linkB);
        InitialiseWork(nodes);
        StartKg = WaterKg;
    }

    /// <summary>Time since the start [d].</summary>
    public double Days { get; private set; }

    /// <summary>Steps made so far.</summary>
    public int Steps { get; private set; }

    /// <summary>Steps thrown away because they were too long.</summary>
    public int Rejected { get; private set; }

    /// <summary>Rounds of the linear solver so far.</summary>
    public int Rounds => _system.Rounds;

    /// <summary>Bytes read and written so far: each row of numbers once for each time it is gone through. Over the time taken, to hold against the machine's memory.</summary>
    public long MovedBytes => _system.MovedBytes;

    /// <summary>Water in all sheets [kg].</summary>
    public double WaterKg
    {
        get
        {
            // summed with its rounding errors kept, so that a balance to 1e-9 and below means something
            double sum = 0, lost = 0;
            for (var node = 0; node < _water.Length; node++)
            {
                if (_kinds[node].IsNothing) continue;
                var term = (_water[node] * _volume[node]) - lost;
                var next = sum + term;
                lost = next - sum - term;
                sum = next;
            }
            return sum;
        }
    }

    /// <summary>Where all the water is.</summary>
    public WaterBalance Balance => new(StartKg, _leakedKg, _givenOffKg, WaterKg);

    double StartKg { get; set; }

    double _leakedKg, _givenOffKg;

    /// <summary>Moisture of a layer of a cell, its slices taken together [% of dry mass].</summary>
    /// <param name="cell">Cell.</param>
    /// <param name="layer">Layer of its build-up.</param>
    /// <exception cref="ArgumentException">No such cell or layer.</exception>
    public double MoisturePercent(int cell, int layer)
    {
        Within(cell, _area.Length, "cell");
        double water = 0, dry = 0;
        for (var node = cell * _slices; node < (cell + 1) * _slices; node++)
        {
            if (_kinds[node].LayerIndex != layer || _kinds[node].IsNothing) continue;
            water += _water[node] * _volume[node];
            dry += _kinds[node].Material.DryKgPerM3 * _volume[node];
        }
        return dry > 0 ? 100 * water / dry : throw new ArgumentException("layer: no such one in the build-up of that cell");
    }

    /// <summary>Humidity that a slice is at rest with [0–1].</summary>
    /// <param name="cell">Cell.</param>
    /// <param name="slice">Slice, counted from the top through all layers.</param>
    /// <exception cref="ArgumentException">No such cell or slice.</exception>
    public double HumidityFraction(int cell, int slice)
    {
        Within(cell, _area.Length, "cell");
        Within(slice, _slices, "slice");
        var node = (cell * _slices) + slice;
        return _kinds[node].IsNothing ? throw new ArgumentException("slice: no such one in the build-up of that cell") : _kinds[node].Humidity(_water[node]);
    }

    /// <summary>Vapour pressure in a slice [Pa].</summary>
    /// <param name="cell">Cell.</param>
    /// <param name="slice">Slice, counted from the top through all layers.</param>
    /// <exception cref="ArgumentException">No such cell or slice.</exception>
    public double VapourPa(int cell, int slice) => HumidityFraction(cell, slice) * _kinds[(cell * _slices) + slice].SaturationPa;

    /// <summary>Sets the moisture of a layer of a cell, and counts the water from here anew.</summary>
    /// <param name="cell">Cell.</param>
    /// <param name="layer">Layer of its build-up.</param>
    /// <param name="percent">Moisture [% of dry mass], 0 or more and no more than full.</param>
    /// <exception cref="ArgumentException">No such cell or layer.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The moisture leaves its range.</exception>
    public void Wet(int cell, int layer, double percent) => Wet([(cell, layer, percent)]);

    /// <summary>Sets the moisture of many layers at once, and counts the water from here anew.</summary>
    /// <param name="layers">Cell, layer of its build-up, moisture [% of dry mass], 0 or more and no more than full.</param>
    /// <exception cref="ArgumentException">No such cell or layer.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A moisture leaves its range.</exception>
    public void Wet(IEnumerable<(int Cell, int Layer, double Percent)> layers)
    {
        foreach (var (cell, layer, percent) in layers)
            foreach (var node in NodesOf(cell, layer))
            {
                var material = _kinds[node].Material;
                _water[node] = Must.BeWithin(percent / 100 * material.DryKgPerM3, 0, material.FullKgPerM3);
            }
        Recount();
    }

    /// <summary>Brings a layer of a cell to rest with a humidity, and counts the water from here anew.</summary>
    /// <param name="layers">Cell, layer of its build-up, humidity [0–1].</param>
    /// <exception cref="ArgumentException">No such cell or layer.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A humidity leaves its range.</exception>
    public void Rest(IEnumerable<(int Cell, int Layer, double HumidityFraction)> layers)
    {
        foreach (var (cell, layer, humidity) in layers)
            foreach (var node in NodesOf(cell, layer)) _water[node] = _kinds[node].Water(Must.BeWithin(humidity, 0, 1));
        Recount();
    }

    /// <summary>The same sheets and their water under other faces or layers' temperatures: the floor after its finish is lifted, or heated.</summary>
    /// <param name="net">The other net: the same cells and as many slices of the same materials and thickness wherever water is to be kept.</param>
    /// <exception cref="ArgumentException">The nets have other cells or slices.</exception>
    public DryingRun Under(SheetNet net)
    {
        var next = new DryingRun(net, 0, _control);
        if (next._water.Length != _water.Length) throw new ArgumentException("net: must have the same cells and as many slices", nameof(net));
        for (var node = 0; node < _water.Length; node++)
            if (!next._kinds[node].IsNothing) next._water[node] = _water[node];
        next.Recount();
        next.Days = Days;
        return next;
    }

    void Recount()
    {
        StartKg = WaterKg;
        (_leakedKg, _givenOffKg) = (0, 0);
        ForgetLastStep();
    }

    List<int> NodesOf(int cell, int layer)
    {
        Within(cell, _area.Length, "cell");
        var found = Enumerable.Range(cell * _slices, _slices).Where(n => _kinds[n].LayerIndex == layer).ToList();
        return found.Count > 0 ? found : throw new ArgumentException("layer: no such one in the build-up of that cell");
    }

    static void Within(int index, int count, string what)
    {
        if (index < 0 || index >= count) throw new ArgumentException(FormattableString.Invariant($"{what} {index}: there are {count}"));
    }
}
