using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>Vapour, through the thickness, along the sheet and to the air.</summary>
public sealed partial class DryingRun
{
    const int MostPasses = 12;
    const double SolverTolerance = 3e-4, PassTolerance = 2e-3; // of saturation

    double[] _potential = [], _start = [], _residual = [], _flow = [], _along = [], _source = [], _outside = [], _slope = [], _half = [], _perVolume = [];

    bool VapourStep(double seconds, out double givenOffKg)
    {
        _system.Choose(null);
        AssembleVapour(seconds);
        _system.Moves(9, 1);
        for (var pass = 0; pass < MostPasses; pass++)
        {
            _system.Moves(19);
            _system.Flow(_potential, _flow);
            SetOut();
            if (!_system.Solve(_potential, _residual, SolverTolerance * 1000)) break;
            _system.Flow(_potential, _flow);
            if (Settle(out givenOffKg, out var least)) return least > -1e-6;
        }
        givenOffKg = 0;
        return false;
    }

    /// <summary>What is out of balance, and the slope of water against pressure where each slice stands.</summary>
    void SetOut()
    {
        for (var cell = 0; cell < _area.Length; cell++)
            for (int k = 0, place = _place[cell], node = cell * _slices; k < _slices; k += 4, place += 4, node += 4)
            {
                var volume = At(_volume, node);
                Keep(_system.Storage, node, volume * At(_slope, node) * At(_tables.PerSaturation, place));
                Keep(_residual, node, (volume * (At(_before, node) - At(_water, node))) - At(_flow, node) - (At(_system.Outward, node) * (At(_potential, node) - At(_outside, node))));
            }
    }

    /// <summary>Water from the fluxes, and the pressure it stands under; true when that is the pressure of the fluxes.</summary>
    bool Settle(out double givenOffKg, out double least)
    {
        Vector256<double> given = default, worst = default, driest = Vector256<double>.One;
        for (var cell = 0; cell < _area.Length; cell++)
            for (int k = 0, place = _place[cell], node = cell * _slices; k < _slices; k += 4, place += 4, node += 4)
            {
                var potential = At(_potential, node);
                var leaves = At(_system.Outward, node) * (potential - At(_outside, node));
                given += leaves;
                var water = At(_before, node) - ((At(_flow, node) + leaves) * At(_perVolume, node));
                Keep(_water, node, water);
                var humidity = _tables.At(water, place, out var slope, out _);
                Keep(_slope, node, slope);
                worst = Vector256.Max(worst, Vector256.Abs(humidity - (potential * At(_tables.PerSaturation, place))));
                driest = Vector256.Min(driest, humidity);
                Keep(_potential, node, humidity * At(_tables.SaturationPa, place));
            }
        (givenOffKg, least) = (Vector256.Sum(given), Math.Min(Math.Min(driest[0], driest[1]), Math.Min(driest[2], driest[3])));
        return Vector256.LessThanOrEqualAll(worst, Vector256.Create(PassTolerance));
    }

    void AssembleVapour(double seconds)
    {
        for (var cell = 0; cell < _area.Length; cell++)
            for (int k = 0, place = _place[cell], node = cell * _slices; k < _slices; k += 4, place += 4, node += 4)
            {
                var humidity = _tables.At(At(_water, node), place, out var slope, out var permeability);
                Keep(_slope, node, slope);
                Keep(_potential, node, humidity * At(_tables.SaturationPa, place));
                Keep(_half, node, At(_tables.HalfM, place) / permeability);
                Keep(_along, node, At(_tables.AlongM, place) * permeability);
            }
        Array.Clear(_system.Outward);
        for (var cell = 0; cell < _area.Length; cell++)
        {
            var areaS = Vector256.Create(_area[cell] * seconds);
            for (int k = 0, place = _place[cell], node = cell * _slices; k < _slices; k += 4, place += 4, node += 4)
                Keep(_system.Down, node, areaS / (At(_half, node) + At(_tables.FilmBelow, place) + At(_half, node + 1)));
            Outward(cell, cell * _slices, _top[cell], seconds);
            Outward(cell, (cell * _slices) + _last[cell], _bottom[cell], seconds);
        }
        AssembleAlong(seconds);
        _system.Assembled();
    }

    void AssembleAlong(double seconds)
    {
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
    }

    void Outward(int cell, int node, SheetFace face, double seconds)
    {
        if (double.IsPositiveInfinity(face.Resistance)) return;
        var conductance = _area[cell] * seconds / (_half[node] + face.Resistance);
        // a sheet of one slice has both faces on it: their weighted pressure
        _outside[node] = ((_outside[node] * _system.Outward[node]) + (face.VapourPa * conductance)) / (_system.Outward[node] + conductance);
        _system.Outward[node] += conductance;
    }

    /// <summary>Four numbers from a place on.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Vector256<double> At(double[] from, int first) => Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(from), (nuint)first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static void Keep(double[] to, int first, Vector256<double> four) => four.StoreUnsafe(ref MemoryMarshal.GetArrayDataReference(to), (nuint)first);
}
