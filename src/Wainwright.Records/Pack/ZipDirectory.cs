using System.Buffers.Binary;

namespace Wainwright.Records;

/// <summary>
/// Counts the entries of a zip before anybody builds a list of them: a small file may claim millions. Layout: APPNOTE.TXT 4.3.12, 4.3.14–4.3.16.
/// </summary>
internal static class ZipDirectory
{
    private const int EndBytes = 22, LongestComment = 65_535, HeaderBytes = 46;

    // a generous entry: name of 86 bytes, header, and what other programs add
    private const int BytesPerEntry = 512;

    /// <summary>Why the directory is not walked any further; <see langword="null"/> when it is of a sensible size.</summary>
    public static string? Fault(Stream zip, int mostEntries)
    {
        var tail = Bytes(zip, Math.Max(0, zip.Length - EndBytes - LongestComment), EndBytes + LongestComment);
        var end = tail.AsSpan().LastIndexOf("PK\x05\x06"u8);
        if (end < 0 || tail.Length - end < EndBytes) return "is no zip file, or cut off";
        if (Start(zip, tail, end) is not { } at) return "is no whole zip file";

        var entries = 0;
        var bytes = 0L;
        for (var header = Bytes(zip, at, HeaderBytes); header.Length == HeaderBytes && header.AsSpan().StartsWith("PK\x01\x02"u8); header = Bytes(zip, at + bytes, HeaderBytes))
        {
            bytes += HeaderBytes + Word(header, 28) + Word(header, 30) + Word(header, 32);
            if (++entries > mostEntries) return $"has more than {mostEntries} entries";
            if (bytes > ((long)mostEntries * BytesPerEntry)) return "has a directory larger than its entries explain";
        }
        return null;
    }

    private static long? Start(Stream zip, byte[] tail, int end)
    {
        uint start = BinaryPrimitives.ReadUInt32LittleEndian(tail.AsSpan(end + 16));
        if (start != uint.MaxValue && Word(tail, end + 10) != ushort.MaxValue && Word(tail, end + 4) != ushort.MaxValue) return start;
        if (end < 20 || !tail.AsSpan(end - 20).StartsWith("PK\x06\x07"u8)) return null;
        var large = Bytes(zip, BinaryPrimitives.ReadInt64LittleEndian(tail.AsSpan(end - 12)), 56);
        return large.Length == 56 && large.AsSpan().StartsWith("PK\x06\x06"u8) ? BinaryPrimitives.ReadInt64LittleEndian(large.AsSpan(48)) : null;
    }

    private static int Word(byte[] from, int at) => BinaryPrimitives.ReadUInt16LittleEndian(from.AsSpan(at));

    private static byte[] Bytes(Stream zip, long at, int most)
    {
        if (at < 0 || at > zip.Length) return [];
        zip.Position = at;
        var bytes = new byte[most];
        return bytes[..zip.ReadAtLeast(bytes, most, throwOnEndOfStream: false)];
    }
}
