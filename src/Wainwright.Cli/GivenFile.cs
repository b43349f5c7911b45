using Wainwright.Fitout;

namespace Wainwright.Cli;

/// <summary>A file named on the command line. It is read, never changed.</summary>
internal static class GivenFile
{
    /// <summary>The first bytes of a container (ZIP local file header).</summary>
    private static readonly byte[] ContainerStart = [(byte)'P', (byte)'K', 3, 4];

    /// <summary>Whether the file begins as a container does; the name's ending decides nothing.</summary>
    public static bool IsContainer(string path)
    {
        using var file = Open(path);
        var start = new byte[ContainerStart.Length];
        return file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false) == start.Length && start.SequenceEqual(ContainerStart);
    }

    /// <summary>Reads a job file; more than the largest allowed is never taken into memory.</summary>
    public static JobReading ReadJob(string path)
    {
        using var file = Open(path);
        var bytes = new MemoryStream();
        var block = new byte[1 << 16];
        while (bytes.Length <= JobFile.LargestBytes && file.Read(block) is > 0 and var got) bytes.Write(block, 0, got);
        return JobFile.Read(bytes.GetBuffer().AsMemory(0, (int)bytes.Length));
    }

    /// <summary>Opens a file to read it.</summary>
    /// <exception cref="BadInputException">It is not there or may not be read.</exception>
    public static FileStream Open(string path)
    {
        if (Directory.Exists(path)) throw new BadInputException($"{path} is a folder; name a job file");
        if (!File.Exists(path)) throw new BadInputException($"there is no file {path}");
        try
        {
            return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"{path} cannot be read: {error.Message}");
        }
    }
}
