namespace Wainwright.Methods.Moisture.Drying;

/// <summary>What all slices of one place in one build-up share: water against humidity, permeability, temperature, as tables to look up.</summary>
sealed class SliceKind
{
    const int Knots = 512;

    // at equal steps of water, so that a look-up needs no search
    readonly double[] _humidity = new double[Knots + 1], _slope = new double[Knots + 1], _permeability = new double[Knots + 1];
    readonly double _perStep;

    public SliceKind(SheetLayer layer, int layerIndex, bool isLastOfLayer)
    {
        Material = layer.Material.Checked();
        LayerIndex = layerIndex;
        var slices = (int)Must.BeWithin(layer.Slices, 1, 200);
        ThicknessM = Must.BePositive(layer.ThicknessMm) / 1000 / slices;
        SaturationPa = SaturationPressure.Of(new(Must.BeWithin(layer.TemperatureC, -20, 60))).PressurePa;
        ResistanceBelow = !isLastOfLayer ? 0 : double.IsPositiveInfinity(layer.ResistanceBelow) ? layer.ResistanceBelow : Must.NotBeNegative(layer.ResistanceBelow);
        var curve = Material.BoundKgPerM3;
        (Bound, Room) = (curve[^1], Material.FullKgPerM3 - curve[^1]);
        _perStep = Knots / Bound;
        for (int i = 0, below = 0; i <= Knots; i++)
        {
            var water = i * Bound / Knots;
            while (below < curve.Count - 2 && curve[below + 1] <= water) below++;
            _humidity[i] = (below + ((water - curve[below]) / (curve[below + 1] - curve[below]))) / (curve.Count - 1);
            _permeability[i] = Material.Permeability(_humidity[i], layer.TemperatureC);
        }
        for (var i = 0; i < Knots; i++) _slope[i] = Bound / Knots / (_humidity[i + 1] - _humidity[i]);
        _slope[Knots] = _slope[Knots - 1];
    }

    /// <summary>Stands where a build-up has fewer slices than the most: holds nothing, passes nothing.</summary>
    public static readonly SliceKind Nothing = new(new(SheetMaterial.Inert("nothing", 1, 1, 1), 1, 20), -1, true);

    public bool IsNothing => LayerIndex < 0;

    public SheetMaterial Material { get; }

    public int LayerIndex { get; }

    public double ThicknessM { get; }

    public double SaturationPa { get; }

    public double ResistanceBelow { get; }

    /// <summary>Water at saturation, before any stands free [kg/m³].</summary>
    public double Bound { get; }

    /// <summary>What free water may fill [kg/m³].</summary>
    public double Room { get; }

    /// <summary>Water at rest with a humidity [kg/m³].</summary>
    public double Water(double humidity)
    {
        var below = 0;
        while (below < Knots - 1 && _humidity[below + 1] <= humidity) below++;
        return Math.Clamp(below + ((humidity - _humidity[below]) / (_humidity[below + 1] - _humidity[below])), 0, Knots) / _perStep;
    }

    /// <summary>Humidity over so much water [0–1], slope dw/dh [kg/m³] and permeability [kg/(m·s·Pa)] there.</summary>
    public double At(double water, out double slope, out double permeability)
    {
        var at = water * _perStep;
        if (at >= Knots)
        {
            (slope, permeability) = (_slope[Knots], _permeability[Knots]);
            return 1;
        }
        var below = at > 0 ? (int)at : 0;
        at -= below; // below 0 by a hair, by rounding: the first piece goes on
        slope = _slope[below];
        permeability = _permeability[below] + (at * (_permeability[below + 1] - _permeability[below]));
        return _humidity[below] + (at * (_humidity[below + 1] - _humidity[below]));
    }
}
