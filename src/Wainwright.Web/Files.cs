using System.Globalization;
using System.Net.Mime;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Web;

/// <summary>What a browser fetches as a file: photos, the job file, the container.</summary>
internal static class Files
{
    public static void MapFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/photo/{hash:regex(^[0-9a-f]{{64}}$)}", (string hash, Store store, HttpResponse answer) =>
        {
            var photo = new PhotoHash(hash);
            if (store.MediaTypeOf(photo) is not { } kind || store.OpenPhoto(photo) is not { } bytes) return Results.NotFound();
            // named by what is in it, so it can never change
            answer.Headers.CacheControl = "private, max-age=31536000, immutable";
            return Results.Stream(bytes, kind);
        });

        app.MapGet("/job/{id}/file", (string id, Store store) => store.Find(id) is { } found
            ? Results.File(JobFile.Write(found.Job), MediaTypeNames.Application.Json, Named(id, ".json"))
            : Results.NotFound());

        app.MapGet("/job/{id}/container", (string id, Store store) =>
        {
            if (store.Find(id) is null) return Results.NotFound();
            var kept = new FileStream(Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose);
            Container.Write(store, id, kept);
            kept.Position = 0;
            return Results.Stream(kept, MediaTypeNames.Application.Zip, Named(id, Container.Extension));
        });
    }

    private static string Named(string id, string extension) =>
        string.Concat(id.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')).ToLower(CultureInfo.InvariantCulture) + extension;
}
