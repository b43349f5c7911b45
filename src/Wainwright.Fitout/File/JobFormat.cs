using System.Collections;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Wainwright.Fitout;

/// <summary>How the model is written as JSON. One place, so that file, journal and schema cannot differ.</summary>
public static class JobFormat
{
    /// <summary>Options for reading and writing anything of the model.</summary>
    public static JsonSerializerOptions Options { get; } = Make(indented: true);

    /// <summary>The same on one line, for the journal.</summary>
    public static JsonSerializerOptions Compact { get; } = Make(indented: false);

    private static JsonSerializerOptions Make(bool indented)
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            WriteIndented = indented,
            AllowOutOfOrderMetadataProperties = true,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            RespectNullableAnnotations = true,
            RespectRequiredConstructorParameters = true,
            MaxDepth = 32,
            // a job file is read by people: é stays é, and every face encodes for its own medium
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { LeaveOutWhatSaysNothing } },
        };
        options.MakeReadOnly();
        return options;
    }

    /// <summary>Empty lists, false and zero defaults are not written; what must be there always is.</summary>
    private static void LeaveOutWhatSaysNothing(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object) return;
        foreach (var property in type.Properties)
        {
            if (property.IsRequired || property.Get is null) continue;
            var kind = property.PropertyType;
            if (kind != typeof(string) && typeof(IEnumerable).IsAssignableFrom(kind))
                property.ShouldSerialize = (_, value) => value is IEnumerable list && list.GetEnumerator().MoveNext();
            else if (kind.IsValueType && Nullable.GetUnderlyingType(kind) is null && property.Name != "count")
            {
                var nothing = Activator.CreateInstance(kind);
                property.ShouldSerialize = (_, value) => !Equals(value, nothing);
            }
        }
    }
}
