namespace Wainwright.Cli.Tests;

/// <summary>A folder of a test's own, gone afterwards.</summary>
sealed class TempFolder : IDisposable
{
    readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("wain-test-");

    public string Path => folder.FullName;

    public string At(string name) => System.IO.Path.Combine(Path, name);

    public string Write(string name, string text) => Write(name, System.Text.Encoding.UTF8.GetBytes(text));

    public string Write(string name, byte[] bytes)
    {
        File.WriteAllBytes(At(name), bytes);
        return At(name);
    }

    public void Dispose() => folder.Delete(recursive: true);
}
