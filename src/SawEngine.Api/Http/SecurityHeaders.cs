using Microsoft.Net.Http.Headers;

namespace SawEngine.Api.Http;

/// <summary>Headers that every answer carries, unless its endpoint set its own.</summary>
internal static class SecurityHeaders
{
    private const string NothingRuns = "default-src 'none'; frame-ancestors 'none'";
    private const string DocumentationRuns = "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
        + "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    public static void UseSecurityHeaders(this WebApplication app) => app.Use((http, next) =>
    {
        http.Response.OnStarting(static state => Write((HttpContext)state), http);
        return next(http);
    });

    private static Task Write(HttpContext http)
    {
        var headers = http.Response.Headers;
        headers.TryAdd(HeaderNames.CacheControl, "no-store");
        headers.TryAdd(HeaderNames.XContentTypeOptions, "nosniff");
        headers.TryAdd(HeaderNames.ContentSecurityPolicy, http.Request.Path.StartsWithSegments(OpenApiDocuments.PagePath) ? DocumentationRuns : NothingRuns);
        headers.TryAdd("Referrer-Policy", "no-referrer");
        headers.TryAdd("Cross-Origin-Resource-Policy", "same-origin");
        if (http.Request.IsHttps)
            headers.TryAdd(HeaderNames.StrictTransportSecurity, "max-age=31536000");
        return Task.CompletedTask;
    }
}
