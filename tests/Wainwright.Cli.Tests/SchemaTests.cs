using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Wainwright.Fitout;

namespace Wainwright.Cli.Tests;

/// <summary>The published schema: the file in the repository is the model's, and what the program takes it takes.</summary>
public sealed class SchemaTests
{
    static readonly Lazy<JsonSchema> Published = new(() => JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Top, "docs", "job.schema.json"))));

    [Fact]
    public void The_file_in_the_repository_is_what_the_command_writes_and_what_the_model_says()
    {
        var written = Ran.Wain("schema").Out;
        Assert.Equal(File.ReadAllText(Path.Combine(Repository.Top, "docs", "job.schema.json")), written);
        Assert.True(JsonNode.DeepEquals(JobSchema.Document(), JsonNode.Parse(written)));
    }

    [Fact]
    public void A_sound_small_job_fits_the_schema_and_a_misspelt_one_does_not()
    {
        Assert.True(Fits(SmallVan.Text()));
        Assert.False(Fits(SmallVan.Text().Replace("massKg", "masKg", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_schema_says_which_dialect_it_is_written_in() =>
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", JobSchema.Document()["$schema"]!.GetValue<string>());

    static bool Fits(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Published.Value.Evaluate(document.RootElement).IsValid;
    }
}
