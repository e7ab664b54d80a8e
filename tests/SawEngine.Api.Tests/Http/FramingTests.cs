using System.Text.RegularExpressions;

namespace SawEngine.Api.Tests.Http;

/// <summary>
/// Requests whose beginning and end two parsers could see in different places, and others that are not HTTP (RFC 9112): each gets one answer, and the
/// connection is closed, so that nothing of it is taken for a second request.
/// </summary>
public sealed partial class FramingTests(KestrelServer server) : IClassFixture<KestrelServer>
{
    private const string Head = "POST /v1/nests HTTP/1.1\r\n";
    private const string Host = "Host: x\r\n";
    private const string Json = "Content-Type: application/json\r\n";
    private const string Second = "GET /v1/second HTTP/1.1\r\nHost: x\r\n\r\n";

    public static TheoryData<string, int, string> Requests => new()
    {
        { "content length and transfer encoding", 400, Head + Host + Json + "Content-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n" + Second },
        { "two unlike content lengths", 400, Head + Host + Json + "Content-Length: 2\r\nContent-Length: 3\r\n\r\n{} " + Second },
        { "two content lengths in one header", 400, Head + Host + Json + "Content-Length: 2, 2\r\n\r\n{}" + Second },
        { "negative content length", 400, Head + Host + Json + "Content-Length: -1\r\n\r\n" + Second },
        { "content length beyond all numbers", 400, Head + Host + Json + "Content-Length: 99999999999999999999\r\n\r\n{}" + Second },
        { "unknown transfer encoding", 400, Head + Host + Json + "Transfer-Encoding: xchunked\r\n\r\n0\r\n\r\n" + Second },
        { "chunked before another", 400, Head + Host + Json + "Transfer-Encoding: chunked, gzip\r\n\r\n0\r\n\r\n" + Second },
        { "bare LF in a chunk extension", 400, Head + Host + Json + "Transfer-Encoding: chunked\r\n\r\n2;\nxx\r\n{}\r\n0\r\n\r\n" + Second },
        { "bare LF in a chunk size", 400, Head + Host + Json + "Transfer-Encoding: chunked\r\n\r\n2\n{}\r\n0\r\n\r\n" + Second },
        { "chunk size beyond all numbers", 400, Head + Host + Json + "Transfer-Encoding: chunked\r\n\r\nFFFFFFFFFFFFFFFFF\r\n{}\r\n0\r\n\r\n" + Second },
        { "chunk larger than stated", 400, Head + Host + Json + "Transfer-Encoding: chunked\r\n\r\n1\r\n{}\r\n0\r\n\r\n" + Second },
        { "space before the colon", 400, Head + Host + Json + "Content-Length : 2\r\n\r\n{}" + Second },
        { "no host", 400, Head + Json + "Content-Length: 2\r\n\r\n{}" + Second },
        { "two hosts", 400, Head + Host + "Host: y\r\n" + Json + "Content-Length: 2\r\n\r\n{}" + Second },
        { "folded header", 400, Head + Host + "X-A: b\r\n c\r\n" + Json + "Content-Length: 2\r\n\r\n{}" + Second },
        { "NUL in a header", 400, Head + Host + "X-A: b\0c\r\n" + Json + "Content-Length: 2\r\n\r\n{}" + Second },
        { "CR in a header", 400, Head + Host + "X-A: b\rc\r\n" + Json + "Content-Length: 2\r\n\r\n{}" + Second },
        { "transfer encoding in HTTP/1.0", 400, "POST /v1/nests HTTP/1.0\r\n" + Host + Json + "Transfer-Encoding: chunked\r\n\r\n0\r\n\r\n" + Second },
        { "unknown version", 505, "GET /v1/service HTTP/3.7\r\n" + Host + "\r\n" + Second },
        { "no version", 400, "GET /v1/service\r\n" + Host + "\r\n" + Second },
        { "target that is no path", 400, "GET v1/service HTTP/1.1\r\n" + Host + "\r\n" + Second },
        { "headers of 40 kB", 431, "GET /v1/service HTTP/1.1\r\n" + Host + "X-A: " + new string('a', 40_000) + "\r\n\r\n" },
        { "101 headers", 431, "GET /v1/service HTTP/1.1\r\n" + Host + string.Concat(Enumerable.Range(0, 101).Select(i => $"X-{i}: a\r\n")) + "\r\n" },
        { "target of 9 kB", 414, "GET /" + new string('a', 9_000) + " HTTP/1.1\r\n" + Host + "\r\n" },
    };

    [Theory]
    [MemberData(nameof(Requests))]
    public async Task Request_that_is_not_http_gets_one_refusal(string name, int status, string request)
    {
        var answer = await server.Raw(request);

        Assert.True(answer.StartsWith($"HTTP/1.1 {status} ", StringComparison.Ordinal), $"{name}: {answer}");
        Assert.Single(StatusLine().Matches(answer));
    }

    [Theory]
    [InlineData("TRACE", "/v1/nests", "POST")]
    [InlineData("OPTIONS", "/v1/nests", "POST")]
    [InlineData("CONNECT", "/v1/nests", "POST")]
    [InlineData("TRACE", "/v1/service", "GET, HEAD")]
    public async Task Method_that_is_not_offered_is_refused(string method, string path, string allow)
    {
        var answer = await server.Raw($"{method} {path} HTTP/1.1\r\n{Host}X-A: secret\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 405", answer, StringComparison.Ordinal);
        Assert.Contains($"\r\nAllow: {allow}\r\n", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("secret", answer, StringComparison.Ordinal);
        Assert.Single(StatusLine().Matches(answer));
    }

    [Theory]
    [InlineData("Content-Length: 2\r\n\r\n{}")]
    [InlineData("Transfer-Encoding: chunked\r\n\r\n2\r\n{}\r\n0\r\n\r\n")]
    [InlineData("Transfer-Encoding: chunked\r\n\r\n2;name=value\r\n{}\r\n0\r\nTrailer: x\r\n\r\n")]
    public async Task Two_requests_on_one_connection_get_two_answers(string framing)
    {
        var answer = await server.Raw(Head + Host + Json + framing + "GET /v1/service HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");

        Assert.Equal(["HTTP/1.1 400", "HTTP/1.1 200"], StatusLine().Matches(answer).Select(match => match.Value));
        Assert.Contains("missing_member", answer, StringComparison.Ordinal);
    }

    [GeneratedRegex("HTTP/1\\.1 [0-9]{3}")]
    private static partial Regex StatusLine();
}
