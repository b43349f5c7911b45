using System.Globalization;
using System.Text;

namespace Wainwright.Cli.Tests;

/// <summary>Files as they come from outside: cut, mistyped, hostile. Each is refused with its place, its rule and its mend.</summary>
public sealed class BadFileTests : IDisposable
{
    readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    Ran Validate(string text) => Ran.Wain("validate", folder.Write("job.json", text));

    void Refused(string text, params string[] said)
    {
        var ran = Validate(text);
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.All(said, s => Assert.Contains(s, ran.Error, StringComparison.Ordinal));
    }

    [Fact]
    public void A_sound_file_passes_and_says_so()
    {
        var ran = Validate(SmallVan.Text());
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Contains("no errors, no doubts", ran.Out, StringComparison.Ordinal);
        Assert.Empty(ran.Error);
    }

    [Theory, InlineData(0.1), InlineData(0.5), InlineData(0.99)]
    public void A_file_cut_off_in_the_middle_names_the_line(double share)
    {
        var whole = SmallVan.Text();
        Refused(whole[..(int)(whole.Length * share)], "line ", "cut off or damaged");
    }

    [Fact]
    public void An_empty_file_is_called_empty() => Refused("", "the file is empty");

    [Fact]
    public void A_ring_of_parts_standing_on_one_another_is_named_part_by_part() => Refused(
        SmallVan.Text(parts: $$"""{{SmallVan.Crate("A", more: """, "standsOn": ["B"]""")}}, {{SmallVan.Crate("B", "[1200, 100, 0]", more: """, "standsOn": ["C"]""")}}, {{SmallVan.Crate("C", "[1600, 100, 0]", more: """, "standsOn": ["A"]""")}}""", joints: ""),
        "A on B on C on A");

    [Fact]
    public void A_joint_from_a_part_to_itself_is_refused() =>
        Refused(SmallVan.Text(joints: SmallVan.Screws.Replace("\"part\": \"P1\"", "\"part\": \"P1\", \"to\": \"P1\"", StringComparison.Ordinal)), "job.joints[0] (F1).to", "to itself");

    [Fact]
    public void A_part_outside_the_van_is_refused_unless_it_says_outside()
    {
        Refused(SmallVan.Text(parts: SmallVan.Crate("A", "[2300, 100, 0]"), joints: ""), "job.parts[0] (A)", "100 mm beyond the rear doors", "\"outside\": true");
        Assert.Equal(Exit.Done, Validate(SmallVan.Text(parts: SmallVan.Crate("A", "[2300, 100, 0]", more: """, "outside": true"""), joints: "")).Exit);
    }

    [Theory]
    [InlineData("-1.5", "must be 0 to 3000, is -1.5")]
    [InlineData("1e308", "must be 0 to 3000, is 1e308")]
    [InlineData("1e999", "must be 0 to 3000, is 1e999")]
    [InlineData("-1e999", "must be 0 to 3000, is -1e999")]
    [InlineData("\"1.5\"", "must be a number")]
    [InlineData("true", "must be a number")]
    [InlineData("[1.5]", "must be a number")]
    public void A_mass_that_no_part_can_have_is_refused_with_its_limits(string mass, string rule) =>
        Refused(SmallVan.Text(parts: SmallVan.Pump.Replace("\"massKg\": 1.5", $"\"massKg\": {mass}", StringComparison.Ordinal)), "job.parts[0] (P1).massKg", rule);

    [Theory, InlineData("NaN"), InlineData("Infinity"), InlineData("-Infinity"), InlineData("1,5")]
    public void What_is_no_JSON_number_is_refused_at_its_line(string mass) =>
        Refused(SmallVan.Text(parts: SmallVan.Pump.Replace("\"massKg\": 1.5", $"\"massKg\": {mass}", StringComparison.Ordinal)), "line 1");

    [Fact]
    public void Metres_typed_as_millimetres_are_guessed() =>
        Refused(SmallVan.Text().Replace("\"lengthMm\": 2400", "\"lengthMm\": 2.4", StringComparison.Ordinal), "job.vehicle.loadSpace.lengthMm", "must be 800 to 8000, is 2.4", "if it was metres, write 2400");

    [Fact]
    public void A_reading_in_another_unit_is_refused_with_the_unit_of_the_file() => Refused(
        SmallVan.Text(readings: """{ "id": "R1", "quantity": "pressure", "value": 14.5, "unit": "psi", "takenAt": "2026-03-02T09:00:00+01:00" }"""),
        "job.readings[0] (R1).unit", "written in bar, not in “psi”");

    [Fact]
    public void Two_parts_of_one_id_are_refused_with_both_places() =>
        Refused(SmallVan.Text(parts: $"{SmallVan.Pump}, {SmallVan.Crate("P1")}"), "job.parts[1].id", "stands at parts[0] already");

    [Fact]
    public void A_key_that_stands_twice_is_refused() =>
        Refused(SmallVan.Text(parts: SmallVan.Pump.Replace("\"massKg\": 1.5", "\"massKg\": 1.5, \"massKg\": 15", StringComparison.Ordinal)), "job.parts[0] (P1).massKg", "stands twice");

    [Fact]
    public void An_unknown_field_comes_with_the_nearest_known_one() =>
        Refused(SmallVan.Text(parts: SmallVan.Pump.Replace("massKg", "masKg", StringComparison.Ordinal)), "job.parts[0] (P1).masKg", "did you mean “massKg”?");

    [Fact]
    public void Parts_that_stand_in_one_another_are_a_doubt_that_does_not_refuse_the_file()
    {
        var ran = Validate(SmallVan.Text(parts: $"{SmallVan.Crate("A")}, {SmallVan.Crate("B", "[900, 100, 0]")}", joints: ""));
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Contains("doubt  job.parts[0] (A): stands at least 100 mm inside B", ran.Out, StringComparison.Ordinal);
        Assert.Contains("no errors, 1 doubt", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_thousand_parts_are_refused_by_number_and_quickly()
    {
        var started = TimeProvider.System.GetTimestamp();
        Refused(SmallVan.Text(parts: string.Join(',', Enumerable.Range(0, 10_000).Select(i => SmallVan.Crate($"C{i.ToString(CultureInfo.InvariantCulture)}"))), joints: ""), "at most 2000 parts, has 10000");
        Assert.InRange(TimeProvider.System.GetElapsedTime(started), TimeSpan.Zero, TimeSpan.FromSeconds(20));
    }

    [Fact]
    public void Bytes_that_are_not_UTF_8_are_refused_at_their_place()
    {
        byte[] latin = [.. Encoding.UTF8.GetBytes("""{ "format": 1, "title": "caf"""), 0xE9, .. Encoding.UTF8.GetBytes("\" }")];
        var ran = Ran.Wain("validate", folder.Write("latin.json", latin));
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.Contains("byte 28: must be UTF-8 text", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Nesting_without_end_is_refused_not_followed() => Refused(new string('[', 100_000), "must be one whole JSON document");

    [Fact]
    public void A_file_of_another_kind_is_refused() => Refused("[1, 2, 3]", "must be an object", "this is not a job file");

    [Theory, InlineData("2", "open it with a newer program"), InlineData("0", "must be 1 to 1"), InlineData("\"1\"", "not a whole number")]
    public void A_format_this_program_does_not_know_is_refused(string format, string said) =>
        Refused(SmallVan.Text().Replace("\"format\": 1", $"\"format\": {format}", StringComparison.Ordinal), "job.format", said);

    [Fact]
    public void A_file_of_two_gigabytes_is_refused_without_being_read()
    {
        var path = folder.At("huge.json");
        using (var file = File.Create(path)) file.SetLength(2L << 30);
        var ran = Ran.Wain("validate", path);
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.Contains("must be at most 64 MiB", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_fault_is_told_in_one_pass()
    {
        var ran = Ran.Wain("validate", folder.Write("job.json", SmallVan.Text(parts: SmallVan.Pump.Replace("1.5", "-1", StringComparison.Ordinal).Replace("\"water\"", "\"watr\"", StringComparison.Ordinal)).Replace("2400", "2.4", StringComparison.Ordinal)), "--json");
        Assert.Equal(3, ran.Json.GetProperty("errors").GetInt32());
        Assert.Equal(["job.vehicle.loadSpace.lengthMm", "job.parts[0] (P1).system", "job.parts[0] (P1).massKg"], ran.Json.GetProperty("issues").EnumerateArray().Select(i => i.GetProperty("where").GetString()));
    }

    [Fact]
    public void Control_characters_of_a_hostile_file_never_reach_the_terminal()
    {
        var ran = Validate(SmallVan.Text().Replace("\"title\"", "\"ti\\u001b[2Jtle\"", StringComparison.Ordinal));
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.DoesNotContain('\u001b', ran.Said);
    }

    [Fact]
    public void A_file_that_is_not_there_and_a_folder_are_said_plainly()
    {
        Assert.Contains("there is no file", Ran.Wain("validate", folder.At("none.json")).Error, StringComparison.Ordinal);
        Assert.Contains("is a folder", Ran.Wain("validate", folder.Path).Error, StringComparison.Ordinal);
        Assert.Equal(Exit.BadInput, Ran.Wain("validate", folder.Path).Exit);
    }
}
