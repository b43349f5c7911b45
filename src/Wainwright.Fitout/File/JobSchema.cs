using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;

namespace Wainwright.Fitout;

/// <summary>The published schema of the job file (JSON Schema 2020-12), made from the model itself.</summary>
public static class JobSchema
{
    /// <summary>The schema as a document.</summary>
    public static JsonObject Document()
    {
        var schema = JobFormat.Options.GetJsonSchemaAsNode(typeof(Job), new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = Refine }).AsObject();
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", "Wainwright job file");
        schema.Insert(2, "description", $"Format {Job.CurrentFormat}. Lengths mm, masses kg, forces N, times min, temperatures °C. x from the front of the load floor rearwards, y from the left inner skin to the right, z up from the metal floor.");
        return schema;
    }

    private static JsonNode Refine(JsonSchemaExporterContext context, JsonNode schema)
    {
        var type = Nullable.GetUnderlyingType(context.TypeInfo.Type) ?? context.TypeInfo.Type;
        var limits = context.PropertyInfo?.AttributeProvider?.GetCustomAttributes(typeof(LimitsAttribute), true).OfType<LimitsAttribute>().FirstOrDefault();
        var optional = Nullable.GetUnderlyingType(context.TypeInfo.Type) is not null;
        if (type == typeof(Measured)) return Optional(Measured(limits), optional);
        if (type == typeof(Place)) return Optional(Place(), optional);
        if (type.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IId<>))) return Optional(new JsonObject { ["type"] = "string", ["minLength"] = 1 }, optional);
        if (limits is not null && schema is JsonObject number)
        {
            number["minimum"] = limits.Least;
            number["maximum"] = limits.Most;
        }
        return schema;
    }

    private static JsonObject Measured(LimitsAttribute? limits)
    {
        JsonObject Number()
        {
            var number = new JsonObject { ["type"] = "number" };
            if (limits is not null) (number["minimum"], number["maximum"]) = (limits.Least, limits.Most);
            return number;
        }
        return new JsonObject
        {
            ["anyOf"] = new JsonArray(Number(), new JsonObject
            {
                ["type"] = "object",
                ["properties"] = new JsonObject
                {
                    ["value"] = Number(),
                    ["plusMinus"] = new JsonObject { ["type"] = new JsonArray("number", "null"), ["minimum"] = 0, ["maximum"] = 1e9 },
                    ["known"] = new JsonObject { ["enum"] = new JsonArray([.. Enum.GetNames<Known>().Select(n => (JsonNode)JsonNamingPolicy.CamelCase.ConvertName(n)!), null]) },
                },
                ["required"] = new JsonArray("value"),
                ["additionalProperties"] = false,
            }),
        };
    }

    private static JsonObject Place() => new()
    {
        ["type"] = "array",
        ["prefixItems"] = new JsonArray([.. Enumerable.Range(0, 3).Select(_ => new JsonObject { ["type"] = "number", ["minimum"] = -20_000, ["maximum"] = 20_000 })]),
        ["items"] = false,
        ["minItems"] = 3,
    };

    private static JsonObject Optional(JsonObject schema, bool optional) =>
        optional ? new JsonObject { ["anyOf"] = new JsonArray(schema, new JsonObject { ["type"] = "null" }) } : schema;
}
