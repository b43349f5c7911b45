using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>A photo on its way in; from a container it is known beforehand what it must be.</summary>
internal sealed record OfferedPhoto(string Name, Func<Stream> Open, PhotoHash? MustBe = null);

/// <summary>
/// Photos that come with a job: staged first, given their names only when everything else holds, taken away again when the job is not
/// stored after all. Disposed of, it leaves nothing of what was only staged.
/// </summary>
internal sealed class Delivery(PhotoFolder photos) : IDisposable
{
    private readonly List<StagedPhoto> staged = [];
    private readonly List<StagedPhoto> settled = [];

    /// <summary>Stages every photo that the job names.</summary>
    /// <param name="offered">The photos.</param>
    /// <param name="named">Photos the job names, with their media type where it says one.</param>
    /// <param name="largest">Largest size taken [bytes].</param>
    /// <param name="issues">Gets what is wrong with them.</param>
    public bool Stage(IEnumerable<OfferedPhoto> offered, IReadOnlyDictionary<PhotoHash, string?> named, long largest, List<Issue> issues)
    {
        foreach (var offer in offered)
        {
            if (Staged(offer, largest, issues) is not { } photo) continue;
            staged.Add(photo);
            if (offer.MustBe is { } hash && hash != photo.Hash) issues.Add(new(offer.Name, "has changed since it was checked", "read the container again"));
            else if (!named.TryGetValue(photo.Hash, out var told)) Drop(photo, offer.Name, issues);
            else if (told is not null && told != photo.Kind.MediaType) issues.Add(new(offer.Name, $"is {photo.Kind.MediaType}, the job says {told}", "mend mediaType in the job"));
        }
        return issues.All(i => i.Weight != Weight.Error);
    }

    /// <summary>Gives the staged photos their names.</summary>
    public void Settle()
    {
        foreach (var photo in staged)
            if (photos.Settle(photo)) settled.Add(photo);
    }

    /// <summary>Takes away what <see cref="Settle"/> brought.</summary>
    public void Withdraw() => settled.ForEach(photos.Withdraw);

    public void Dispose() => staged.ForEach(p => File.Delete(p.File));

    private StagedPhoto? Staged(OfferedPhoto offer, long largest, List<Issue> issues)
    {
        try
        {
            using var bytes = offer.Open();
            return photos.Stage(bytes, largest, offer.Name, out _, issues);
        }
        catch (InvalidDataException error)
        {
            issues.Add(new(offer.Name, $"cannot be unpacked ({error.Message})", "take another copy of the container"));
            return null;
        }
    }

    private void Drop(StagedPhoto photo, string name, List<Issue> issues)
    {
        issues.Add(new(name, "is not a photo of this job; it is left out", "name it in the job if it belongs to it", Weight.Doubt));
        staged.Remove(photo);
        File.Delete(photo.File);
    }
}
