using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>What the slices of each build-up are like, as rows of numbers by build-up and slice: four slices of a cell are worked out at once.</summary>
sealed class SliceTables
{
    readonly SliceKind.Piece[] _pieces;
    readonly int[] _first; // piece of a place
    readonly double[] _perStep;

    /// <param name="places">By build-up and slice; null where nothing is.</param>
    /// <param name="slices">Places of a build-up.</param>
    public SliceTables(SliceKind?[] places, int slices)
    {
        var kinds = places.Select(p => p ?? SliceKind.Nothing).ToArray();
        var distinct = kinds.Distinct().ToList();
        _pieces = [.. distinct.SelectMany(k => k.Pieces())];
        _first = [.. kinds.Select(k => distinct.IndexOf(k) * (SliceKind.Knots + 1))];
        _perStep = [.. kinds.Select(k => k.PerStep)];
        SaturationPa = [.. kinds.Select(k => k.SaturationPa)];
        PerSaturation = [.. kinds.Select(k => 1 / k.SaturationPa)];
        HalfM = [.. kinds.Select(k => k.ThicknessM / 2)];
        AlongM = [.. kinds.Select(k => k.IsNothing ? 0 : k.ThicknessM * k.Material.AlongFactor)];
        // nothing passes from the last of a column to what stands for nothing below it
        FilmBelow = [.. kinds.Select((k, i) => (i + 1) % slices == 0 || kinds[i + 1].IsNothing ? double.PositiveInfinity : k.ResistanceBelow)];
    }

    public double[] SaturationPa { get; }

    public double[] PerSaturation { get; }

    /// <summary>Half the thickness.</summary>
    public double[] HalfM { get; }

    /// <summary>Thickness times what goes along the sheet against across it.</summary>
    public double[] AlongM { get; }

    /// <summary>Z of what is between this slice and the next.</summary>
    public double[] FilmBelow { get; }

    /// <summary>Humidity over so much water in four slices from a place on, slope dw/dh (nearly endless where water stands free) and permeability.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> At(Vector256<double> water, int place, out Vector256<double> slope, out Vector256<double> permeability)
    {
        var at = Vector256.Min(water * Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(_perStep), (nuint)place), Vector256.Create((double)SliceKind.Knots));
        // below 0 by a hair, by rounding: the first piece goes on
        var below = Vector256.Max(Vector256.Floor(at), Vector256<double>.Zero);
        var part = at - below;
        ref int first = ref _first[place];
        ref readonly var a = ref _pieces[first + (int)below[0]];
        ref readonly var b = ref _pieces[Unsafe.Add(ref first, 1) + (int)below[1]];
        ref readonly var c = ref _pieces[Unsafe.Add(ref first, 2) + (int)below[2]];
        ref readonly var d = ref _pieces[Unsafe.Add(ref first, 3) + (int)below[3]];
        slope = Vector256.Create(a.Slope, b.Slope, c.Slope, d.Slope);
        permeability = Vector256.Create(a.Permeability, b.Permeability, c.Permeability, d.Permeability)
            + (part * Vector256.Create(a.PermeabilityRise, b.PermeabilityRise, c.PermeabilityRise, d.PermeabilityRise));
        return Vector256.Create(a.Humidity, b.Humidity, c.Humidity, d.Humidity) + (part * Vector256.Create(a.Rise, b.Rise, c.Rise, d.Rise));
    }
}
