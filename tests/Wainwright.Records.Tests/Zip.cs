using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace Wainwright.Records.Tests;

/// <summary>Takes a pack apart and puts it together again otherwise, as somebody who means harm would.</summary>
internal sealed class Zip
{
    public List<(string Name, byte[] Bytes)> Entries { get; } = [];

    /// <summary>Attributes of entries that are to have some.</summary>
    public Dictionary<string, int> Attributes { get; } = [];

    public static Zip Of(byte[] packed)
    {
        using var zip = new ZipArchive(new MemoryStream(packed));
        var taken = new Zip();
        foreach (var entry in zip.Entries)
        {
            using var bytes = new MemoryStream();
            using (var from = entry.Open()) from.CopyTo(bytes);
            taken.Entries.Add((entry.FullName, bytes.ToArray()));
        }
        return taken;
    }

    public string Text(string name) => Encoding.UTF8.GetString(Entries.First(e => e.Name == name).Bytes);

    public void Set(string name, string text) => Set(name, Encoding.UTF8.GetBytes(text));

    public void Set(string name, byte[] bytes)
    {
        Entries.RemoveAll(e => e.Name == name);
        Entries.Add((name, bytes));
    }

    /// <summary>Packs it; the manifest is made to fit unless it is to stay as it is.</summary>
    public byte[] Packed(bool manifestFits = true)
    {
        if (manifestFits) FitManifest();
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
            foreach (var (name, content) in Entries)
            {
                var entry = zip.CreateEntry(name);
                if (Attributes.TryGetValue(name, out var attributes)) entry.ExternalAttributes = attributes;
                using var to = entry.Open();
                to.Write(content);
            }
        return bytes.ToArray();
    }

    private void FitManifest()
    {
        var manifest = System.Text.Json.Nodes.JsonNode.Parse(Text("manifest.json"))!;
        manifest["files"] = new System.Text.Json.Nodes.JsonArray([.. Entries.Where(e => e.Name != "manifest.json").Select(e => new System.Text.Json.Nodes.JsonObject
        {
            ["name"] = e.Name, ["bytes"] = e.Bytes.Length, ["sha256"] = Convert.ToHexStringLower(SHA256.HashData(e.Bytes)),
        })]);
        Set("manifest.json", manifest.ToJsonString());
    }
}
