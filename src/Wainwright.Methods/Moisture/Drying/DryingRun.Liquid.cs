using System.Runtime.Intrinsics;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>Water that stands free: wicking, leaks, and what runs on where pores are full.</summary>
public sealed partial class DryingRun
{
    const double RunOffM2PerS = 1e-6; // for each filling beyond full: common practice has no figure; quick beside wicking

    const double DampStorage = 1e6; // takes up water, has none free yet

    const double LiquidTolerance = 1e-4; // of LeastScaleKgPerM3

    double[] _across = [], _afterVapour = [];
    int[] _material = [];

    bool LiquidStep(double seconds, bool hasSource)
    {
        AssembleLiquid(seconds);
        Array.Copy(_water, _afterVapour, _water.Length);
        foreach (var cell in _system.Cells)
            for (var node = cell * _slices; node < (cell + 1) * _slices; node++)
                _start[node] = _potential[node] = Math.Max(0, _water[node] - _bound[node]);
        _system.Flow(_potential, _flow);
        for (var pass = 0; pass < MostPasses; pass++)
        {
            foreach (var cell in _system.Cells)
                for (var node = cell * _slices; node < (cell + 1) * _slices; node++)
                {
                    // a slice that is not yet saturated takes up water without any standing free
                    var free = Math.Max(0, _water[node] - _bound[node]);
                    var share = Math.Abs(free - _start[node]) > 1e-9 ? (_water[node] - _afterVapour[node]) / (free - _start[node]) : free > 0 ? 1 : DampStorage;
                    _system.Storage[node] = _volume[node] * Math.Clamp(share, 1, DampStorage);
                    _residual[node] = (hasSource ? _source[node] : 0) + (_system.Storage[node] * (_start[node] - _potential[node])) - _flow[node];
                }
            if (!_system.Solve(_potential, _residual, LiquidTolerance * LeastScaleKgPerM3)) return false;
            _system.Flow(_potential, _flow);
            double worst = 0;
            foreach (var cell in _system.Cells)
                for (var node = cell * _slices; node < (cell + 1) * _slices; node++)
                {
                    _water[node] = _afterVapour[node] + ((_source[node] - _flow[node]) / _volume[node]);
                    worst = Math.Max(worst, Math.Abs(Math.Max(0, _water[node] - _bound[node]) - _potential[node]) * _perScale[node]);
                }
            if (worst <= PassTolerance) return true;
        }
        return false;
    }

    void AssembleLiquid(double seconds)
    {
        var wet = new bool[_area.Length];
        for (var cell = 0; cell < _area.Length; cell++)
            for (var node = cell * _slices; node < (cell + 1) * _slices; node += 4)
                wet[cell] |= Vector256.GreaterThanAny(At(_water, node), At(_bound, node)) || Vector256.GreaterThanAny(At(_source, node), Vector256<double>.Zero);
        _system.Choose(wet);
        foreach (var cell in _system.Cells)
            for (var node = cell * _slices; node < (cell + 1) * _slices; node++)
            {
                var kind = _kinds[node];
                var free = (_water[node] - kind.Bound) / kind.Room;
                if (free <= 0)
                {
                    (_along[node], _across[node]) = (0, 0);
                    continue;
                }
                var part = kind.Material.WickingPower == 1 ? Math.Min(free, 1) : Math.Pow(Math.Min(free, 1), kind.Material.WickingPower);
                _across[node] = kind.Material.WickingM2PerS * part;
                _along[node] = (kind.Material.WickingAlongM2PerS * part) + (RunOffM2PerS * Math.Max(0, free - 1));
            }
        foreach (var cell in _system.Cells)
            for (var node = cell * _slices; node < (cell + 1) * _slices; node++)
            {
                _system.Outward[node] = 0;
                _system.Down[node] = node % _slices < _slices - 1 && _material[node] == _material[node + 1]
                    ? _area[cell] * seconds * (_across[node] + _across[node + 1]) / (_kinds[node].ThicknessM + _kinds[node + 1].ThicknessM) : 0;
            }
        foreach (var link in _system.Links)
        {
            var each = _conductance[link] * seconds / 4;
            for (int k = 0, a = _linkA[link] * _slices, b = _linkB[link] * _slices, at = link * _slices; k < _slices; k++)
                // free water goes only within one material: from panel to panel, not from foam into ply
                _system.Along[at + k] = _material[a + k] == _material[b + k] ? each * (_along[a + k] + _along[b + k]) * (_kinds[a + k].ThicknessM + _kinds[b + k].ThicknessM) : 0;
        }
        _system.Assembled();
    }
}
