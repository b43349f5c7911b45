using System.Reflection;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using Wainwright.Fitout;

namespace Wainwright.Cli.Tests;

/// <summary>docs/job-file.md says what the model says.</summary>
public sealed partial class JobPageTests
{
    static readonly string Page = File.ReadAllText(Path.Combine(Repository.Top, "docs", "job-file.md"));

    [Fact]
    public void The_page_names_every_field_and_every_word_of_the_model()
    {
        var missing = from type in Reachable(typeof(Job))
                      from name in type.IsEnum ? Enum.GetNames(type).Select(JsonNamingPolicy.CamelCase.ConvertName) : Fields(type).Select(p => p.Name)
                      where !Section(type).Contains($"`{name}`", StringComparison.Ordinal)
                      select $"{type.Name}.{name}";
        Assert.Empty(missing);
    }

    [Fact]
    public void The_example_on_the_page_is_a_sound_job()
    {
        var example = Example().Match(Page).Groups[1].Value;
        Assert.Empty(JobFile.Read(Encoding.UTF8.GetBytes(example)).Issues);
    }

    /// <summary>What the page says of a type: from its heading to the next.</summary>
    static string Section(Type type)
    {
        var from = Page.IndexOf($"#### {type.Name}\n", StringComparison.Ordinal);
        if (from < 0) return "";
        var to = Page.IndexOf("\n###", from + 5, StringComparison.Ordinal);
        return to < 0 ? Page[from..] : Page[from..to];
    }

    /// <summary>Fields a type adds to those of the type it is a kind of.</summary>
    static IEnumerable<JsonPropertyInfo> Fields(Type type) =>
        JobFormat.Options.GetTypeInfo(type).Properties.Where(p => (p.Set is not null || p.IsRequired) && p.AttributeProvider is PropertyInfo own && own.DeclaringType == type);

    static HashSet<Type> Reachable(Type from)
    {
        var found = new HashSet<Type>();
        var work = new Stack<Type>([from]);
        while (work.TryPop(out var type))
        {
            type = Nullable.GetUnderlyingType(type) ?? type;
            var info = type.IsEnum ? null : JobFormat.Options.GetTypeInfo(type);
            if (info?.Kind == JsonTypeInfoKind.Enumerable) work.Push(info.ElementType!);
            else if ((type.IsEnum || info?.Kind == JsonTypeInfoKind.Object) && found.Add(type) && info is not null)
            {
                foreach (var field in Fields(type)) work.Push(field.PropertyType);
                foreach (var derived in info.PolymorphismOptions?.DerivedTypes ?? []) work.Push(derived.DerivedType);
            }
        }
        // an abstract record without fields of its own is its derived records
        return [.. found.Where(t => !t.IsAbstract || Fields(t).Any())];
    }

    [GeneratedRegex("```json\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Example();
}
