namespace Wainwright.Methods.Moisture.Drying;

/// <summary>What all slices of one place in one build-up share: water against humidity, permeability, temperature, as tables to look up.</summary>
sealed class SliceKind
{
    public const int Knots = 512;

    const double WetStorage = 1e6; // a slice with free water takes up vapour without changing its pressure

    // at equal steps of water, so that a look-up needs no search
    readonly double[] _humidity = new double[Knots + 1], _permeability = new double[Knots + 1];

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
        PerStep = Knots / Bound;
        for (int i = 0, below = 0; i <= Knots; i++)
        {
            var water = i * Bound / Knots;
            while (below < curve.Count - 2 && curve[below + 1] <= water) below++;
            _humidity[i] = (below + ((water - curve[below]) / (curve[below + 1] - curve[below]))) / (curve.Count - 1);
            _permeability[i] = Material.Permeability(_humidity[i], layer.TemperatureC);
        }
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

    /// <summary>Knots for each kg/m³ of water.</summary>
    public double PerStep { get; }

    /// <summary>What free water may fill [kg/m³].</summary>
    public double Room { get; }

    /// <summary>Water at rest with a humidity [kg/m³].</summary>
    public double Water(double humidity)
    {
        var below = 0;
        while (below < Knots - 1 && _humidity[below + 1] <= humidity) below++;
        return Math.Clamp(below + ((humidity - _humidity[below]) / (_humidity[below + 1] - _humidity[below])), 0, Knots) / PerStep;
    }

    /// <summary>Humidity over so much water [0–1].</summary>
    public double Humidity(double water)
    {
        var at = Math.Min(water * PerStep, Knots);
        var below = Math.Clamp((int)at, 0, Knots - 1); // below 0 by a hair, by rounding: the first piece goes on
        return _humidity[below] + ((at - below) * (_humidity[below + 1] - _humidity[below]));
    }

    /// <summary>The curves as pieces from knot to knot, and one more for all water beyond.</summary>
    public IEnumerable<Piece> Pieces()
    {
        for (var i = 0; i < Knots; i++)
        {
            var rise = _humidity[i + 1] - _humidity[i];
            yield return new(_humidity[i], rise, Bound / Knots / rise, _permeability[i], _permeability[i + 1] - _permeability[i]);
        }
        yield return new(1, 0, WetStorage * Bound, _permeability[Knots], 0);
    }

    /// <summary>Straight piece of the curves.</summary>
    /// <param name="Humidity">At its start [0–1].</param>
    /// <param name="Rise">To its end [0–1].</param>
    /// <param name="Slope">dw/dh on it [kg/m³].</param>
    /// <param name="Permeability">At its start [kg/(m·s·Pa)].</param>
    /// <param name="PermeabilityRise">To its end [kg/(m·s·Pa)].</param>
    public readonly record struct Piece(double Humidity, double Rise, double Slope, double Permeability, double PermeabilityRise);
}
