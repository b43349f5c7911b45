using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Wainwright.Fitout;

/// <summary>
/// Walks a JSON document beside the model and reports every place where the two differ: unknown and missing
/// fields, wrong kinds of value, words that are not in the list, numbers outside their limits. All of them, in one pass.
/// </summary>
internal sealed class JobShape(List<Issue> issues)
{
    /// <summary>More than this helps nobody; the last line says how many were left out.</summary>
    internal const int MostIssues = 500;

    private int leftOut;

    public void Walk(JsonElement value, Type type, string where)
    {
        Walk(value, type, where, null);
        if (leftOut > 0) issues.Add(new("(whole file)", $"{leftOut} more places differ", "mend those above and look again"));
    }

    private void Walk(JsonElement value, Type type, string where, LimitsAttribute? limits)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        if (type == typeof(Measured)) Measured(value, where, limits);
        else if (type == typeof(Place)) Place(value, where);
        else if (type == typeof(double) || type == typeof(int) || type == typeof(decimal)) Number(value, type, where, limits);
        else if (type == typeof(bool)) Kind(value, where, "true or false", JsonValueKind.True, JsonValueKind.False);
        else if (type == typeof(DateOnly)) Date(value, where, "a day as 2026-03-14", s => DateOnly.TryParseExact(s, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _));
        else if (type == typeof(DateTimeOffset)) Date(value, where, "a time as 2026-03-14T08:30:00+01:00", _ => value.TryGetDateTimeOffset(out DateTimeOffset _));
        else if (type.IsEnum) Word(value, type, where);
        else if (type == typeof(string) || type.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IId<>))) Text(value, where);
        else if (JobFormat.Options.GetTypeInfo(type) is { Kind: JsonTypeInfoKind.Enumerable } list) List(value, list.ElementType!, where);
        else Object(value, type, where);
    }

    private void Object(JsonElement value, Type type, string where)
    {
        if (!Kind(value, where, "an object { … }", JsonValueKind.Object)) return;
        var info = JobFormat.Options.GetTypeInfo(type);
        var discriminator = info.PolymorphismOptions?.TypeDiscriminatorPropertyName;
        if (discriminator is not null)
        {
            var kinds = info.PolymorphismOptions!.DerivedTypes.ToDictionary(d => (string)d.TypeDiscriminator!, d => d.DerivedType);
            if (!value.TryGetProperty(discriminator, out var kind) || kind.ValueKind != JsonValueKind.String || !kinds.TryGetValue(kind.GetString()!, out var derived))
            {
                Add($"{where}.{discriminator}", $"must be one of {string.Join(", ", kinds.Keys)}", "write one of these");
                return;
            }
            info = JobFormat.Options.GetTypeInfo(derived);
        }

        var fields = info.Properties.Where(p => p.Set is not null || p.IsRequired).ToDictionary(p => p.Name);
        var seen = new HashSet<string>();
        foreach (var field in value.EnumerateObject())
        {
            var at = $"{where}.{field.Name}";
            if (!seen.Add(field.Name)) Add(at, "stands twice", "keep the right one");
            else if (field.Name == discriminator) continue;
            else if (!fields.TryGetValue(field.Name, out var property)) Unknown(at, field.Name, fields.Keys);
            else if (field.Value.ValueKind == JsonValueKind.Null)
            {
                // null says the same as leaving it out, where it may be left out
                if (property.IsRequired || !property.IsSetNullable) Add(at, "must not be null", "give a value or leave the field out");
            }
            else Walk(field.Value, property.PropertyType, at, property.AttributeProvider?.GetCustomAttributes(typeof(LimitsAttribute), true).OfType<LimitsAttribute>().FirstOrDefault());
        }
        foreach (var missing in fields.Values.Where(p => p.IsRequired && !seen.Contains(p.Name)))
            Add($"{where}.{missing.Name}", "is missing", "add it");
    }

    private void Unknown(string at, string name, IEnumerable<string> fields)
    {
        var near = fields.Select(f => (Field: f, Far: Distance(f, name))).OrderBy(f => f.Far).FirstOrDefault();
        var hint = near.Field is not null && near.Far <= Math.Max(2, name.Length / 3) ? $"did you mean “{near.Field}”? Otherwise take it out" : "take it out, or put it into a note";
        Add(at, "is not a field of this format", hint);
    }

    private void List(JsonElement value, Type element, string where)
    {
        if (!Kind(value, where, "a list [ … ]", JsonValueKind.Array)) return;
        var i = 0;
        foreach (var item in value.EnumerateArray())
        {
            var id = item.ValueKind == JsonValueKind.Object && item.TryGetProperty("id", out var text) && text.ValueKind == JsonValueKind.String ? $" ({text.GetString()})" : "";
            Walk(item, element, string.Create(CultureInfo.InvariantCulture, $"{where}[{i++}]{id}"), null);
        }
    }

    private void Measured(JsonElement value, string where, LimitsAttribute? limits)
    {
        if (value.ValueKind != JsonValueKind.Object)
        {
            Number(value, typeof(double), where, limits, "a number, or { \"value\": …, \"plusMinus\": … }");
            return;
        }
        Object(value, typeof(MeasuredConverter.Whole), where);
        if (value.TryGetProperty("value", out var inner)) Number(inner, typeof(double), $"{where}.value", limits);
    }

    private void Place(JsonElement value, string where)
    {
        if (!Kind(value, where, "three numbers [x, y, z] in mm", JsonValueKind.Array)) return;
        if (value.GetArrayLength() != 3)
        {
            Add(where, $"must be three numbers [x, y, z] in mm, has {value.GetArrayLength()}", "give x, y and z");
            return;
        }
        var i = 0;
        foreach (var number in value.EnumerateArray()) Number(number, typeof(double), $"{where}[{"xyz"[i++]}]", new LimitsAttribute(-20_000, 20_000));
    }

    private void Number(JsonElement value, Type type, string where, LimitsAttribute? limits, string wanted = "a number")
    {
        if (!Kind(value, where, wanted, JsonValueKind.Number)) return;
        var number = value.GetDouble();
        var (least, most) = limits is null ? (-1e12, 1e12) : (limits.Least, limits.Most);
        if (!double.IsFinite(number) || number < least || number > most)
        {
            Add(where, string.Create(CultureInfo.InvariantCulture, $"must be {least} to {most}, is {value.GetRawText()}"), Guess(where, number, least, most));
            return;
        }
        if (type == typeof(int) && !value.TryGetInt32(out _)) Add(where, $"must be a whole number, is {value.GetRawText()}", "round it");
    }

    /// <summary>Metres or inches typed as millimetres, grams as kilograms: said when the converted value would fit.</summary>
    private static string Guess(string where, double number, double least, double most)
    {
        foreach (var (factor, from, to) in ((double, string, string)[])[(1000, "metres", "mm"), (10, "centimetres", "mm"), (25.4, "inches", "mm"), (0.001, "grams", "kg"), (0.1, "ten times too much", "one tenth")])
            if (where.EndsWith(to == "kg" ? "Kg" : "Mm", StringComparison.Ordinal) && number * factor >= least && number * factor <= most)
                return string.Create(CultureInfo.InvariantCulture, $"check it; if it was {from}, write {number * factor:0.###}");
        return "check the value and its unit";
    }

    private void Word(JsonElement value, Type type, string where)
    {
        if (!Kind(value, where, "a word", JsonValueKind.String)) return;
        var words = Enum.GetNames(type).Select(JsonNamingPolicy.CamelCase.ConvertName).ToList();
        if (words.Contains(value.GetString()!)) return;
        Add(where, $"must be one of {string.Join(", ", words)}, is “{Short(value.GetString()!)}”", $"did you mean “{words.MinBy(w => Distance(w, value.GetString()!))}”?");
    }

    private void Text(JsonElement value, string where)
    {
        if (!Kind(value, where, "text in quotes", JsonValueKind.String)) return;
        var text = value.GetString()!;
        if (text.Length > 20_000) Add(where, $"must be at most 20 000 characters, has {text.Length}", "shorten it");
        else if (text.Any(c => char.IsControl(c) && c is not ('\n' or '\t'))) Add(where, "must not hold control characters", "take them out");
    }

    private void Date(JsonElement value, string where, string wanted, Func<string, bool> good)
    {
        if (!Kind(value, where, wanted, JsonValueKind.String)) return;
        if (!good(value.GetString()!)) Add(where, $"must be {wanted}, is “{Short(value.GetString()!)}”", "write it that way (ISO 8601)");
    }

    private bool Kind(JsonElement value, string where, string wanted, params ReadOnlySpan<JsonValueKind> kinds)
    {
        if (kinds.Contains(value.ValueKind)) return true;
        Add(where, $"must be {wanted}, is {value.ValueKind.ToString().ToLowerInvariant()}", $"write {wanted}");
        return false;
    }

    private void Add(string where, string rule, string mend)
    {
        if (issues.Count < MostIssues) issues.Add(new(where, rule, mend));
        else leftOut++;
    }

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "…";

    /// <summary>Edit distance (Levenshtein), without regard to case.</summary>
    private static int Distance(string a, string b)
    {
        if (b.Length > 60) return int.MaxValue;
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var corner = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]) ? 0 : 1;
                (corner, row[j]) = (row[j], Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), corner + cost));
            }
        }
        return row[b.Length];
    }
}
