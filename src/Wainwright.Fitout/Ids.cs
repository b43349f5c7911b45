using System.Text.Json;
using System.Text.Json.Serialization;

namespace Wainwright.Fitout;

/// <summary>An id as written in a job file: free-form, stable, compared letter by letter.</summary>
/// <typeparam name="T">The kind of id, so that a joint's id can never stand where a part's belongs.</typeparam>
public interface IId<T> where T : struct, IId<T>
{
    /// <summary>The id as written.</summary>
    string Text { get; }

    /// <summary>The id written as <paramref name="text"/>.</summary>
    static abstract T Of(string text);
}

/// <summary>Id of a <see cref="Part"/>.</summary>
[JsonConverter(typeof(IdConverter<PartId>))]
public readonly record struct PartId(string Text) : IId<PartId>
{
    /// <inheritdoc/>
    public static PartId Of(string text) => new(text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>Id of a <see cref="Joint"/>.</summary>
[JsonConverter(typeof(IdConverter<JointId>))]
public readonly record struct JointId(string Text) : IId<JointId>
{
    /// <inheritdoc/>
    public static JointId Of(string text) => new(text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>Id of a <see cref="Line"/>.</summary>
[JsonConverter(typeof(IdConverter<LineId>))]
public readonly record struct LineId(string Text) : IId<LineId>
{
    /// <inheritdoc/>
    public static LineId Of(string text) => new(text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>Id of a numbered <see cref="ReadingPoint"/>.</summary>
[JsonConverter(typeof(IdConverter<PointId>))]
public readonly record struct PointId(string Text) : IId<PointId>
{
    /// <inheritdoc/>
    public static PointId Of(string text) => new(text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>Id of a <see cref="Reading"/>.</summary>
[JsonConverter(typeof(IdConverter<ReadingId>))]
public readonly record struct ReadingId(string Text) : IId<ReadingId>
{
    /// <inheritdoc/>
    public static ReadingId Of(string text) => new(text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>Id of a <see cref="Finding"/>.</summary>
[JsonConverter(typeof(IdConverter<FindingId>))]
public readonly record struct FindingId(string Text) : IId<FindingId>
{
    /// <inheritdoc/>
    public static FindingId Of(string text) => new(text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>Id of a <see cref="Stage"/>.</summary>
[JsonConverter(typeof(IdConverter<StageId>))]
public readonly record struct StageId(string Text) : IId<StageId>
{
    /// <inheritdoc/>
    public static StageId Of(string text) => new(text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

/// <summary>A photo's name: the SHA-256 of its bytes, 64 lower-case hexadecimal digits.</summary>
[JsonConverter(typeof(IdConverter<PhotoHash>))]
public readonly record struct PhotoHash(string Text) : IId<PhotoHash>
{
    /// <inheritdoc/>
    public static PhotoHash Of(string text) => new(text);

    /// <summary>Whether the text is 64 lower-case hexadecimal digits.</summary>
    [JsonIgnore]
    public bool IsWellFormed => Text is { Length: 64 } && Text.All(c => char.IsAsciiHexDigitLower(c));

    /// <inheritdoc/>
    public override string ToString() => Text;
}

internal sealed class IdConverter<T> : JsonConverter<T> where T : struct, IId<T>
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => T.Of(reader.GetString()!);

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(value.Text);
}
