using System.IO.Compression;
using Microsoft.Net.Http.Headers;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>A body, or why it was refused before anything read it.</summary>
internal sealed record RequestBody(ReadOnlyMemory<byte> Bytes, ProblemJson? Refusal)
{
    private const int BufferBytes = 64 * 1024;

    /// <summary>Reads a body of JSON in UTF-8, plain or packed with gzip, up to the limits of size, both as sent and unpacked, and of time.</summary>
    public static async Task<RequestBody> Read(HttpContext http)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted);
        limit.CancelAfter(TimeSpan.FromSeconds(Limits.ReceiveSeconds));
        try
        {
            return await Read(http, limit.Token);
        }
        catch (OperationCanceledException) when (!http.RequestAborted.IsCancellationRequested)
        {
            http.Response.Headers.Connection = "close";
            return Refuse(ProblemType.RequestTimeout, $"The body was not there after {Limits.ReceiveSeconds} seconds.");
        }
        catch (IOException broken) when (broken is not BadHttpRequestException && !http.RequestAborted.IsCancellationRequested)
        {
            // A chunk size beyond all numbers is not told as a bad request by the server.
            http.Response.Headers.Connection = "close";
            return Refuse(ProblemType.BadRequest, "The body could not be received as HTTP.");
        }
    }

    private static async Task<RequestBody> Read(HttpContext http, CancellationToken cancellation)
    {
        if (MediaTypeFault(http.Request.ContentType) is { } fault)
            return Refuse(ProblemType.UnsupportedMediaType, fault);
        var encoding = http.Request.Headers.ContentEncoding.ToString().Trim();
        if (encoding.Length == 0 || encoding.Equals("identity", StringComparison.OrdinalIgnoreCase))
            return await Read(http.Request.Body, "as sent", cancellation);
        if (encoding.Equals("gzip", StringComparison.OrdinalIgnoreCase))
            return await Unpack(http.Request.Body, cancellation);
        http.Response.Headers.AcceptEncoding = "gzip, identity";
        return Refuse(ProblemType.UnsupportedMediaType, "Content-Encoding must be gzip or identity.");
    }

    private static string? MediaTypeFault(string? contentType)
    {
        if (!MediaTypeHeaderValue.TryParse(contentType, out var media) || !media.MediaType.Equals("application/json", StringComparison.OrdinalIgnoreCase))
            return "Content-Type must be application/json.";
        return media.Charset.Length == 0 || HeaderUtilities.RemoveQuotes(media.Charset).Equals("utf-8", StringComparison.OrdinalIgnoreCase)
            ? null
            : "The charset must be utf-8.";
    }

    private static async Task<RequestBody> Unpack(Stream body, CancellationToken cancellation)
    {
        var packed = await Read(body, "as sent", cancellation);
        if (packed.Refusal is not null)
            return packed;
        try
        {
            await using var gzip = new GZipStream(new MemoryStream(packed.Bytes.ToArray()), CompressionMode.Decompress);
            return await Read(gzip, "unpacked", cancellation);
        }
        catch (InvalidDataException)
        {
            return new(default, ProblemJson.Of(ProblemType.InvalidShape, FaultList.Of(JsonPointer.Root, FaultCode.InvalidGzip, "The body is not valid gzip.")));
        }
    }

    private static async Task<RequestBody> Read(Stream stream, string form, CancellationToken cancellation)
    {
        using var bytes = new MemoryStream();
        var buffer = new byte[BufferBytes];
        int count;
        while ((count = await stream.ReadAsync(buffer, cancellation)) > 0)
        {
            if (bytes.Length + count > Limits.BodyBytes)
                return Refuse(ProblemType.TooLarge, $"The body {form} is larger than {Limits.BodyBytes} bytes.");
            bytes.Write(buffer, 0, count);
        }
        return new(bytes.GetBuffer().AsMemory(0, (int)bytes.Length), null);
    }

    private static RequestBody Refuse(ProblemType type, string detail) => new(default, ProblemJson.Of(type, detail));
}
