using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Web;

/// <summary>Gives an empty store something to look at.</summary>
internal static class FirstJobs
{
    private const string Who = "demonstration";

    public static void Into(Store store, IEnumerable<string> files, ILogger log)
    {
        if (store.Jobs().Count > 0) return;
        foreach (var file in files)
        {
            if (!File.Exists(file)) throw new Protect.SettingException($"“{file}” is not there; name a job file or a container, or leave Wain:Demo out");
            var issues = file.EndsWith(Container.Extension, StringComparison.OrdinalIgnoreCase) ? FromContainer(store, file) : FromFile(store, file);
            foreach (var issue in issues.Where(i => i.Weight == Weight.Error))
#pragma warning disable CA1848, CA1873 // said once at start
                log.LogError("{File} was not taken in: {Issue}", file, issue);
#pragma warning restore CA1848, CA1873
        }
    }

    private static IReadOnlyList<Issue> FromContainer(Store store, string file)
    {
        using var stream = File.OpenRead(file);
        using var reading = Container.Read(stream);
        return reading.Job is null ? reading.Issues : store.Import(reading, Who).Issues;
    }

    /// <summary>Photos of a bare job file are looked for in the folder <c>photos</c> beside it.</summary>
    private static IReadOnlyList<Issue> FromFile(Store store, string file)
    {
        var reading = JobFile.Read(File.ReadAllBytes(file));
        if (reading.Job is null) return reading.Issues;
        var folder = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(file))!, "photos");
        var photos = Directory.Exists(folder)
            ? Directory.GetFiles(folder).Where(f => Path.GetExtension(f) is ".png" or ".jpg" or ".jpeg" or ".webp").Select(f => new PhotoSource(Path.GetFileName(f), () => File.OpenRead(f)))
            : [];
        return store.Import(reading.Job, Who, photos: photos).Issues;
    }
}
