using System.Security.Cryptography;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>Why the bytes of a photo were not taken to their end.</summary>
internal enum PhotoFault
{
    None,
    NoPhoto,
    TooLarge,
}

/// <summary>Copies a photo piece by piece, telling its kind from the first and counting all. Mutable; for one photo.</summary>
internal sealed class PhotoIntake(long largest)
{
    private const int PieceBytes = 128 << 10;

    private byte[] hash = [];

    public PhotoKind? Kind { get; private set; }

    /// <summary>Bytes read so far.</summary>
    public long Bytes { get; private set; }

    /// <summary>The photo's name, once copied.</summary>
    public PhotoHash Hash() => new(Convert.ToHexStringLower(hash));

    /// <param name="next">Reads the next bytes, 0 at the end.</param>
    /// <param name="to">Where to; holds no more than was taken.</param>
    public async ValueTask<PhotoFault> Copy(Func<Memory<byte>, ValueTask<int>> next, Stream to)
    {
        using var sum = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var piece = new byte[PieceBytes];
        // a network hands over a few bytes at a time, the kind takes some more
        var got = await Head(next, piece).ConfigureAwait(false);
        Kind = PhotoKind.Of(piece.AsSpan(0, Math.Min(got, PhotoKind.HeadBytes)));
        if (Kind is null) return PhotoFault.NoPhoto;
        for (; got > 0; got = await next(piece).ConfigureAwait(false))
        {
            Bytes += got;
            if (Bytes > largest) return PhotoFault.TooLarge;
            sum.AppendData(piece, 0, got);
            to.Write(piece, 0, got);
        }
        hash = sum.GetHashAndReset();
        return PhotoFault.None;
    }

    private static async ValueTask<int> Head(Func<Memory<byte>, ValueTask<int>> next, byte[] piece)
    {
        var have = 0;
        while (have < PhotoKind.HeadBytes)
        {
            var got = await next(piece.AsMemory(have)).ConfigureAwait(false);
            if (got == 0) break;
            have += got;
        }
        return have;
    }
}
