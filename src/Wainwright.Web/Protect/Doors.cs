namespace Wainwright.Web.Protect;

/// <summary>
/// Lets in only what this program's own pages ask, and tells the browser to load nothing from elsewhere. Another page open in the same
/// browser could otherwise open a web socket to this machine: browsers do not hold sockets to the same-origin rule.
/// </summary>
internal sealed class Doors(RequestDelegate next)
{
    private const string Policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
        + "connect-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'";

    public Task Invoke(HttpContext context)
    {
        var ask = context.Request;
        if (FromElsewhere(ask))
        {
            context.Response.StatusCode = StatusCodes.Status403Forbidden;
            return context.Response.WriteAsync("asked for by a page from elsewhere");
        }
        var answer = context.Response.Headers;
        answer.ContentSecurityPolicy = Policy;
        answer.XContentTypeOptions = "nosniff";
        answer["Referrer-Policy"] = "no-referrer";
        answer["Cross-Origin-Opener-Policy"] = "same-origin";
        answer["Cross-Origin-Resource-Policy"] = "same-origin";
        return next(context);
    }

    private static bool FromElsewhere(HttpRequest ask)
    {
        if (!CanChange(ask)) return false;
        if (ask.Headers.Origin is [{ } origin]) return !Uri.TryCreate(origin, UriKind.Absolute, out var from) || from.Authority != ask.Host.Value || from.Scheme != ask.Scheme;
        return ask.Headers["Sec-Fetch-Site"] is [{ } site] && site is not ("same-origin" or "none");
    }

    private static bool CanChange(HttpRequest ask) =>
        !HttpMethods.IsGet(ask.Method) && !HttpMethods.IsHead(ask.Method) || ask.Headers.ContainsKey("Sec-WebSocket-Key") || ask.Path.StartsWithSegments("/_blazor");
}
