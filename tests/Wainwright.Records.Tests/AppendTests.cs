using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

public class AppendTests
{
    static readonly string[] Halves = ["\"a\\ud800\"", "\"\\udc00b\"", "{\"a\\ud800\":1}"];

    public static TheoryData<string> HalfCharacters => [.. Halves];

    [Fact]
    public void A_change_is_stored_with_who_when_and_what_and_survives_a_restart()
    {
        using var shop = new Workshop();
        shop.Clock.Now = new(2026, 3, 15, 10, 0, 0, 123, TimeSpan.FromHours(2));
        var entry = shop.Done(Samples.PutPart(shop.Job, Samples.Part("P9")));
        Assert.Equal((2, "AB", "put P9", EntryKind.Change, shop.Clock.Now), (entry.Seq, entry.Who, entry.What, entry.Kind, entry.At));

        shop.Reopen();
        Assert.Equal(["P1", "P2", "P3", "P9"], shop.Job.Parts.Select(p => p.Id.Text));
        Assert.Equal(entry.Hash, shop.Store.Find("TEST-1")!.Hash);
    }

    [Fact]
    public void A_change_is_made_whole_or_not_at_all()
    {
        using var shop = new Workshop();
        var bad = new Change("two", [Edit.Put(shop.Job, "parts", "P9", Samples.Part("P9")), Edit.Put(shop.Job, "parts", "P8", Samples.Part("P8") with { StandsOn = [new("GONE")] })]);
        var refused = shop.Store.Append("TEST-1", bad, "AB");
        Assert.Null(refused.Entry);
        Assert.Null(refused.Job);
        Assert.Contains(refused.Issues, i => i.Rule.Contains("GONE", StringComparison.Ordinal));
        shop.Reopen();
        Assert.Equal(3, shop.Job.Parts.Count);
        Assert.Single(shop.Store.History("TEST-1"));
    }

    [Fact]
    public void A_change_made_from_an_old_state_is_told_so()
    {
        using var shop = new Workshop();
        var (first, second) = (Samples.Note(shop.Job, "mine"), Samples.Note(shop.Job, "yours"));
        shop.Done(first);
        var refused = shop.Store.Append("TEST-1", second, "CD");
        Assert.Null(refused.Entry);
        Assert.Contains("has changed since it was read", Assert.Single(refused.Issues).Rule, StringComparison.Ordinal);
        Assert.Equal("mine", shop.Job.Note);
    }

    [Fact]
    public void Changes_to_different_places_from_the_same_state_both_stand()
    {
        using var shop = new Workshop();
        var (note, part) = (Samples.Note(shop.Job, "mine"), Samples.PutPart(shop.Job, Samples.Part("P9")));
        shop.Done(note);
        shop.Done(part);
        Assert.Equal(("mine", 4), (shop.Job.Note, shop.Job.Parts.Count));
    }

    [Fact]
    public void What_is_written_is_the_programs_own_form_so_that_undo_fits_later()
    {
        using var shop = new Workshop();
        var loose = JsonElement.Parse("""{ "name": "box", "id": "P9", "known": "seen", "system": "furniture", "note": null, "outside": false, "massKg": 12.50 }""");
        var entry = shop.Done(new("by hand", [new Edit("parts/P9", null, loose)]));
        Assert.Equal(entry.Edits[0].After!.Value.GetRawText(), JsonSerializer.Serialize(shop.Job.Parts[^1], JobFormat.Compact));
        Assert.NotNull(shop.Store.Undo("TEST-1", "AB").Entry);
        Assert.Equal(3, shop.Job.Parts.Count);
    }

    [Fact]
    public void Null_means_nothing_there()
    {
        using var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "x"));
        var entry = shop.Done(new("no note", [Edit.Field<string?>(shop.Job, "note", null)]));
        Assert.Null(entry.Edits[0].After);
        Assert.Null(shop.Job.Note);
        shop.Store.Undo("TEST-1", "AB");
        Assert.Equal("x", shop.Job.Note);
    }

    [Fact]
    public void An_entry_may_not_call_itself_otherwise_than_its_place()
    {
        using var shop = new Workshop();
        var refused = shop.Store.Append("TEST-1", new("rename", [new Edit("parts/P3", Edit.Current(shop.Job, "parts/P3"), JsonSerializer.SerializeToElement(Samples.Part("P7"), JobFormat.Compact))]), "AB");
        Assert.Contains("calls itself “P7”", Assert.Single(refused.Issues).Rule, StringComparison.Ordinal);
        shop.Done(new("rename", [Edit.TakeOut(shop.Job, "parts", "P3"), new Edit("parts/P7", null, JsonSerializer.SerializeToElement(Samples.Part("P7"), JobFormat.Compact))]));
        Assert.Equal(["P1", "P2", "P7"], shop.Job.Parts.Select(p => p.Id.Text));
    }

    [Theory]
    [InlineData("title")]
    [InlineData("vehicle")]
    public void What_must_be_there_is_not_taken_out(string field)
    {
        using var shop = new Workshop();
        var refused = shop.Store.Append("TEST-1", new("out", [new Edit(field, Edit.Current(shop.Job, field), null)]), "AB");
        Assert.Contains("must not be taken out", Assert.Single(refused.Issues).Rule, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(HalfCharacters))]
    public void Half_a_character_is_refused(string json)
    {
        using var shop = new Workshop();
        var refused = shop.Store.Append("TEST-1", new("note", [new Edit("note", null, JsonElement.Parse(json))]), "AB");
        Assert.Contains("half a character", Assert.Single(refused.Issues).Rule, StringComparison.Ordinal);
        Assert.Contains(shop.Store.Append("TEST-1", Samples.Note(shop.Job, "x"), "A\ud800").Issues, i => i.Where == "who");
    }

    [Theory]
    [InlineData("", "x", "who")]
    [InlineData("A\nB", "x", "who")]
    [InlineData("AB", " ", "what")]
    public void Who_and_what_must_be_said(string who, string what, string where)
    {
        using var shop = new Workshop();
        Assert.Equal(where, Assert.Single(shop.Store.Append("TEST-1", Samples.Note(shop.Job, "x") with { What = what }, who).Issues).Where);
    }

    [Fact]
    public void Too_many_words_are_refused()
    {
        using var shop = new Workshop();
        Assert.Equal("who", Assert.Single(shop.Store.Append("TEST-1", Samples.Note(shop.Job, "x"), new string('A', 81)).Issues).Where);
        Assert.Equal("what", Assert.Single(shop.Store.Append("TEST-1", Samples.Note(shop.Job, "x") with { What = new string('A', 501) }, "AB").Issues).Where);
    }

    [Fact]
    public void A_change_of_nothing_and_a_job_that_is_not_there_are_said()
    {
        using var shop = new Workshop();
        Assert.Contains("changes nothing", Assert.Single(shop.Store.Append("TEST-1", new("x", []), "AB").Issues).Rule, StringComparison.Ordinal);
        Assert.Contains("no job", Assert.Single(shop.Store.Append("GONE", Samples.Note(shop.Job, "x"), "AB").Issues).Rule, StringComparison.Ordinal);
        Assert.Contains("no job", Assert.Single(shop.Store.Undo("GONE", "AB").Issues).Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void A_photo_is_named_only_once_its_bytes_are_here_and_as_what_they_are()
    {
        using var shop = new Workshop();
        var bytes = Samples.Jpeg(1);
        var hash = new PhotoHash(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes)));
        Change Named(string type) => new("photo", [Edit.Put(shop.Job, "photos", hash.Text, Samples.Photo(hash, type))]);
        Assert.Contains("not here", Assert.Single(shop.Store.Append("TEST-1", Named("image/jpeg"), "AB").Issues).Rule, StringComparison.Ordinal);
        shop.Store.AddPhoto(new MemoryStream(bytes));
        Assert.Contains("must be image/jpeg", Assert.Single(shop.Store.Append("TEST-1", Named("image/png"), "AB").Issues).Rule, StringComparison.Ordinal);
        shop.Done(Named("image/jpeg"));
        Assert.Equal(hash, Assert.Single(shop.Job.Photos).Hash);
    }
}
