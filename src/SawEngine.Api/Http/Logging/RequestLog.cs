using System.Diagnostics;
using SawEngine.Api.Http.Security;

namespace SawEngine.Api.Http.Logging;

/// <summary>One line for each request, without anything of its content: no body, no query, the route instead of the path.</summary>
internal static partial class RequestLog
{
    private const string None = "-";

    private static readonly HashSet<string> KnownMethods = new(["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS", "TRACE"], StringComparer.Ordinal);

    public static void UseRequestLog(this WebApplication app)
    {
        var log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger("SawEngine.Requests");
        app.Use(async (http, next) =>
        {
            var start = Stopwatch.GetTimestamp();
            var route = Route(http);
            try
            {
                await next(http);
            }
            finally
            {
                var level = Level(route);
                if (log.IsEnabled(level))
                    Write(log, level, http, route, Stopwatch.GetElapsedTime(start));
            }
        });
    }

    private static void Write(ILogger log, LogLevel level, HttpContext http, string route, TimeSpan took)
    {
        var method = KnownMethods.Contains(http.Request.Method) ? http.Request.Method : "other";
        var (milliseconds, keyId) = ((long)took.TotalMilliseconds, KeyedAccess.KeyId(http) ?? None);
        Log(log, level, method, route, http.Response.StatusCode, milliseconds, http.Response.ContentLength, keyId);
    }

    /// <summary>The route as it is declared. Taken before the request is handled: a fault takes it away.</summary>
    private static string Route(HttpContext http) =>
        http.GetEndpoint() is RouteEndpoint endpoint ? endpoint.RoutePattern.RawText ?? None
        : http.Request.Path.StartsWithSegments(OpenApiDocuments.PagePath) ? OpenApiDocuments.PagePath
        : None;

    /// <summary>Probes come every few seconds and say nothing.</summary>
    private static LogLevel Level(string route) => route.StartsWith("/health/", StringComparison.Ordinal) ? LogLevel.Debug : LogLevel.Information;

    [LoggerMessage("{Method} {Route} {Status} in {Milliseconds} ms, {Bytes} bytes, key {KeyId}")]
    private static partial void Log(ILogger logger, LogLevel level, string method, string route, int status, long milliseconds, long? bytes, string keyId);
}
