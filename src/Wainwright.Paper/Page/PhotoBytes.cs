using System.Security.Cryptography;
using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>The bytes of a photo, or <see langword="null"/> when this machine does not hold it.</summary>
public delegate byte[]? PhotoBytes(PhotoHash hash);

/// <summary>What became of a photo asked for: its picture for the page, or why there is none.</summary>
/// <param name="Uri">The picture as a data URI; <see langword="null"/> when there is none to show.</param>
/// <param name="Instead">What to say where it would stand.</param>
public sealed record Picture(string? Uri, string Instead)
{
    /// <summary>A larger one makes a page that no mail carries [bytes].</summary>
    public const int LargestBytes = 12 << 20;

    /// <summary>Fetches a photo, checks that it is the one named, and that it is a picture a page may hold.</summary>
    public static Picture Of(PhotoHash hash, PhotoBytes photos)
    {
        ArgumentNullException.ThrowIfNull(photos);
        if (photos(hash) is not { } bytes) return new(null, "Photo kept elsewhere; not on the machine that made this page.");
        if (bytes.Length > LargestBytes) return new(null, "Photo too large for this page; ask the workshop for the file.");
        if (!string.Equals(Convert.ToHexString(SHA256.HashData(bytes)), hash.Text, StringComparison.OrdinalIgnoreCase))
            return new(null, "The file found does not match the photo that was recorded; it is not shown.");
        return MediaType(bytes) is { } type
            ? new($"data:{type};base64,{Convert.ToBase64String(bytes)}", "")
            : new(null, "The file is not a picture that can be shown here.");
    }

    /// <summary>By its first bytes, not by what the job file says of it.</summary>
    private static string? MediaType(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => "image/png",
        [0xFF, 0xD8, 0xFF, ..] => "image/jpeg",
        [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..] => "image/webp",
        [(byte)'G', (byte)'I', (byte)'F', (byte)'8', ..] => "image/gif",
        _ => null,
    };
}
