using System.Text.Json.Nodes;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using SawEngine.Api.Http.Logging;

namespace SawEngine.Api.Tests.Http;

public sealed class LogTests
{
    private const string Secret = "the words of the fault";

    [Fact]
    public async Task Request_is_one_line_with_its_route_and_nothing_of_its_content()
    {
        await using var server = new KestrelServer();
        using var content = ServiceHost.Json(NesterDouble.Request.Replace("\"p\"", "\"confidential\"", StringComparison.Ordinal));
        using var response = await server.Client.PostAsync(new Uri("/v1/nests?confidential=1", UriKind.Relative), content);

        var line = await server.Log.RequestLine(_ => true);
        Assert.Equal(LogLevel.Information, line.Level);
        Assert.Equal("POST", line.Members["Method"]);
        Assert.Equal("/v1/nests", line.Members["Route"]);
        Assert.Equal(200, line.Members["Status"]);
        Assert.Equal(response.Content.Headers.ContentLength, line.Members["Bytes"]);
        Assert.True((long)line.Members["Milliseconds"]! >= 0);
        Assert.Single(server.Log.Entries, entry => entry.Category == line.Category);
        Assert.All(server.Log.Entries, entry => Assert.DoesNotContain("confidential", entry.Message, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Path_with_control_characters_is_echoed_without_them_and_logged_not_at_all()
    {
        await using var server = new KestrelServer();
        var answer = await server.Raw("GET /v1/a%0Ab%0Dc%E2%80%AEd%E2%80%A8e%1B[31m HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 404", answer, StringComparison.Ordinal);
        var detail = (string)JsonNode.Parse(answer[answer.IndexOf('{', StringComparison.Ordinal)..])!["detail"]!;
        Assert.Contains("/v1/a", detail, StringComparison.Ordinal);
        AssertPlain(detail);
        var line = await server.Log.RequestLine(_ => true);
        Assert.Equal("-", line.Members["Route"]);
        AssertPlain(line.Message);
    }

    [Fact]
    public async Task Odd_method_is_echoed_short_and_not_logged()
    {
        await using var server = new KestrelServer();
        var answer = await server.Raw($"{new string('X', 3_000)} /v1/nests HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 405", answer, StringComparison.Ordinal);
        Assert.True(answer.Length < 1_500, answer);
        Assert.Equal("other", (await server.Log.RequestLine(_ => true)).Members["Method"]);
    }

    [Fact]
    public async Task Fault_of_the_service_is_500_without_its_words_and_logged_with_them()
    {
        await using var server = new KestrelServer(new NesterDouble(_ => throw new InvalidOperationException(Secret)));
        using var content = ServiceHost.Json(NesterDouble.Request);
        using var response = await server.Client.PostAsync(new Uri("/v1/nests", UriKind.Relative), content);
        var body = await response.Content.ReadAsStringAsync();

        Assert.Equal(500, (int)response.StatusCode);
        Assert.Equal("urn:sawengine:problem:internal-error", (string?)JsonNode.Parse(body)!["type"]);
        Assert.DoesNotContain(Secret, body, StringComparison.Ordinal);
        Assert.DoesNotContain(nameof(InvalidOperationException), body, StringComparison.Ordinal);
        Assert.DoesNotContain(" at ", body, StringComparison.Ordinal);
        Assert.Equal(500, (await server.Log.RequestLine(_ => true)).Members["Status"]);
        Assert.Contains(server.Log.Entries, entry => entry.Exception is { Message: Secret } && entry.Level == LogLevel.Error);
    }

    [Theory]
    [InlineData("00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01", true)]
    [InlineData("00-00000000000000000000000000000000-b7ad6b7169203331-01", false)]
    [InlineData("00-0AF7651916CD43DD8448EB211C80319C-b7ad6b7169203331-01", false)]
    [InlineData("0af7651916cd43dd8448eb211c80319c", false)]
    [InlineData("<script>", false)]
    public async Task Trace_of_the_caller_is_taken_up_where_it_is_valid(string traceparent, bool isTaken)
    {
        await using var server = new KestrelServer();
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(server.Address, "/v1/nothing"));
        request.Headers.TryAddWithoutValidation("traceparent", traceparent);
        // A handler that adds no trace of its own.
        using var client = new HttpClient(new SocketsHttpHandler { ActivityHeadersPropagator = null });
        using var response = await client.SendAsync(request);

        var traceId = (string)JsonNode.Parse(await response.Content.ReadAsStringAsync())!["traceId"]!;
        Assert.Matches("^00-[0-9a-f]{32}-[0-9a-f]{16}-[0-9a-f]{2}$", traceId);
        Assert.Equal(isTaken, traceId.Contains("0af7651916cd43dd8448eb211c80319c", StringComparison.Ordinal));
    }

    [Fact]
    public void Line_is_one_line_of_json_without_control_characters()
    {
        const string nasty = "a\nb\r\u001b[31m\u202Ec\u2028d\u0085e\"f\ud800";
        var scopes = new LoggerExternalScopeProvider();
        using var ignored = scopes.Push(new Dictionary<string, object?> { ["RequestPath"] = "/raw" });
        using var kept = scopes.Push(new Dictionary<string, object?> { ["KeyId"] = "erp" });
        KeyValuePair<string, object?>[] state = [new("Text", nasty), new("Count", 3), new("Nothing", null), new("{OriginalFormat}", "x")];
        using var written = new StringWriter();

        new LogLine(TimeProvider.System).Write(
            new LogEntry<KeyValuePair<string, object?>[]>(LogLevel.Error, "Some.Category", default, state, new InvalidOperationException(nasty), (_, _) => nasty), scopes, written);

        var text = written.ToString();
        Assert.EndsWith("}" + Environment.NewLine, text, StringComparison.Ordinal);
        Assert.Single(text, c => c == '\n');
        var line = JsonNode.Parse(text)!.AsObject();
        Assert.Equal(["time", "level", "category", "message", "count", "keyId", "text", "exception"], line.Select(member => member.Key));
        Assert.Equal((3, "erp"), ((int)line["count"]!, (string?)line["keyId"]));
        foreach (var member in new[] { "message", "text", "exception" })
        {
            AssertPlain((string)line[member]!);
            Assert.Contains('f', (string)line[member]!);
        }
    }

    [Fact]
    public void Long_text_is_cut()
    {
        using var written = new StringWriter();

        new LogLine(TimeProvider.System).Write(new LogEntry<string>(LogLevel.Error, "C", default, "", null, (_, _) => new string('x', 1_000_000)), null, written);

        Assert.True(written.ToString().Length < 3_000);
    }

    private static void AssertPlain(string text) =>
        Assert.DoesNotContain(text, c => char.IsControl(c) || c is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069'));
}
