using System.Globalization;
using System.Security.Cryptography;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Cli;

/// <summary>Photos lying beside a job file. The job names them by their hash, so their file names decide nothing.</summary>
internal static class PhotoFolder
{
    /// <summary>The folder looked in when nobody names one.</summary>
    public const string Usual = "photos";

    private static readonly string[] Endings = [".jpg", ".jpeg", ".png", ".webp", ".heic"];

    /// <summary>The files whose photos the job names, by hash.</summary>
    /// <param name="named">The folder the person named; <see langword="null"/> for the usual one beside the file.</param>
    /// <param name="jobFile">The job file.</param>
    /// <param name="job">The job.</param>
    /// <exception cref="BadInputException">The named folder is not there, or a photo is larger than any taken.</exception>
    public static IReadOnlyDictionary<PhotoHash, string> Of(string? named, string jobFile, Job job)
    {
        var folder = named ?? Path.Combine(Path.GetDirectoryName(Path.GetFullPath(jobFile))!, Usual);
        if (!Directory.Exists(folder)) return named is null ? new Dictionary<PhotoHash, string>() : throw new BadInputException($"there is no folder {named}");
        var files = Directory.GetFiles(folder).Where(f => Endings.Contains(Path.GetExtension(f).ToLowerInvariant())).Order(StringComparer.Ordinal).ToList();
        var tooLarge = files.Where(f => new FileInfo(f).Length > Store.LargestPhoto).ToList();
        if (tooLarge.Count > 0)
            throw new BadInputException($"{folder}: not every photo can be taken", [.. tooLarge.Select(f => new Issue(Path.GetFileName(f),
                string.Create(CultureInfo.InvariantCulture, $"a photo has at most {Store.LargestPhoto >> 20} MiB, this has {new FileInfo(f).Length >> 20} MiB"), "save it smaller, or move it out of the folder"))]);

        var wanted = job.Photos.Select(p => p.Hash).ToHashSet();
        var found = new Dictionary<PhotoHash, string>();
        foreach (var file in files)
        {
            using var bytes = File.OpenRead(file);
            if (new PhotoHash(Convert.ToHexStringLower(SHA256.HashData(bytes))) is var hash && wanted.Contains(hash)) found[hash] = file;
        }
        return found;
    }
}
