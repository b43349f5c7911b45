using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Wainwright.Fitout;

/// <summary>A quantity with its doubt. In the file a plain number, or an object when there is more to say.</summary>
/// <param name="Value">The value, in the unit that the property's name ends in.</param>
/// <param name="PlusMinus">Half-width of the range that holds the true value, same unit, 0 or more; absent when nobody said.</param>
/// <param name="Known">How this one quantity is known, when it differs from what it belongs to.</param>
[JsonConverter(typeof(MeasuredConverter))]
public readonly record struct Measured(double Value, double? PlusMinus = null, Known? Known = null)
{
    /// <summary>The value less its tolerance.</summary>
    [JsonIgnore]
    public double Low => Value - (PlusMinus ?? 0);

    /// <summary>The value plus its tolerance.</summary>
    [JsonIgnore]
    public double High => Value + (PlusMinus ?? 0);

    /// <summary>A quantity of which only the value is known.</summary>
    public static implicit operator Measured(double value) => new(value);

    /// <summary>A quantity of which only the value is known.</summary>
    public static Measured FromDouble(double value) => new(value);

    /// <inheritdoc/>
    public override string ToString() => PlusMinus is { } t
        ? string.Create(CultureInfo.InvariantCulture, $"{Value} ± {t}")
        : Value.ToString(CultureInfo.InvariantCulture);
}

internal sealed class MeasuredConverter : JsonConverter<Measured>
{
    public override Measured Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.Number) return new(reader.GetDouble());
        var whole = JsonSerializer.Deserialize<Whole>(ref reader, options)!;
        return new(whole.Value, whole.PlusMinus, whole.Known);
    }

    public override void Write(Utf8JsonWriter writer, Measured value, JsonSerializerOptions options)
    {
        if (value is { PlusMinus: null, Known: null }) writer.WriteNumberValue(value.Value);
        else JsonSerializer.Serialize(writer, new Whole { Value = value.Value, PlusMinus = value.PlusMinus, Known = value.Known }, options);
    }

    internal sealed record Whole
    {
        public required double Value { get; init; }

        [Limits(0, 1e9)]
        public double? PlusMinus { get; init; }

        public Known? Known { get; init; }
    }
}
