using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Wainwright.Fitout;

/// <summary>A point or a size in vehicle axes [mm]. In the file three numbers, <c>[x, y, z]</c>.</summary>
/// <param name="XMm">From the front of the load floor towards the rear doors.</param>
/// <param name="YMm">From the left inner skin to the right, left as the driver sits.</param>
/// <param name="ZMm">Up from the metal floor.</param>
[JsonConverter(typeof(PlaceConverter))]
public readonly record struct Place(double XMm, double YMm, double ZMm)
{
    /// <summary>Sum of two, axis by axis.</summary>
    public static Place operator +(Place a, Place b) => new(a.XMm + b.XMm, a.YMm + b.YMm, a.ZMm + b.ZMm);

    /// <summary>Difference of two, axis by axis.</summary>
    public static Place operator -(Place a, Place b) => new(a.XMm - b.XMm, a.YMm - b.YMm, a.ZMm - b.ZMm);

    /// <summary>Sum of two, axis by axis.</summary>
    public static Place Add(Place left, Place right) => left + right;

    /// <summary>Difference of two, axis by axis.</summary>
    public static Place Subtract(Place left, Place right) => left - right;

    /// <summary>Straight distance to another place [mm].</summary>
    public double DistanceMm(Place other)
    {
        var d = other - this;
        return Math.Sqrt(d.XMm * d.XMm + d.YMm * d.YMm + d.ZMm * d.ZMm);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{XMm}, {YMm}, {ZMm}");
}

/// <summary>The six ways a thing can go, in the words of somebody standing in the van.</summary>
public enum Direction
{
    /// <summary>Towards the driver, −x.</summary>
    Forward,

    /// <summary>Towards the rear doors, +x.</summary>
    Rearward,

    /// <summary>Towards the left wall, −y.</summary>
    Left,

    /// <summary>Towards the right wall, +y.</summary>
    Right,

    /// <summary>Towards the floor, −z.</summary>
    Down,

    /// <summary>Towards the roof, +z.</summary>
    Up,
}

/// <summary>Directions in vehicle axes.</summary>
public static class Directions
{
    /// <summary>The unit step of a direction in vehicle axes.</summary>
    public static Place Step(this Direction direction) => direction switch
    {
        Direction.Forward => new(-1, 0, 0),
        Direction.Rearward => new(1, 0, 0),
        Direction.Left => new(0, -1, 0),
        Direction.Right => new(0, 1, 0),
        Direction.Down => new(0, 0, -1),
        Direction.Up => new(0, 0, 1),
        _ => throw new ArgumentOutOfRangeException(nameof(direction)),
    };

    /// <summary>The way back.</summary>
    public static Direction Opposite(this Direction direction) => (Direction)((int)direction ^ 1);
}

internal sealed class PlaceConverter : JsonConverter<Place>
{
    public override Place Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        Span<double> xyz = stackalloc double[3];
        for (var i = 0; i < 3; i++)
        {
            reader.Read();
            xyz[i] = reader.GetDouble();
        }
        reader.Read();
        return new(xyz[0], xyz[1], xyz[2]);
    }

    // on one line: a place is read at a glance or not at all
    public override void Write(Utf8JsonWriter writer, Place value, JsonSerializerOptions options) =>
        writer.WriteRawValue(string.Create(CultureInfo.InvariantCulture, $"[{value.XMm:R}, {value.YMm:R}, {value.ZMm:R}]"));
}
