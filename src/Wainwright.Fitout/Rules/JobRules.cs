namespace Wainwright.Fitout;

/// <summary>What must hold of a job as a whole, beyond the shape of its file.</summary>
public static class JobRules
{
    /// <summary>Most parts one job may hold.</summary>
    public const int MostParts = 2_000;

    /// <summary>Most entries any other list may hold.</summary>
    public const int MostEntries = 50_000;

    /// <summary>Everything wrong or doubtful about <paramref name="job"/>, in the order of the file.</summary>
    public static IReadOnlyList<Issue> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var issues = new List<Issue>();
        if (!IsGoodId(job.Id)) issues.Add(BadId("job.id", job.Id));
        if (job.Currency is { } money && !(money.Length == 3 && money.All(char.IsAsciiLetterUpper)))
            issues.Add(new("job.currency", $"must be an ISO 4217 code of three capitals, is “{money}”", "write it as EUR, GBP, USD …"));
        if (TooMany(job, issues)) return issues;
        Ids(job, issues);
        issues.AddRange(References.Of(job));
        issues.AddRange(VehicleRules.Of(job.Vehicle));
        issues.AddRange(PlaceRules.Of(job));
        issues.AddRange(HoldingRules.Of(job));
        issues.AddRange(MovingRules.Of(job));
        issues.AddRange(ReadingRules.Of(job));
        return issues;
    }

    /// <summary>Whether a text can serve as an id: 1 to 40 characters, no control characters, no slash, no space at either end.</summary>
    public static bool IsGoodId(string? id) =>
        id is { Length: >= 1 and <= 40 } && id.Trim() == id && !id.Any(c => char.IsControl(c) || c is '/' or '\\');

    internal static Issue BadId(string where, string id) => new(where,
        $"an id has 1 to 40 characters, no slash, no control character and no space at either end; is “{(id.Length > 50 ? id[..50] + "…" : id)}”", "give it a short plain id");

    /// <summary>The place of a part in the file, for messages.</summary>
    internal static string At(int index, PartId id) => $"job.parts[{index}] ({id})";

    private static bool TooMany(Job job, List<Issue> issues)
    {
        var before = issues.Count;
        if (job.Parts.Count > MostParts)
            issues.Add(new("job.parts", $"a job holds at most {MostParts} parts, has {job.Parts.Count}", "leave single screws and stock to joints and contents, or split the job"));
        foreach (var section in Section.Lists.Where(s => s.Count(job) > MostEntries))
            issues.Add(new($"job.{section.Name}", $"at most {MostEntries} entries, has {section.Count(job)}", "split the job"));
        return issues.Count > before;
    }

    private static void Ids(Job job, List<Issue> issues)
    {
        foreach (var section in Section.Lists)
        {
            var seen = new Dictionary<string, int>();
            var i = -1;
            foreach (var id in section.Ids(job))
            {
                i++;
                if (section.Name != "photos" && !IsGoodId(id)) issues.Add(BadId($"job.{section.Name}[{i}].id", id));
                else if (!seen.TryAdd(id, i)) issues.Add(new($"job.{section.Name}[{i}].id", $"“{id}” stands at {section.Name}[{seen[id]}] already", "give one of them another id"));
            }
        }
    }
}
