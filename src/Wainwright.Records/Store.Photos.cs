using Wainwright.Fitout;

namespace Wainwright.Records;

public sealed partial class Store
{
    /// <summary>
    /// Takes a photo in. Its kind is told from its bytes: JPEG, PNG, WebP or HEIC, nothing else. A photo that is there already is stored once.
    /// </summary>
    /// <param name="bytes">The photo, read to its end or until it is refused; never held in memory as a whole.</param>
    /// <param name="largest">Largest size taken [bytes].</param>
    public PhotoTaken AddPhoto(Stream bytes, long largest = LargestPhoto)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        return Remedy.Of(TakingPhoto, () =>
        {
            var issues = new List<Issue>();
            var staged = Photos.Stage(bytes, largest, "photo", out var read, issues);
            return Settled(staged, read, issues);
        });
    }

    /// <summary>The same for a source that can only be waited for, as one that comes over a network.</summary>
    /// <param name="bytes">The photo.</param>
    /// <param name="largest">Largest size taken [bytes].</param>
    /// <param name="stop">Stops it; nothing is then left behind.</param>
    public async Task<PhotoTaken> AddPhotoAsync(Stream bytes, long largest = LargestPhoto, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var issues = new List<Issue>();
        try
        {
            var (staged, read) = await Photos.Stage(bytes, largest, "photo", issues, stop).ConfigureAwait(false);
            return Remedy.Of(TakingPhoto, () => Settled(staged, read, issues));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw Remedy.For(TakingPhoto, error);
        }
    }

    /// <summary>The bytes of a photo; <see langword="null"/> when it is not here. The caller closes the stream.</summary>
    /// <param name="hash">Its name.</param>
    public Stream? OpenPhoto(PhotoHash hash) => Remedy.Of($"opening photo {hash}", () => Photos.Open(hash));

    /// <summary>Media type of a stored photo, <c>image/jpeg</c>; <see langword="null"/> when it is not here.</summary>
    /// <param name="hash">Its name.</param>
    public string? MediaTypeOf(PhotoHash hash) => Remedy.Of($"opening photo {hash}", () => Photos.KindOf(hash)?.MediaType);

    private const string TakingPhoto = "taking a photo in";

    private PhotoTaken Settled(StagedPhoto? staged, long read, List<Issue> issues)
    {
        if (staged is null) return new(null, null, read, issues);
        lock (gate)
        {
            // the writer's lock keeps an import that fails elsewhere from taking this photo away with its own
            using var transaction = database.Write();
            Photos.Settle(staged);
        }
        return new(staged.Hash, staged.Kind.MediaType, staged.Bytes, issues);
    }
}
