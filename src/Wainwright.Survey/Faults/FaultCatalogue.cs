using System.Reflection;
using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Survey.Faults;

/// <summary>A fault that fitted-out vans show again and again. Common practice, no source.</summary>
/// <param name="Id">Its id: <c>water-01</c>.</param>
/// <param name="What">The fault.</param>
/// <param name="ShowsAs">How it shows.</param>
/// <param name="Test">What tells it.</param>
/// <param name="Leads">What it leads to.</param>
/// <param name="Urgency">When something has to be done, as a rule.</param>
/// <param name="Note">When the urgency holds, where it does not always.</param>
/// <param name="Remedy">Usual remedy.</param>
/// <param name="Who">Who may do it; local rules differ.</param>
public sealed record Fault(string Id, string What, string ShowsAs, string Test, string Leads, Urgency Urgency, string? Note, string Remedy, IReadOnlyList<string> Who);

/// <summary>The faults a survey looks for, by family.</summary>
public static class FaultCatalogue
{
    /// <summary>How far it is to be trusted.</summary>
    public const string Caution = "Common practice, no source: a memory aid, not a standard. Who may do a repair differs by country; local codes rule.";

    private static readonly Lazy<IReadOnlyList<Fault>> Read = new(Parsed);

    /// <summary>Every fault, by family and number.</summary>
    public static IReadOnlyList<Fault> All => Read.Value;

    /// <summary>The fault of an id; absent when the catalogue has none such.</summary>
    public static Fault? Find(string id) => All.FirstOrDefault(f => f.Id == id);

    private static IReadOnlyList<Fault> Parsed()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("Wainwright.Survey.Faults.faults.json")
            ?? throw new InvalidOperationException("the fault catalogue is not in the program");
        var file = JsonSerializer.Deserialize<File>(stream, Options) ?? throw new InvalidOperationException("the fault catalogue is empty");
        return file.Faults;
    }

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter() },
        UnmappedMemberHandling = System.Text.Json.Serialization.JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
    };

    private sealed record File(string About, IReadOnlyList<Fault> Faults);
}
