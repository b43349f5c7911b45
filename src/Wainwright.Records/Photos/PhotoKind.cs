using System.Buffers.Binary;

namespace Wainwright.Records;

/// <summary>The kinds of photo taken, told from the first bytes and never from a name.</summary>
/// <param name="MediaType">Media type as registered.</param>
/// <param name="Ending">Ending of the file's name, with its dot.</param>
internal sealed record PhotoKind(string MediaType, string Ending)
{
    /// <summary>So many bytes tell the kind.</summary>
    public const int HeadBytes = 128;

    public static readonly PhotoKind Jpeg = new("image/jpeg", ".jpg");
    public static readonly PhotoKind Png = new("image/png", ".png");
    public static readonly PhotoKind WebP = new("image/webp", ".webp");
    public static readonly PhotoKind Heic = new("image/heic", ".heic");

    public static IReadOnlyList<PhotoKind> All { get; } = [Jpeg, Png, WebP, Heic];

    /// <summary>The kind of a photo that begins so; <see langword="null"/> when it is none of them.</summary>
    public static PhotoKind? Of(ReadOnlySpan<byte> head)
    {
        // JPEG: start of image and the next marker (ISO/IEC 10918-1, B.1); PNG: signature (W3C PNG, 5.2); WebP: RFC 9649, 2.4. All from memory.
        if (head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])) return Jpeg;
        if (head.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A])) return Png;
        if (head.Length >= 12 && head.StartsWith("RIFF"u8) && head[8..12].SequenceEqual("WEBP"u8)) return WebP;
        return IsHeic(head) ? Heic : null;
    }

    /// <summary>A file type box (ISO/IEC 14496-12, 4.3) with a brand of HEVC pictures (ISO/IEC 23008-12, annex B). From memory.</summary>
    private static bool IsHeic(ReadOnlySpan<byte> head)
    {
        if (head.Length < 16 || !head[4..8].SequenceEqual("ftyp"u8)) return false;
        var end = (int)Math.Min(BinaryPrimitives.ReadUInt32BigEndian(head), (uint)head.Length);
        for (var at = 8; at + 4 <= end; at += at == 8 ? 8 : 4) // the word after the first brand is a version
            if (head[at..(at + 4)] is [(byte)'h', (byte)'e', var third, var fourth] && "ivms"u8.Contains(third) && "cxms"u8.Contains(fourth)) return true;
        return false;
    }
}
