using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>What a face of a sheet gives its water to.</summary>
/// <param name="Resistance">Z between the face and the air [m²·s·Pa/kg], above 0; infinite where nothing passes.</param>
/// <param name="VapourPa">Vapour pressure of the air [Pa], 0 or more.</param>
public sealed record SheetFace(double Resistance, double VapourPa)
{
    /// <summary>Z of a bare face in still air [m²·s·Pa/kg]: 1/(7e-9 h) with h 4 W/(m²·K), from memory.</summary>
    public const double StillAir = 3.57e7;

    /// <summary>Metal, or a film that stops everything.</summary>
    public static readonly SheetFace Sealed = new(double.PositiveInfinity, 0);

    /// <summary>A face to the air of the room, bare or under a cover.</summary>
    /// <param name="airC">Air [°C].</param>
    /// <param name="humidityFraction">Relative humidity [0–1].</param>
    /// <param name="coverResistance">Z of carpet, vinyl, paint on it [m²·s·Pa/kg], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static SheetFace ToAir(double airC, double humidityFraction, double coverResistance = 0) =>
        new(StillAir + Must.NotBeNegative(coverResistance), SaturationPressure.Of(new(airC)).PressurePa * Must.BeWithin(humidityFraction, 0, 1));

    /// <summary>A face to a hollow that is aired from the room: under a bed box, behind a cupboard.</summary>
    /// <param name="airC">Air [°C].</param>
    /// <param name="humidityFraction">Humidity of the room [0–1].</param>
    /// <param name="airingM3PerHM2">Air that changes per square metre of the face [m³/(h·m²)], 0 or more; 0 seals it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static SheetFace ToCavity(double airC, double humidityFraction, double airingM3PerHM2) =>
        Must.NotBeNegative(airingM3PerHM2) == 0
            ? Sealed
            // the air carries off p/(461.5 T) for each cubic metre
            : ToAir(airC, humidityFraction, 461.5 * (airC + 273.15) * 3600 / airingM3PerHM2);

    /// <summary>A face behind a film of air that is s_d metres of still air thick.</summary>
    /// <param name="airC">Air [°C].</param>
    /// <param name="humidityFraction">Relative humidity [0–1].</param>
    /// <param name="airLayerM">s_d [m], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static SheetFace BehindAirLayer(double airC, double humidityFraction, double airLayerM) =>
        new(VapourResistance.OfAirLayer(Must.BePositive(airLayerM), airC), SaturationPressure.Of(new(airC)).PressurePa * Must.BeWithin(humidityFraction, 0, 1));
}
