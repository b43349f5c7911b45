using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>Names in a zip from outside. Nothing is ever unpacked to a name given there; bad ones still mean that the file is not ours.</summary>
internal static class EntryName
{
    /// <summary>What is wrong with a name, if anything.</summary>
    public static string? Fault(string name) =>
        name.Length is 0 or > 200 ? "must have 1 to 200 characters"
        : name.Any(char.IsControl) ? "must not hold control characters"
        : name.Contains('\\', StringComparison.Ordinal) ? "must not hold a backslash"
        : name.StartsWith('/') || name.Contains(':', StringComparison.Ordinal) ? "must not be an absolute path"
        : name.EndsWith('/') ? "must not be a folder"
        : name.Split('/').Any(s => s is "" or "." or "..") ? "must not climb out of the file"
        : null;

    /// <summary>What is wrong with the kind of an entry: only plain files are taken.</summary>
    /// <param name="attributes">Attributes as the zip has them: a Unix mode in the upper half, MS-DOS attributes in the lower.</param>
    public static string? KindFault(int attributes) =>
        ((attributes >> 16) & 0xF000) is not (0 or 0x8000) ? "must be a plain file, not a link, folder or device" // S_IFMT, S_IFREG (stat(2))
        : (attributes & 0x410) != 0 ? "must be a plain file, not a folder or a link" // FILE_ATTRIBUTE_DIRECTORY, _REPARSE_POINT
        : null;

    /// <summary>The name of a photo in a pack.</summary>
    public static string Photo(PhotoHash hash, PhotoKind kind) => $"photos/{hash}{kind.Ending}";

    /// <summary>The photo that a name in a pack means, if it is one.</summary>
    public static (PhotoHash Hash, PhotoKind Kind)? PhotoNamed(string name) =>
        name.StartsWith("photos/", StringComparison.Ordinal) && PhotoKind.All.FirstOrDefault(k => name.EndsWith(k.Ending, StringComparison.Ordinal)) is { } kind
        && new PhotoHash(name["photos/".Length..^kind.Ending.Length]) is { IsWellFormed: true } hash ? (hash, kind) : null;
}
