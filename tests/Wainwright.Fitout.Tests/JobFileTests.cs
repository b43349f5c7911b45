using System.Text;
using System.Text.Json.Nodes;

namespace Wainwright.Fitout.Tests;

public class JobFileTests
{
    [Fact]
    public void A_job_written_and_read_is_the_same_document()
    {
        var text = Samples.Text(Samples.Small());
        var reading = Samples.Read(text);
        Assert.Empty(reading.Issues);
        Assert.Equal(text, Samples.Text(reading.Job!));
    }

    [Fact]
    public void What_says_nothing_is_not_written()
    {
        var text = Samples.Text(Samples.Small());
        Assert.DoesNotContain("\"lines\"", text, StringComparison.Ordinal);
        Assert.DoesNotContain("false", text, StringComparison.Ordinal);
        Assert.DoesNotContain("null", text, StringComparison.Ordinal);
        Assert.Contains("\"at\": [100, 0, 0]", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_field_is_reported_with_the_field_it_may_have_meant()
    {
        var reading = Samples.Bent(d => d["parts"]![0]!["masKg"] = 3);
        var issue = Assert.Single(reading.Issues);
        Assert.Null(reading.Job);
        Assert.Equal("job.parts[0] (P1).masKg", issue.Where);
        Assert.Contains("massKg", issue.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_come_in_one_pass()
    {
        var reading = Samples.Bent(d =>
        {
            d["parts"]![0]!["massKg"] = -1;
            d["parts"]![1]!["system"] = "furnitur";
            d["joints"]![0]!.AsObject().Remove("count");
            d["points"]![0]!["at"] = new JsonArray(1, 2);
            d["title"] = 5;
        });
        Assert.Equal(5, reading.Issues.Count);
        Assert.Contains(reading.Issues, i => i.Where.EndsWith("massKg", StringComparison.Ordinal) && i.Rule.Contains("0 to 3000", StringComparison.Ordinal));
        Assert.Contains(reading.Issues, i => i.Mend.Contains("furniture", StringComparison.Ordinal));
        Assert.Contains(reading.Issues, i => i.Where.EndsWith("(J1).count", StringComparison.Ordinal));
    }

    [Fact]
    public void Metres_typed_as_millimetres_are_guessed()
    {
        var issue = Assert.Single(Samples.Bent(d => d["vehicle"]!["loadSpace"]!["lengthMm"] = 3.25).Issues);
        Assert.Contains("metres, write 3250", issue.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e308")]
    [InlineData("1e999")]
    [InlineData("-1")]
    [InlineData("\"12\"")]
    [InlineData("{\"value\": 1e308}")]
    [InlineData("{\"value\": 2, \"plusMinus\": -1}")]
    [InlineData("{\"plusMinus\": 1}")]
    public void A_mass_that_is_no_mass_is_refused(string mass)
    {
        var text = Samples.Text(Samples.Small()).Replace("\"massKg\": 12", $"\"massKg\": {mass}", StringComparison.Ordinal);
        var reading = Samples.Read(text);
        Assert.Null(reading.Job);
        Assert.NotEmpty(reading.Issues);
        Assert.All(reading.Issues, i => Assert.NotEmpty(i.Mend));
    }

    [Fact]
    public void A_file_cut_off_anywhere_is_refused_and_says_where()
    {
        var whole = JobFile.Write(Samples.Small());
        for (var length = 0; length < whole.Length - 2; length += 37)
        {
            var reading = JobFile.Read(whole.AsMemory(0, length));
            Assert.Null(reading.Job);
            Assert.StartsWith("line ", Assert.Single(reading.Issues).Where, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Text_that_is_not_utf8_is_refused_at_its_byte()
    {
        var bytes = JobFile.Write(Samples.Small());
        var at = Encoding.UTF8.GetString(bytes).IndexOf("small van", StringComparison.Ordinal);
        bytes[at] = 0xC3;
        bytes[at + 1] = 0x28;
        var reading = JobFile.Read(bytes);
        Assert.Null(reading.Job);
        Assert.Equal($"byte {at}", Assert.Single(reading.Issues).Where);
    }

    [Fact]
    public void A_field_that_stands_twice_is_reported()
    {
        var text = Samples.Text(Samples.Small()).Replace("\"massKg\": 12", "\"massKg\": 12, \"massKg\": 13", StringComparison.Ordinal);
        Assert.Contains("twice", Assert.Single(Samples.Read(text).Issues).Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void A_newer_format_is_refused_and_says_so()
    {
        var reading = Samples.Bent(d => d["format"] = Job.CurrentFormat + 1);
        Assert.Null(reading.Job);
        Assert.Contains("newer program", Assert.Single(reading.Issues).Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_thousand_parts_are_refused_with_the_limit()
    {
        var many = Samples.Small() with { Parts = [.. Enumerable.Range(0, 10_000).Select(i => Samples.Small().Parts[0] with { Id = new($"N{i}") })] };
        var reading = Samples.Read(Samples.Text(many));
        Assert.Null(reading.Job);
        Assert.Contains(reading.Issues, i => i.Where == "job.parts" && i.Rule.Contains("2000", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_with_thousands_of_faults_says_how_many_it_left_out()
    {
        var bad = new JsonArray([.. Enumerable.Range(0, 1_500).Select(i => (JsonNode)new JsonObject { ["nonsense"] = i })]);
        var reading = Samples.Bent(d => d["parts"] = bad);
        Assert.InRange(reading.Issues.Count, 100, 501);
        Assert.Contains("more places differ", reading.Issues[^1].Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void Deep_nesting_is_refused()
    {
        var reading = Samples.Read(new string('[', 5_000) + new string(']', 5_000));
        Assert.Null(reading.Job);
        Assert.Single(reading.Issues);
    }

    [Fact]
    public void A_byte_order_mark_does_no_harm() =>
        Assert.NotNull(JobFile.Read(new byte[] { 0xEF, 0xBB, 0xBF }.Concat(JobFile.Write(Samples.Small())).ToArray()).Job);

    [Theory]
    [InlineData("\"title\": \"\\ud800\"")]
    [InlineData("\"\\udc00\": 1, \"title\": \"x\"")]
    public void Half_a_character_is_refused_at_its_byte(string text)
    {
        var bad = Samples.Text(Samples.Small()).Replace("\"title\": \"small van\"", text, StringComparison.Ordinal);
        var issue = Assert.Single(Samples.Read(bad).Issues);
        Assert.StartsWith("byte ", issue.Where, StringComparison.Ordinal);
    }
}
