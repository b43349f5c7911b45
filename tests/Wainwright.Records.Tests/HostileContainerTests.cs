using System.IO.Compression;
using System.Text;
using CsCheck;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

/// <summary>A container from outside means harm until shown otherwise: each case is told, and nothing of it is stored.</summary>
public class HostileContainerTests
{
    [Theory]
    [InlineData("../evil.json", "must not climb out")]
    [InlineData("photos/../../evil.json", "must not climb out")]
    [InlineData("photos//x.jpg", "must not climb out")]
    [InlineData("./job.json", "must not climb out")]
    [InlineData("/etc/passwd", "must not be an absolute path")]
    [InlineData("C:/evil.json", "must not be an absolute path")]
    [InlineData("photos\\evil.jpg", "must not hold a backslash")]
    [InlineData("..\\evil.json", "must not hold a backslash")]
    [InlineData("photos/", "must not be a folder")]
    [InlineData("a\u0001b", "must not hold control characters")]
    [InlineData("evil.exe", "does not belong")]
    [InlineData("photos/abc.jpg", "does not belong")]
    [InlineData("photos/0000000000000000000000000000000000000000000000000000000000000000.svg", "does not belong")]
    [InlineData("JOB.JSON", "stands in the file twice")]
    [InlineData("job.json", "stands in the file twice")]
    public void Bad_names_are_refused(string name, string rule) =>
        Refused(zip => zip.Entries.Add((name, "x"u8.ToArray())), rule);

    [Theory]
    [InlineData(unchecked((int)0xA1FF0000), "plain file")] // symbolic link
    [InlineData(0x41ED0000, "plain file")] // folder
    [InlineData(0x10, "plain file")] // folder of MS-DOS
    [InlineData(0x400, "plain file")] // reparse point
    public void Links_and_folders_are_refused(int attributes, string rule) =>
        Refused(zip => zip.Attributes["job.json"] = attributes, rule);

    [Fact]
    public void A_manifest_that_does_not_fit_is_refused()
    {
        RefusedAsIs(zip => zip.Set("job.json", zip.Text("job.json") + " "), "is not what the manifest says");
        RefusedAsIs(zip => zip.Entries.RemoveAll(e => e.Name == "journal.jsonl"), "is listed but missing");
        RefusedAsIs(zip => zip.Entries.RemoveAll(e => e.Name == "manifest.json"), "is missing");
        RefusedAsIs(zip => zip.Entries.Add(($"photos/{new string('0', 64)}.jpg", Samples.Jpeg(9))), "is not listed");
        RefusedAsIs(zip => zip.Set("manifest.json", "{"), "cannot be read");
        RefusedAsIs(zip => zip.Set("manifest.json", "null"), "is not a manifest");
        RefusedAsIs(zip => zip.Set("manifest.json", zip.Text("manifest.json").Replace("\"format\": 1", "\"format\": 2", StringComparison.Ordinal)), "is of format 2");
        RefusedAsIs(zip => zip.Set("manifest.json", zip.Text("manifest.json").Replace("\"holds\": \"job\"", "\"holds\": \"store\"", StringComparison.Ordinal)), "a job is wanted");
        RefusedAsIs(zip => zip.Set("manifest.json", zip.Text("manifest.json").Replace("\"bytes\": ", "\"bytes\": 1", StringComparison.Ordinal)), "is not what the manifest says");
        RefusedAsIs(zip => zip.Set("manifest.json", zip.Text("manifest.json").Replace("TEST-1", "TEST-2", StringComparison.Ordinal)), "names another job");
        RefusedAsIs(zip => zip.Set("manifest.json", zip.Text("manifest.json").Replace("\"files\": [", "\"files\": [null,", StringComparison.Ordinal)), "is not a manifest");
    }

    [Fact]
    public void A_job_that_is_not_what_its_journal_says_is_refused()
    {
        Refused(zip => zip.Set("job.json", zip.Text("job.json").Replace("small van", "grand van", StringComparison.Ordinal)), "is not what the journal says");
        Refused(zip => zip.Set("job.json", zip.Text("job.json").Replace("TEST-1", "TEST-2", StringComparison.Ordinal)), "the journal is that of");
        Refused(zip => zip.Set("job.json", zip.Text("job.json").Replace("\"massKg\": 12", "\"massKg\": -12", StringComparison.Ordinal)), "must be 0");
        Refused(zip => zip.Set("job.json", zip.Text("job.json").Replace("small van", "small \\ud800", StringComparison.Ordinal)), "half a character");
        Refused(zip => zip.Set("job.json", "not json"), "whole JSON document");
    }

    [Fact]
    public void A_journal_that_was_changed_is_refused()
    {
        string Journal(Zip zip) => zip.Text("journal.jsonl");
        Refused(zip => zip.Set("journal.jsonl", Journal(zip).Replace("\"who\":\"AB\"", "\"who\":\"CD\"", StringComparison.Ordinal)), "its hash does not fit");
        Refused(zip => zip.Set("journal.jsonl", string.Join('\n', Journal(zip).Split('\n').Where((_, i) => i != 1))), "should follow");
        Refused(zip => zip.Set("journal.jsonl", string.Join('\n', Journal(zip).Split('\n').Where((_, i) => i != 0))), "should follow");
        Refused(zip => zip.Set("journal.jsonl", ""), "is empty");
        Refused(zip => zip.Set("journal.jsonl", Journal(zip)[..^20]), "is not JSON");
        Refused(zip => zip.Set("journal.jsonl", [.. Encoding.UTF8.GetBytes(Journal(zip)), 0xFF, 0xFE]), "not UTF-8");
        Refused(zip => zip.Set("journal.jsonl", Journal(zip) + "\n\n"), "is cut off");
        Refused(zip => zip.Set("journal.jsonl", string.Join('\n', Journal(zip).Split('\n')[..1]) + "\n"), "names another job or another last entry");
    }

    [Theory]
    [InlineData("photos/evil", "is not a place")]
    [InlineData("gift", "is not a place")]
    public void A_journal_with_a_right_chain_and_wrong_edits_is_refused(string where, string rule)
    {
        if (where == "photos/evil") where = "parcels/evil";
        Refused(zip => Resealed(zip, (seq, edits) => seq == 2 ? [.. edits, new(where, where.Contains('/', StringComparison.Ordinal) ? 1 : null, null, System.Text.Json.JsonElement.Parse("1"))] : edits), rule);
    }

    [Fact]
    public void A_journal_that_lies_about_what_stood_there_is_refused()
    {
        Refused(zip => Resealed(zip, (seq, edits) => seq == 2 ? [edits[0] with { Before = System.Text.Json.JsonElement.Parse("\"other\"") }] : edits), "was not as the entry says");
        Refused(zip => Resealed(zip, (seq, edits) => seq == 1 ? [.. edits.Select(e => e.Where == "parts/P2" ? e with { Place = 1 } : e)] : edits), "rank");
        Refused(zip => Resealed(zip, (seq, edits) => seq == 1 ? [.. edits.Select(e => e.Where == "parts/P2" ? e with { Place = -1 } : e)] : edits), "rank");
        Refused(zip => Resealed(zip, (seq, edits) => edits, seq => seq == 2 ? EntryKind.Undo : null), "cannot come here");
    }

    [Fact]
    public void Photos_that_are_not_what_they_say_are_refused()
    {
        string Photo(Zip zip) => zip.Entries.First(e => e.Name.StartsWith("photos/", StringComparison.Ordinal)).Name;
        Refused(zip => zip.Set(Photo(zip), Samples.Jpeg(99)), "is not the photo its name says");
        Refused(zip => zip.Set(Photo(zip), "<svg/>"u8.ToArray()), "is no image/jpeg");
        Refused(zip => zip.Entries.Add((Path.ChangeExtension(Photo(zip), ".png"), Samples.Jpeg(1))), "is no image/png");
        var stray = Samples.Jpeg(7);
        Refused(zip => zip.Set($"photos/{Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(stray))}.jpg", stray), "is named by no entry");
    }

    [Fact]
    public void Every_fault_is_told_at_once() =>
        Refused(zip =>
        {
            zip.Entries.Add(("../evil", "x"u8.ToArray()));
            zip.Set("job.json", zip.Text("job.json").Replace("\"massKg\": 12", "\"massKg\": -12", StringComparison.Ordinal));
            zip.Set("journal.jsonl", "x");
        }, "must not climb out", "must be 0", "is cut off");

    [Fact]
    public void A_bomb_is_stopped_while_it_goes_off()
    {
        var zeros = new byte[64 << 20];
        Refused(zip => zip.Set("job.json", zeros), "more than 500 times its size");
        Refused(zip => zip.Set("journal.jsonl", zeros), "more than 500 times its size");
        var limits = new ContainerLimits { Ratio = 2000 };
        Refused(zip => zip.Set("journal.jsonl", zeros), limits with { JournalBytes = 1 << 20 }, "more than 1048576 bytes");
        Refused(zip => zip.Set("journal.jsonl", zeros), limits with { TotalBytes = 2 << 20 }, "more than is taken in all");
        Refused(zip => { }, new ContainerLimits { PhotoBytes = 2999 }, "more than 2999 bytes");
        Refused(zip => { }, new ContainerLimits { FileBytes = 1000 }, "is larger than");
    }

    [Fact]
    public void A_size_that_the_zip_lies_about_does_not_matter()
    {
        // uncompressed size in the central directory set to 1: what really comes out counts (APPNOTE.TXT 4.3.12)
        var packed = Bent(zip => zip.Set("job.json", new byte[64 << 20]));
        var at = packed.AsSpan().LastIndexOf("PK\x01\x02"u8);
        for (; at >= 0; at = packed.AsSpan(0, at).LastIndexOf("PK\x01\x02"u8)) packed[at + 24] = 1;
        using var read = Container.Read(new MemoryStream(packed));
        Assert.Null(read.Job);
        Assert.NotEmpty(read.Issues);
    }

    [Fact]
    public void Too_many_entries_are_counted_before_they_are_listed()
    {
        var many = Bent(zip =>
        {
            for (var i = 0; i < 200; i++) zip.Entries.Add(($"x{i}", []));
        });
        RefusedBytes(many, new ContainerLimits { Entries = 100 }, "has more than 100 entries");
        // the end record says there is one entry (APPNOTE.TXT 4.3.16); they are counted all the same
        var end = many.AsSpan().LastIndexOf("PK\x05\x06"u8);
        many[end + 10] = many[end + 8] = 1;
        many[end + 11] = many[end + 9] = 0;
        RefusedBytes(many, new ContainerLimits { Entries = 100 }, "has more than 100 entries");
        RefusedBytes(Bent(zip => zip.Entries.Add((new string('x', 60_000), []))), new ContainerLimits { Entries = 100 }, "larger than its entries explain");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(21)]
    [InlineData(22)]
    [InlineData(4000)]
    public void What_is_no_zip_is_refused(int length)
    {
        var junk = new byte[length];
        new Random(length).NextBytes(junk);
        RefusedBytes(junk, new(), "is no zip file");
    }

    [Fact]
    public void Any_cut_and_any_flipped_bits_are_refused_or_change_nothing()
    {
        using var shop = Worked();
        var (packed, whole) = (shop.Packed(), Samples.Text(shop.Job));
        Gen.Select(Gen.Int[0, packed.Length - 1], Gen.Int[1, 255], Gen.Bool).Sample((at, bits, cut) =>
        {
            var bent = cut ? packed[..at] : [.. packed];
            if (!cut) bent[at] ^= (byte)bits;
            using var read = Container.Read(new MemoryStream(bent));
            if (read.Job is null) Assert.NotEmpty(read.Issues);
            else Assert.Equal((whole, 3), (Samples.Text(read.Job), read.Journal.Count));
        }, seed: "0000KOIKMm12", iter: 1500, threads: 1);
    }

    [Fact]
    public void A_container_that_changes_between_checking_and_storing_is_refused_whole()
    {
        using var shop = Worked();
        using var other = new Workshop(withJob: false);
        var packed = shop.Packed();
        using var read = Container.Read(new MemoryStream(packed));
        var photo = packed.AsSpan().IndexOf(Samples.Jpeg(1).AsSpan(0, 50));
        packed[photo + 10] ^= 1;
        var refused = other.Store.Import(read, "CD");
        Assert.Null(refused.Job);
        Assert.Contains(refused.Issues, i => i.Rule.Contains("has changed since it was checked", StringComparison.Ordinal) || i.Rule.Contains("cannot be unpacked", StringComparison.Ordinal));
        Assert.Empty(other.Store.Jobs());
        Assert.Empty(other.FilesIn("photos"));
    }

    [Fact]
    public void An_encrypted_entry_is_refused()
    {
        var packed = Bent(_ => { });
        for (var at = packed.AsSpan().LastIndexOf("PK\x01\x02"u8); at >= 0; at = packed.AsSpan(0, at).LastIndexOf("PK\x01\x02"u8)) packed[at + 8] |= 1; // bit 0 of the flags (APPNOTE.TXT 4.4.4)
        RefusedBytes(packed, new(), "is encrypted");
    }

    /// <summary>A job with a note and a photo.</summary>
    private static Workshop Worked()
    {
        var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "one"));
        shop.Photographed(1);
        return shop;
    }

    private static byte[] Bent(Action<Zip> bend, bool manifestFits = true)
    {
        using var shop = Worked();
        var zip = Zip.Of(shop.Packed());
        bend(zip);
        return zip.Packed(manifestFits);
    }

    private static void Refused(Action<Zip> bend, params string[] rules) => RefusedBytes(Bent(bend), new(), rules);

    private static void Refused(Action<Zip> bend, ContainerLimits limits, params string[] rules) => RefusedBytes(Bent(bend), limits, rules);

    private static void RefusedAsIs(Action<Zip> bend, string rule) => RefusedBytes(Bent(bend, manifestFits: false), new(), rule);

    private static void RefusedBytes(byte[] packed, ContainerLimits limits, params string[] rules)
    {
        using var shop = new Workshop(withJob: false);
        using var read = Container.Read(new MemoryStream(packed), limits);
        Assert.Null(read.Job);
        foreach (var rule in rules) Assert.True(read.Issues.Any(i => i.Rule.Contains(rule, StringComparison.Ordinal)), $"no “{rule}” in: {string.Join("; ", read.Issues)}");
        Assert.All(read.Issues, i => Assert.False(string.IsNullOrEmpty(i.Mend)));
        var refused = shop.Store.Import(read, "CD");
        Assert.Null(refused.Job);
        Assert.Equal(read.Issues, refused.Issues);
        Assert.Empty(shop.Store.Jobs());
        Assert.Empty(shop.FilesIn("photos"));
    }

    /// <summary>Changes edits or kinds and computes the whole chain anew, as somebody who knows the form would.</summary>
    private static void Resealed(Zip zip, Func<int, IReadOnlyList<JournalEdit>, IReadOnlyList<JournalEdit>> edits, Func<int, EntryKind?>? kind = null)
    {
        var previous = JournalLine.NoHash;
        var text = new StringBuilder();
        foreach (var entry in zip.Text("journal.jsonl").Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JournalLine.Read(l).Understood()))
        {
            var to = kind?.Invoke(entry.Seq);
            var bent = JournalLine.Sealed(entry.Job, entry.Seq, entry.At, entry.Who, entry.What, to ?? entry.Kind, to is null ? entry.Of : 1, previous, edits(entry.Seq, entry.Edits));
            previous = bent.Hash;
            text.Append(bent.Line()).Append('\n');
        }
        zip.Set("journal.jsonl", text.ToString());
    }
}
