using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using SawEngine.Api.CommandLine;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Http;

/// <summary>What only the real server shows.</summary>
public sealed class KestrelTests(KestrelServer server) : IClassFixture<KestrelServer>
{
    [Fact]
    public async Task Body_over_the_limit_is_413_by_its_stated_length_and_in_chunks()
    {
        var head = "POST /v1/nests HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\n";
        var stated = await server.Raw(head + $"Content-Length: {Limits.BodyBytes + 1}\r\n\r\n");
        var inChunks = await server.Raw(head + $"Transfer-Encoding: chunked\r\n\r\n{Limits.BodyBytes + 1:x}\r\n" + new string(' ', Limits.BodyBytes));

        Assert.StartsWith("HTTP/1.1 413", stated, StringComparison.Ordinal);
        Assert.StartsWith("HTTP/1.1 413", inChunks, StringComparison.Ordinal);
        Assert.Contains("urn:sawengine:problem:too-large", stated, StringComparison.Ordinal);
        Assert.Contains("urn:sawengine:problem:too-large", inChunks, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Head_has_headers_and_no_body()
    {
        var answer = await server.Raw("HEAD /v1/service HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");

        Assert.StartsWith("HTTP/1.1 200", answer, StringComparison.Ordinal);
        Assert.EndsWith("\r\n\r\n", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("Server:", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Broken_chunks_are_400()
    {
        var answer = await server.Raw("POST /v1/nests HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\nZZ\r\n");

        Assert.StartsWith("HTTP/1.1 400", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Health_verb_tells_a_running_service_from_a_silent_port()
    {
        var io = new CommandIo(Stream.Null, Stream.Null, TextWriter.Null);
        var health = Commands.All([]).Single(command => command.Verb == "health");

        Assert.Equal(0, await health.Run(new Uri(server.Address, "/health/ready").AbsoluteUri, io, CancellationToken.None));
        Assert.Equal(1, await health.Run(new Uri(server.Address, "/v1/nothing").AbsoluteUri, io, CancellationToken.None));
        Assert.Equal(1, await health.Run("http://127.0.0.1:1/health/ready", io, CancellationToken.None));
        Assert.Equal(2, await health.Run("ready", io, CancellationToken.None));
    }

    [Fact]
    public void Server_keeps_the_limits_that_are_published()
    {
        var limits = server.Services.GetRequiredService<IOptions<KestrelServerOptions>>().Value.Limits;

        Assert.Equal(Limits.Connections, limits.MaxConcurrentConnections);
        Assert.Equal(Limits.BodyBytes, limits.MaxRequestBodySize);
        Assert.Equal(Limits.HeaderBytes, limits.MaxRequestHeadersTotalSize);
        Assert.Equal(Limits.Headers, limits.MaxRequestHeaderCount);
        Assert.Equal(Limits.RequestLineBytes, limits.MaxRequestLineSize);
        Assert.Equal(Limits.HeaderSeconds, limits.RequestHeadersTimeout.TotalSeconds);
        Assert.Equal(Limits.BytesPerSecond, limits.MinRequestBodyDataRate!.BytesPerSecond);
        Assert.Equal(Limits.BytesPerSecond, limits.MinResponseDataRate!.BytesPerSecond);
    }

    [Fact]
    public async Task Body_that_trickles_in_is_408()
    {
        const string start = "POST /v1/nests HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n\r\n{";

        var answer = await server.Raw(start);

        Assert.StartsWith("HTTP/1.1 408", answer, StringComparison.Ordinal);
        Assert.Contains("urn:sawengine:problem:request-timeout", answer, StringComparison.Ordinal);
    }
}
