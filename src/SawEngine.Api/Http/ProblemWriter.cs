using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Diagnostics;
using SawEngine.Api.Http.Security;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>Writes refusals as problem documents.</summary>
internal static class ProblemWriter
{
    public static async Task Write(HttpContext http, ProblemJson problem)
    {
        var traced = problem with { TraceId = Activity.Current?.Id ?? http.TraceIdentifier };
        var body = traced.ToUtf8();
        http.Response.StatusCode = problem.Status;
        http.Response.ContentType = ProblemJson.MediaType;
        http.Response.ContentLength = body.Length;
        if (problem.Status == StatusCodes.Status503ServiceUnavailable)
            http.Response.Headers.RetryAfter = RetryAfterSeconds();
        await http.Response.Body.WriteAsync(body, http.RequestAborted);
    }

    /// <summary>Gives an empty answer its problem document.</summary>
    public static Task WriteForStatus(StatusCodeContext context) =>
        Write(context.HttpContext, ProblemJson.Of(ProblemType.Of(context.HttpContext.Response.StatusCode), Detail(context.HttpContext)) with
        {
            Status = context.HttpContext.Response.StatusCode,
        });

    /// <summary>The net below everything: a request that could not be received, or a fault of the service.</summary>
    public static Task WriteForException(HttpContext http)
    {
        var error = http.Features.Get<IExceptionHandlerFeature>()?.Error;
        var status = error is BadHttpRequestException bad ? bad.StatusCode : StatusCodes.Status500InternalServerError;
        http.Response.StatusCode = status;
        return Write(http, ProblemJson.Of(ProblemType.Of(status), Detail(http)) with { Status = status });
    }

    /// <summary>Not the same for all, so that those sent away together do not come back together.</summary>
    private static string RetryAfterSeconds() =>
        RandomNumberGenerator.GetInt32(Limits.RetryAfterLeastSeconds, Limits.RetryAfterMostSeconds + 1).ToString(CultureInfo.InvariantCulture);

    private static string Detail(HttpContext http) => http.Response.StatusCode switch
    {
        StatusCodes.Status401Unauthorized => $"A valid key is needed in the header {ApiKeyHandler.Header}.",
        StatusCodes.Status404NotFound => $"There is nothing at {Quoted.Text(http.Request.Path)}.",
        StatusCodes.Status405MethodNotAllowed => $"{Quoted.Text(http.Request.Method)} is not offered here; see Allow.",
        StatusCodes.Status408RequestTimeout => "The body came in too slowly.",
        StatusCodes.Status413PayloadTooLarge => $"The body as sent is larger than {Limits.BodyBytes} bytes.",
        StatusCodes.Status503ServiceUnavailable => "The service has all the requests in hand that it can; try again after the time in Retry-After.",
        >= 500 => "The fault is the service's, not the request's. The traceId names it in the log.",
        _ => "The request could not be received as HTTP.",
    };
}
