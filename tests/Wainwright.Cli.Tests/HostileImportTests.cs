using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace Wainwright.Cli.Tests;

/// <summary>What must never get in: each is refused with exit 2, and the store's folder is byte for byte what it was.</summary>
public sealed class HostileImportTests : IDisposable
{
    static readonly string Sound = new('0', 64);

    readonly TempFolder folder = new();

    public HostileImportTests()
    {
        Ran.Wain("import", folder.Write("first.json", SmallVan.Text()), "--store", Store);
        Ran.Wain("export", "J-1", "--store", Store, "--out", folder.At("sound.zip"));
    }

    string Store => folder.At("store");

    public void Dispose() => folder.Dispose();

    Ran RefusedWhole(params string[] import)
    {
        var before = Contents();
        var ran = Ran.Wain([.. import, "--store", Store]);
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.NotEmpty(ran.Error);
        Assert.Equal(before, Contents());
        Assert.Equal(Exit.Done, Ran.Wain("verify", "J-1", "--store", Store).Exit);
        return ran;
    }

    /// <summary>Every file of the store with the hash of its bytes.</summary>
    List<string> Contents() => [.. Directory.EnumerateFiles(Store, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        .Select(f => $"{Path.GetRelativePath(Store, f)} {Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(f)))}")];

    string Zip(string name, params (string Name, byte[] Bytes)[] entries)
    {
        using (var zip = ZipFile.Open(folder.At(name), ZipArchiveMode.Create))
            foreach (var entry in entries)
            {
                using var to = zip.CreateEntry(entry.Name, CompressionLevel.SmallestSize).Open();
                to.Write(entry.Bytes);
            }
        return folder.At(name);
    }

    /// <summary>A sound container with more entries added.</summary>
    string SoundAnd(string name, params (string Name, byte[] Bytes)[] more)
    {
        File.Copy(folder.At("sound.zip"), folder.At(name));
        using (var zip = ZipFile.Open(folder.At(name), ZipArchiveMode.Update))
            foreach (var entry in more)
            {
                using var to = zip.CreateEntry(entry.Name).Open();
                to.Write(entry.Bytes);
            }
        return folder.At(name);
    }

    [Theory]
    [InlineData("{ \"format\": 1, \"id\": ")]
    [InlineData("")]
    [InlineData("PK")]
    [InlineData("not json at all")]
    public void A_file_that_is_no_job(string text) => RefusedWhole("import", folder.Write("bad.json", text));

    [Fact]
    public void A_job_with_one_wrong_number_among_many_right_ones() =>
        Assert.Contains("massKg", RefusedWhole("import", folder.Write("bad.json", SmallVan.Text(parts: $"{SmallVan.Pump}, {SmallVan.Crate("C1").Replace("4", "-4", StringComparison.Ordinal)}").Replace("J-1", "J-2", StringComparison.Ordinal))).Error, StringComparison.Ordinal);

    [Theory, InlineData("../evil.json"), InlineData("photos/../../evil"), InlineData("/etc/evil"), InlineData("..\\evil"), InlineData("C:\\evil")]
    public void A_container_with_a_name_that_leads_out_of_it(string name)
    {
        RefusedWhole("import", SoundAnd("out.zip", (name, [1, 2, 3])), "--as", "J-2");
        Assert.Empty(Directory.GetFiles(folder.Path, "evil*", SearchOption.AllDirectories));
    }

    [Fact]
    public void A_container_that_unpacks_to_a_thousand_times_its_size() =>
        RefusedWhole("import", Zip("bomb.zip", ("job.json", new byte[100 << 20])));

    [Fact]
    public void A_container_cut_off_in_the_middle()
    {
        var bytes = File.ReadAllBytes(folder.At("sound.zip"));
        RefusedWhole("import", folder.Write("half.zip", bytes[..(bytes.Length / 2)]), "--as", "J-2");
    }

    [Fact]
    public void A_container_with_one_changed_letter_in_its_job()
    {
        using (var zip = ZipFile.Open(folder.At("sound.zip"), ZipArchiveMode.Update))
        {
            string job;
            using (var from = new StreamReader(zip.GetEntry("job.json")!.Open())) job = from.ReadToEnd();
            zip.GetEntry("job.json")!.Delete();
            using var to = zip.CreateEntry("job.json").Open();
            to.Write(Encoding.UTF8.GetBytes(job.Replace("small van", "smell van", StringComparison.Ordinal)));
        }
        RefusedWhole("import", folder.At("sound.zip"), "--as", "J-2");
    }

    [Fact]
    public void A_container_without_a_job() => RefusedWhole("import", Zip("empty.zip", ("readme.txt", "nothing"u8.ToArray())));

    [Fact]
    public void A_photo_of_two_gigabytes()
    {
        var job = SmallVan.Text(more: $$""" "photos": [{ "hash": "{{Sound}}", "shows": "a leak", "mediaType": "image/jpeg", "takenAt": "2026-03-02T09:00:00+01:00" }],""").Replace("J-1", "J-2", StringComparison.Ordinal);
        Directory.CreateDirectory(folder.At("huge"));
        using (var file = File.Create(folder.At("huge/leak.jpg"))) file.SetLength(2L << 30);
        Assert.Contains("at most 50 MiB, this has 2048 MiB", RefusedWhole("import", folder.Write("photo.json", job), "--photos", folder.At("huge")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_photo_that_is_no_photo_though_it_has_the_right_hash()
    {
        var script = "#!/bin/sh\nexit 0\n"u8.ToArray();
        Directory.CreateDirectory(folder.At("pictures"));
        File.WriteAllBytes(folder.At("pictures/leak.jpg"), script);
        var job = SmallVan.Text(more: $$""" "photos": [{ "hash": "{{Convert.ToHexStringLower(SHA256.HashData(script))}}", "shows": "a leak", "mediaType": "image/jpeg", "takenAt": "2026-03-02T09:00:00+01:00" }],""").Replace("J-1", "J-2", StringComparison.Ordinal);
        RefusedWhole("import", folder.Write("photo.json", job), "--photos", folder.At("pictures"));
    }
}
