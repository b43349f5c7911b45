using Microsoft.AspNetCore.Components.Forms;

namespace Wainwright.Web;

/// <summary>A file from the browser, brought whole to this side before anything reads it.</summary>
internal static class Upload
{
    /// <summary>The file as a stream that can be sought in; its temporary copy goes when the stream is closed.</summary>
    /// <param name="file">The file chosen.</param>
    /// <param name="largest">Largest size taken [bytes].</param>
    /// <exception cref="IOException">It is larger, or broke off on the way.</exception>
    public static async Task<FileStream> Keep(IBrowserFile file, long largest)
    {
        var kept = new FileStream(Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        try
        {
            await using var from = file.OpenReadStream(largest);
            await from.CopyToAsync(kept);
            kept.Position = 0;
            return kept;
        }
        catch
        {
            await kept.DisposeAsync();
            throw;
        }
    }
}
