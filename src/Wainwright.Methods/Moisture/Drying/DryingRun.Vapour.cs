using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>Vapour, through the thickness, along the sheet and to the air.</summary>
public sealed partial class DryingRun
{
    const int MostPasses = 12;
    const double SolverTolerance = 3e-4, PassTolerance = 2e-3; // of saturation

    double[] _potential = [], _start = [], _residual = [], _flow = [], _along = [], _source = [], _outside = [], _humidity = [], _slope = [], _saturation = [], _permeability = [];

    bool VapourStep(double seconds, out double givenOffKg)
    {
        _system.Choose(null);
        for (var node = 0; node < _water.Length; node++)
        {
            _humidity[node] = _kinds[node].At(_water[node], out _slope[node], out _permeability[node]);
            _potential[node] = _humidity[node] * _saturation[node];
        }
        AssembleVapour(seconds);
        givenOffKg = 0;
        _system.Flow(_potential, _flow);
        for (var pass = 0; pass < MostPasses; pass++)
        {
            for (var node = 0; node < _water.Length; node++)
            {
                // the slope where it stands; nearly endless where water stands free and the pressure cannot rise
                _system.Storage[node] = _volume[node] * (_humidity[node] >= 1 ? WetStorage * _kinds[node].Bound : _slope[node]) / _saturation[node];
                _residual[node] = (_volume[node] * (_before[node] - _water[node])) - _flow[node] - (_system.Outward[node] * (_potential[node] - _outside[node]));
            }
            if (!_system.Solve(_potential, _residual, SolverTolerance * 1000)) return false;
            _system.Flow(_potential, _flow);
            givenOffKg = 0;
            double worst = 0, least = 1;
            for (var node = 0; node < _water.Length; node++)
            {
                var leaves = _system.Outward[node] * (_potential[node] - _outside[node]);
                givenOffKg += leaves;
                _water[node] = _before[node] - ((_flow[node] + leaves) / _volume[node]);
                _humidity[node] = _kinds[node].At(_water[node], out _slope[node], out _);
                worst = Math.Max(worst, Math.Abs(_humidity[node] - (_potential[node] / _saturation[node])));
                least = Math.Min(least, _humidity[node]);
            }
            if (worst <= PassTolerance) return least > -1e-6;
            for (var node = 0; node < _water.Length; node++) _potential[node] = _humidity[node] * _saturation[node];
            _system.Flow(_potential, _flow);
        }
        return false;
    }

    void AssembleVapour(double seconds)
    {
        Array.Clear(_system.Outward);
        Array.Clear(_system.Down);
        for (var cell = 0; cell < _area.Length; cell++)
        {
            double half = 0, film = 0;
            int first = cell * _slices, last = -1;
            for (var node = first; node < first + _slices; node++)
            {
                var kind = _kinds[node];
                if (kind.IsNothing)
                {
                    _along[node] = 0;
                    continue;
                }
                var permeability = _permeability[node];
                _along[node] = permeability * kind.ThicknessM * kind.Material.AlongFactor;
                var own = kind.ThicknessM / 2 / permeability;
                if (last >= 0) _system.Down[last] = _area[cell] * seconds / (half + film + own);
                else Outward(cell, node, _net.Cells[cell].Top, own, seconds);
                (half, film, last) = (own, kind.ResistanceBelow, node);
            }
            Outward(cell, last, _net.Cells[cell].Bottom, half, seconds);
        }
        ref double along = ref MemoryMarshal.GetArrayDataReference(_along), g = ref MemoryMarshal.GetArrayDataReference(_system.Along);
        var nothing = Vector256.Create(1e-300);
        for (var link = 0; link < _linkA.Length; link++)
        {
            nuint a = (nuint)(_linkA[link] * _slices), b = (nuint)(_linkB[link] * _slices), at = (nuint)(link * _slices);
            var twice = Vector256.Create(2 * _conductance[link] * seconds);
            for (nuint k = 0; k < (nuint)_slices; k += 4)
            {
                var (one, other) = (Vector256.LoadUnsafe(ref along, a + k), Vector256.LoadUnsafe(ref along, b + k));
                (twice * one * other / (one + other + nothing)).StoreUnsafe(ref g, at + k);
            }
        }
        _system.Assembled();
    }

    void Outward(int cell, int node, int faceNumber, double own, double seconds)
    {
        var face = _net.Faces[faceNumber];
        if (double.IsPositiveInfinity(face.Resistance)) return;
        var conductance = _area[cell] * seconds / (own + face.Resistance);
        // a sheet of one slice has both faces on it: their weighted pressure
        _outside[node] = ((_outside[node] * _system.Outward[node]) + (face.VapourPa * conductance)) / (_system.Outward[node] + conductance);
        _system.Outward[node] += conductance;
    }
}
