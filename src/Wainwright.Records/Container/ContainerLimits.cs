using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>What is taken from a container at most.</summary>
public sealed record ContainerLimits
{
    /// <summary>Entries in the zip.</summary>
    public int Entries { get; init; } = 20_000;

    /// <summary>Size of the file itself [bytes].</summary>
    public long FileBytes { get; init; } = 8L << 30;

    /// <summary>Size of the journal, unpacked [bytes]. It is held in memory.</summary>
    public long JournalBytes { get; init; } = 128L << 20;

    /// <summary>Size of one photo [bytes].</summary>
    public long PhotoBytes { get; init; } = Store.LargestPhoto;

    /// <summary>Size of everything, unpacked [bytes].</summary>
    public long TotalBytes { get; init; } = 8L << 30;

    /// <summary>Unpacked size over packed size of one entry. DEFLATE reaches 1032 at most (zlib's technical notes, from memory); a journal about 100.</summary>
    public int Ratio { get; init; } = 500;

    internal PackLimits ForPack() => new(Entries, FileBytes, TotalBytes, Ratio, name => name switch
    {
        Container.JobName => JobFile.LargestBytes,
        Container.JournalName => JournalBytes,
        _ => EntryName.PhotoNamed(name) is null ? null : PhotoBytes,
    });
}
