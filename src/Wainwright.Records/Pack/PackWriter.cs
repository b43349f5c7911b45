using System.IO.Compression;
using System.Security.Cryptography;

namespace Wainwright.Records;

/// <summary>Writes a zip file by file and its manifest last. The same content gives the same bytes.</summary>
internal sealed class PackWriter : IDisposable
{
    private const int PlainFile = 0b1000_000_110_100_100 << 16; // S_IFREG, rw-r--r-- (stat(2)), where zip keeps the mode

    private readonly ZipArchive zip;
    private readonly DateTimeOffset at;
    private readonly List<PackedFile> files = [];

    public PackWriter(Stream to, DateTimeOffset at)
    {
        zip = new(to, ZipArchiveMode.Create, leaveOpen: true);
        // the years a zip can say (APPNOTE.TXT 4.4.6)
        this.at = at.Year is >= 1980 and <= 2107 ? at : new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
    }

    /// <summary>Bytes written so far, unpacked.</summary>
    public long Bytes => files.Sum(f => f.Bytes);

    public int Files => files.Count;

    /// <param name="name">Name in the zip.</param>
    /// <param name="pack">Whether to pack it; a photo is packed already.</param>
    /// <param name="write">Writes its bytes.</param>
    public void Add(string name, bool pack, Action<Stream> write)
    {
        var entry = zip.CreateEntry(name, pack ? CompressionLevel.Optimal : CompressionLevel.NoCompression);
        (entry.LastWriteTime, entry.ExternalAttributes) = (at, PlainFile);
        using var packed = entry.Open();
        using var counted = new HashedWriting(packed);
        write(counted);
        files.Add(new(name, counted.Bytes, counted.Hash()));
    }

    public void Finish(string holds, string? job, string? last)
    {
        var manifest = new PackManifest(holds, PackManifest.CurrentFormat, [.. files], job, last);
        Add(PackManifest.Name, pack: true, to => to.Write(manifest.Write()));
    }

    public void Dispose() => zip.Dispose();

    private sealed class HashedWriting(Stream to) : Stream
    {
        private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

        public long Bytes { get; private set; }

        public string Hash() => Convert.ToHexStringLower(hash.GetCurrentHash());

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            to.Write(buffer);
            hash.AppendData(buffer);
            Bytes += buffer.Length;
        }

        public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

        public override void Flush() => to.Flush();

        public override bool CanRead => false;

        public override bool CanSeek => false;

        public override bool CanWrite => true;

        public override long Length => Bytes;

        public override long Position { get => Bytes; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        protected override void Dispose(bool disposing)
        {
            if (disposing) hash.Dispose();
            base.Dispose(disposing);
        }
    }
}
