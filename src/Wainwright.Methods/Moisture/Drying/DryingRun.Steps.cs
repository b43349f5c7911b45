using System.Runtime.Intrinsics;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>Time.</summary>
public sealed partial class DryingRun
{
    const double DayS = 86_400, ShortestDays = 1e-6, FirstDays = 1.0 / 96, WeightOfOne = 0.1, WeightOfMean = 5;

    double _stepDays = FirstDays, _lastStepDays;

    double[] _before = [], _lastChange = [], _perScale = [], _bound = [], _conductance = [];
    int[] _place = [], _last = []; // of a cell: its first place in the tables, its last slice
    SheetFace[] _top = [], _bottom = [];
    double _sheetM3;
    bool _hasLast;

    /// <summary>Lets time pass.</summary>
    /// <param name="days">How long [d], 0 or more.</param>
    /// <param name="leaks">Water that comes in; null for none.</param>
    /// <param name="cancellation">Asked before each step.</param>
    /// <exception cref="ArgumentException">A leak names a cell or layer that is not there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number leaves its range.</exception>
    /// <exception cref="OperationCanceledException">It was called off; time and water stand where the last step left them.</exception>
    /// <exception cref="InvalidOperationException">The shortest step was still too long.</exception>
    public void Advance(double days, IReadOnlyList<LeakSource>? leaks = null, CancellationToken cancellation = default)
    {
        leaks ??= [];
        var into = new Inflow[leaks.Count];
        for (var i = 0; i < into.Length; i++)
        {
            var nodes = NodesOf(leaks[i].Cell, leaks[i].Layer).ToArray();
            into[i] = new(leaks[i], nodes, nodes.Sum(n => _volume[n]));
            Must.NotBeNegative(leaks[i].KgPerH);
            Must.NotBeNegative(leaks[i].ToDay - leaks[i].FromDay);
        }
        double[] changes = [.. leaks.SelectMany(l => new[] { l.FromDay, l.ToDay }).Distinct().Order()];
        var end = Days + Must.NotBeNegative(days);
        while (end - Days > 1e-12)
        {
            cancellation.ThrowIfCancellationRequested();
            // a step ends where a leak begins or stops, so that no step has half a leak
            var until = end;
            foreach (var change in changes)
                if (change > Days + 1e-12 && change < until) until = change;
            var step = Math.Min(_control.FixedDays ?? Math.Min(_stepDays, _control.LongestDays), until - Days);
            // rather two middling steps than a long one and a sliver
            if (_control.FixedDays is null && until - Days < 2 * step && until - Days > step) step = (until - Days) / 2;
            var done = Step(step, into);
            if (done && Math.Abs(until - Days) <= 1e-12 && until < end)
            {
                // something begins or ends here: what was before says nothing about what comes
                ForgetLastStep();
                _stepDays = Math.Min(_stepDays, FirstDays);
            }
        }
    }

    /// <summary>A leak with the slices it goes into.</summary>
    readonly record struct Inflow(LeakSource Leak, int[] Nodes, double VolumeM3);

    void InitialiseWork(int nodes)
    {
        double[] Empty() => new double[nodes + LineSystem.Spare];
        (_before, _lastChange, _perScale, _bound, _perVolume, _afterVapour) = (Empty(), Empty(), Empty(), Empty(), Empty(), Empty());
        (_potential, _start, _residual, _flow, _outside, _half) = (Empty(), Empty(), Empty(), Empty(), Empty(), Empty());
        (_along, _across, _source, _slope, _material) = (Empty(), Empty(), Empty(), Empty(), new int[nodes]);
        _conductance = [.. _net.Links.Select(l => l.Conductance)];
        _place = [.. _net.Cells.Select(c => c.BuildUp * _slices)];
        _last = [.. _net.Cells.Select(c => _net.BuildUps[c.BuildUp].Layers.Sum(l => l.Slices) - 1)];
        (_top, _bottom) = ([.. _net.Cells.Select(c => _net.Faces[c.Top])], [.. _net.Cells.Select(c => _net.Faces[c.Bottom])]);
        var materials = _places.Select(k => k?.Material).Where(m => m is not null).Distinct().ToList();
        var numbers = _places.Where(k => k is not null).Distinct().ToDictionary(k => k!, k => materials.IndexOf(k!.Material));
        for (var node = 0; node < nodes; node++)
        {
            var kind = _kinds[node];
            _material[node] = kind.IsNothing ? -1 : numbers[kind];
            (_bound[node], _perScale[node], _perVolume[node]) = (kind.Bound, 1 / Math.Max(kind.Bound, LeastScaleKgPerM3), 1 / _volume[node]);
            if (!kind.IsNothing) _sheetM3 += _volume[node];
        }
    }

    void ForgetLastStep() => _hasLast = false;

    /// <summary>One step; false when it was thrown away and the next is to be shorter.</summary>
    bool Step(double stepDays, Inflow[] leaks)
    {
        Array.Copy(_water, _before, _water.Length);
        var seconds = stepDays * DayS;
        Array.Clear(_source);
        double leakedKg = 0;
        var middle = Days + (stepDays / 2);
        foreach (var (leak, nodes, volume) in leaks)
        {
            if (leak.FromDay > middle || middle >= leak.ToDay) continue;
            var kg = leak.KgPerH * stepDays * 24;
            leakedKg += kg;
            foreach (var node in nodes) _source[node] += kg * _volume[node] / volume;
        }
        _system.Choose(null);
        _system.Moves(13);
        var solved = VapourStep(seconds, out var givenOffKg) && (leakedKg > 0 || AnyFree() ? LiquidStep(seconds, leakedKg > 0) : true);
        var error = solved ? ErrorOfStep(stepDays) : double.PositiveInfinity;
        if (!solved || (_control.FixedDays is null && error > 2 * _control.Tolerance))
        {
            Array.Copy(_before, _water, _water.Length);
            Rejected++;
            if (stepDays < ShortestDays) throw new InvalidOperationException("a step of a tenth of a second was still too long");
            if (_control.FixedDays is not null) throw new InvalidOperationException("a fixed step was too long for the system to be solved");
            _stepDays = stepDays * (solved ? Math.Clamp(0.8 * Math.Sqrt(_control.Tolerance / error), 0.1, 0.7) : 0.25);
            return false;
        }
        for (var node = 0; node < _water.Length; node += 4) Keep(_lastChange, node, At(_water, node) - At(_before, node));
        (_hasLast, _lastStepDays) = (true, stepDays);
        Days += stepDays;
        Steps++;
        _leakedKg += leakedKg;
        _givenOffKg += givenOffKg;
        if (error >= 0) _stepDays = stepDays * Math.Clamp(0.85 * Math.Sqrt(_control.Tolerance / Math.Max(error, 1e-12)), 0.4, 2.5);
        return true;
    }

    /// <summary>
    /// What backward Euler left out in this step, from how much the rate changed since the last; negative when there was no last. The mean over all sheets
    /// counts five times, a single slice a tenth: the edge of a wet patch may jump a cell in a step, the water in the floor may not.
    /// </summary>
    double ErrorOfStep(double stepDays)
    {
        if (!_hasLast) return -1;
        var ratio = Vector256.Create(stepDays / _lastStepDays);
        Vector256<double> worst = default, squares = default;
        for (var node = 0; node < _water.Length; node += 4)
        {
            var error = Vector256.Abs(At(_water, node) - At(_before, node) - (ratio * At(_lastChange, node))) * At(_perScale, node);
            worst = Vector256.Max(worst, error);
            squares += error * error * At(_volume, node);
        }
        var single = Math.Max(Math.Max(worst[0], worst[1]), Math.Max(worst[2], worst[3]));
        return stepDays / (stepDays + _lastStepDays) * Math.Max(WeightOfOne * single, WeightOfMean * Math.Sqrt(Vector256.Sum(squares) / _sheetM3));
    }

    bool AnyFree()
    {
        for (var node = 0; node < _water.Length; node += 4)
            if (Vector256.GreaterThanAny(At(_water, node), At(_bound, node))) return true;
        return false;
    }
}
