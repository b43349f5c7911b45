using System.Globalization;
using System.Security.Cryptography;

namespace Wainwright.Records;

/// <summary>How much of a pack may still be unpacked. Mutable: every entry draws on it.</summary>
internal sealed class Budget(long bytes)
{
    public void Draw(int spent)
    {
        if ((bytes -= spent) < 0) throw new PackRefusedException("unpacks to more than is taken in all", "this may be an attack; do not open it");
    }
}

/// <summary>
/// Reads one entry, counting what really comes out: what a zip says of its own sizes is never trusted. Throws <see cref="PackRefusedException"/>
/// at the first byte too many.
/// </summary>
internal sealed class GuardedReading(Stream from, long packedBytes, long mostBytes, int mostRatio, Budget budget) : Stream
{
    // a few zeros pack very well indeed; below this nothing can hurt
    private const long RatioMatters = 1 << 20;

    private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    public long Bytes { get; private set; }

    /// <summary>SHA-256 of what was read.</summary>
    public string Hash() => Convert.ToHexStringLower(hash.GetCurrentHash());

    public override int Read(Span<byte> buffer)
    {
        var got = from.Read(buffer);
        Bytes += got;
        if (Bytes > mostBytes) throw new PackRefusedException(string.Create(CultureInfo.InvariantCulture, $"unpacks to more than {mostBytes} bytes"), "leave it out, or make it smaller");
        if (Bytes > RatioMatters && Bytes / mostRatio > packedBytes) throw new PackRefusedException($"unpacks to more than {mostRatio} times its size", "this may be an attack; do not open it");
        budget.Draw(got);
        hash.AppendData(buffer[..got]);
        return got;
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => Bytes; set => throw new NotSupportedException(); }

    public override void Flush()
    {
        // nothing is written
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            from.Dispose();
            hash.Dispose();
        }
        base.Dispose(disposing);
    }
}
