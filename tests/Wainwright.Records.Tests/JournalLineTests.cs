using System.Security.Cryptography;
using System.Text;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

public class JournalLineTests
{
    [Fact]
    public void Anybody_can_recompute_a_hash_from_the_line_with_a_text_editor()
    {
        using var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "“nass”"));
        var lines = shop.Store.Entries("TEST-1", 1, 9).Select(e => e.Line()).ToList();
        var cut = lines[1].LastIndexOf(",\"hash\":", StringComparison.Ordinal);
        var told = lines[1][(cut + 9)..^2];
        Assert.Equal(told, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(lines[1][..cut] + "}"))));
        Assert.Contains($"\"previous\":\"{shop.Store.History("TEST-1")[0].Hash}\"", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_form_of_a_line_does_not_change()
    {
        // Regression: a line written once must be read for ever
        var line = JournalLine.Sealed("J-1", 2, new(2026, 3, 14, 9, 30, 0, TimeSpan.FromHours(1)), "AB", "note", EntryKind.Change, null, JournalLine.NoHash,
            [new("note", null, null, System.Text.Json.JsonElement.Parse("\"damp\""))]).Line();
        Assert.Equal("{\"job\":\"J-1\",\"seq\":2,\"at\":\"2026-03-14T08:30:00.000Z\",\"who\":\"AB\",\"what\":\"note\",\"kind\":\"change\",\"previous\":\"" + new string('0', 64)
            + "\",\"edits\":[{\"where\":\"note\",\"after\":\"damp\"}],\"hash\":\"HASH\"}".Replace("HASH", Sum("{\"job\":\"J-1\",\"seq\":2,\"at\":\"2026-03-14T08:30:00.000Z\",\"who\":\"AB\",\"what\":\"note\",\"kind\":\"change\",\"previous\":\"" + new string('0', 64) + "\",\"edits\":[{\"where\":\"note\",\"after\":\"damp\"}]}"), StringComparison.Ordinal), line);
        Assert.Equal(line, JournalLine.Read(line).Line());
    }

    [Theory]
    [InlineData("", "cut off")]
    [InlineData("[]", "cut off")]
    [InlineData("SPACE", "not written as this program writes it")]
    [InlineData("ORDER", "not written as this program writes it")]
    [InlineData("TWICE", "not JSON")]
    [InlineData("EXTRA", "not written as this program writes it")]
    [InlineData("HALF", "half a character")]
    [InlineData("ESCAPE", "not written as this program writes it")]
    [InlineData("TIME", "has no time")]
    [InlineData("KIND", "of a kind")]
    [InlineData("EDIT", "edits that are not written")]
    [InlineData("DEEP", "not JSON")]
    [InlineData("NUMBER", "no whole number")]
    public void A_line_written_otherwise_is_refused(string how, string why)
    {
        var good = JournalLine.Sealed("J-1", 1, DateTimeOffset.UnixEpoch, "AB", "note", EntryKind.Begin, null, JournalLine.NoHash, [new("note", null, null, System.Text.Json.JsonElement.Parse("1"))]).Line();
        var bad = how switch
        {
            "SPACE" => good.Replace(",\"who\"", ", \"who\"", StringComparison.Ordinal),
            "ORDER" => good.Replace("\"seq\":1,\"at\":\"1970-01-01T00:00:00.000Z\"", "\"at\":\"1970-01-01T00:00:00.000Z\",\"seq\":1", StringComparison.Ordinal),
            "TWICE" => good.Replace("\"who\":\"AB\"", "\"who\":\"AB\",\"who\":\"CD\"", StringComparison.Ordinal),
            "EXTRA" => good.Replace("\"who\":\"AB\"", "\"who\":\"AB\",\"why\":\"CD\"", StringComparison.Ordinal),
            "HALF" => good.Replace("\"AB\"", "\"\\ud800\"", StringComparison.Ordinal),
            "ESCAPE" => good.Replace("\"AB\"", "\"\\u0041B\"", StringComparison.Ordinal),
            "TIME" => good.Replace("1970-01-01T00:00:00.000Z", "1970-01-01", StringComparison.Ordinal),
            "KIND" => good.Replace("begin", "gift", StringComparison.Ordinal),
            "EDIT" => good.Replace("{\"where\":\"note\",\"after\":1}", "{\"after\":1,\"where\":\"note\"}", StringComparison.Ordinal),
            "DEEP" => good.Replace("\"after\":1", "\"after\":" + new string('[', 100) + new string(']', 100), StringComparison.Ordinal),
            "NUMBER" => good.Replace("\"seq\":1", "\"seq\":1.5", StringComparison.Ordinal),
            _ => how,
        };
        Assert.Contains(why, Assert.Throws<FormatException>(() => JournalLine.Read(bad)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void History_shows_what_stood_before_and_after_and_can_be_read_in_pieces()
    {
        using var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "one"));
        shop.Done(Samples.Note(shop.Job, "two"));
        var entry = Assert.Single(shop.Store.History("TEST-1", 3, 5));
        Assert.Equal(("note", "one", "two"), (entry.Edits[0].Where, entry.Edits[0].Before!.Value.GetString(), entry.Edits[0].After!.Value.GetString()));
        Assert.Equal([1, 2], shop.Store.History("TEST-1", 1, 2).Select(e => e.Seq));
        var first = shop.Store.History("TEST-1")[0];
        Assert.Equal((JournalLine.NoHash, EntryKind.Begin, "taken in"), (first.Previous, first.Kind, first.What));
        Assert.Contains(first.Edits, e => e is { Where: "parts/P1", Place: 1, Before: null });
    }

    private static string Sum(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
