using System.Globalization;
using System.Net.Mime;
using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Paper;
using Wainwright.Records;
using Wainwright.Survey.Damp.Drying;

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

        app.MapGet("/job/{id}/sketch.svg", (string id, Store store) => store.Find(id) is { } found
            ? Results.Text(SectionDrawing.Svg(found.Job, SectionView.RightHalf(found.Job), new() { Names = false }), "image/svg+xml", System.Text.Encoding.UTF8)
            : Results.NotFound());

        app.MapGet("/job/{id}/file", (string id, Store store) => store.Find(id) is { } found
            ? Results.File(JobFile.Write(found.Job), MediaTypeNames.Application.Json, Named(id, ".json"))
            : Results.NotFound());

        app.MapGet("/job/{id}/report.html", async (string id, Store store, TimeProvider clock, HttpResponse answer) => await Report(id, store, clock) is { } html ? Page(answer, html) : Results.NotFound());

        app.MapGet("/job/{id}/report.pdf", async (string id, Store store, TimeProvider clock, HttpResponse answer, CancellationToken stop) =>
        {
            if (await Report(id, store, clock) is not { } html) return Results.NotFound();
            var file = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
            return await Pdf.Print(html, file, stop) switch
            {
                PrintOutcome.Printed => Results.Stream(new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.None, 1 << 16, FileOptions.DeleteOnClose), MediaTypeNames.Application.Pdf, Named(id, "-report.pdf")),
                PrintOutcome.NoBrowser none => Results.Text(none.Says, statusCode: StatusCodes.Status503ServiceUnavailable),
                PrintOutcome.Failed failed => Results.Text($"No PDF was made: {failed.Because}. The report itself prints the same from any browser.", statusCode: StatusCodes.Status503ServiceUnavailable),
                _ => Results.StatusCode(StatusCodes.Status500InternalServerError),
            };
        });

        app.MapGet("/job/{id}/stop.html", async (string id, Store store, TimeProvider clock, HttpResponse answer) =>
            store.Find(id) is { } found ? Page(answer, await Sheets.StopUse(found.Job, Answers.Of(found.Job, Today(clock)))) : Results.NotFound());

        app.MapGet("/job/{id}/safe.html", async (string id, Store store, TimeProvider clock, HttpResponse answer) =>
            store.Find(id) is { } found ? Page(answer, await Sheets.Isolation(found.Job, Today(clock))) : Results.NotFound());

        // asked anew of the record as it stands: what was found while following the plan is not in it, nor a search that was stopped on the screen
        app.MapGet("/job/{id}/work.html", async (string id, string parts, string? how, string? stay, string? @out, string? least, string? tilt, Store store, TimeProvider clock, HttpResponse answer, CancellationToken stop) =>
        {
            if (store.Find(id) is not { } found) return Results.NotFound();
            var question = new WayQuestion(Typed(parts), Go.Kind(how ?? "way") ?? AccessKind.Remove, Typed(stay), Typed(@out), Go.Least(least), tilt == "past");
            if (question.Parts.Any(p => found.Job.Parts.All(q => q.Id != p))) return Results.NotFound();
            var way = await new Ways().Ask(found, question, stop: stop);
            return Page(answer, await Sheets.Removal(found.Job, way.Plan, Today(clock)));
        });

        // the round that the screen shows, and its changes if somebody asked for them; begun here it is waited for
        app.MapGet("/job/{id}/servicing.html", async (string id, Store store, Rounds rounds, TimeProvider clock, HttpResponse answer, CancellationToken stop) =>
        {
            if (store.Find(id) is not { } found) return Results.NotFound();
            var round = rounds.Of(found);
            var upkeep = await round.Upkeep.WaitAsync(stop);
            return Page(answer, await Sheets.Servicing(found.Job, upkeep, round.Ranked, Today(clock)));
        });

        app.MapGet("/job/{id}/hold.html", async (string id, string? @case, Store store, Holds holds, TimeProvider clock, HttpResponse answer, CancellationToken stop) =>
        {
            if (store.Find(id) is not { } found) return Results.NotFound();
            var run = holds.Of(found, Enum.TryParse<LoadCase>(@case, out var load) ? [load] : []);
            return Page(answer, await Sheets.Hold(found.Job, await run.Found.WaitAsync(stop), Today(clock)));
        });

        app.MapGet("/job/{id}/drying.html", async (string id, string? on, string? promised, Store store, TimeProvider clock, HttpResponse answer) =>
        {
            static DateOnly? Day(string? text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;
            if (store.Find(id) is not { } found || DryingLogs.Of(found.Job, Day(on), Day(promised)) is not { } log) return Results.NotFound();
            return Page(answer, await Sheets.Drying(found.Job, log, Today(clock)));
        });

        app.MapGet("/job/{id}/container", (string id, Store store) =>
        {
            if (store.Find(id) is null) return Results.NotFound();
            var kept = new FileStream(Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose);
            Container.Write(store, id, kept);
            kept.Position = 0;
            return Results.Stream(kept, MediaTypeNames.Application.Zip, Named(id, Container.Extension));
        });
    }

    private static IReadOnlyList<PartId> Typed(string? ids) => [.. (ids ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(t => new PartId(t))];

    private static async Task<string?> Report(string id, Store store, TimeProvider clock) => store.Find(id) is { } found
        ? await OwnersReport.Html(found.Job, Answers.Of(found.Job, Today(clock)), Photos(store), found.Hash)
        : null;

    private static DateOnly Today(TimeProvider clock) => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    private static PhotoBytes Photos(Store store) => hash =>
    {
        using var photo = store.OpenPhoto(hash);
        if (photo is null) return null;
        using var bytes = new MemoryStream();
        photo.CopyTo(bytes);
        return bytes.ToArray();
    };

    /// <summary>A page of paper carries its own style and its photos within itself, and runs nothing.</summary>
    private static IResult Page(HttpResponse answer, string html)
    {
        answer.Headers.ContentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; frame-ancestors 'none'; sandbox allow-modals allow-popups";
        return Results.Content(html, MediaTypeNames.Text.Html, System.Text.Encoding.UTF8);
    }

    private static string Named(string id, string extension) =>
        string.Concat(id.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? c : '-')).ToLower(CultureInfo.InvariantCulture) + extension;
}
