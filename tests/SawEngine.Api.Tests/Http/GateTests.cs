using System.Collections.Concurrent;
using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Options;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Tests.Http;

/// <summary>What happens while calculations run.</summary>
public sealed class GateTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    [Fact]
    public async Task More_calculations_than_fit_are_503_with_retry_after_and_the_rest_are_answered()
    {
        using var held = new Held();
        await using var server = new KestrelServer(held.Nester);
        var fitting = Limits.Calculations + Limits.WaitingCalculations;
        var asked = Enumerable.Range(0, fitting + 1).Select(_ => Ask(server)).ToList();

        using var refused = await await Task.WhenAny(asked);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, refused.StatusCode);
        Assert.InRange(refused.Headers.RetryAfter!.Delta!.Value.TotalSeconds, Limits.RetryAfterLeastSeconds, Limits.RetryAfterMostSeconds);
        Assert.Equal("application/problem+json", refused.Content.Headers.ContentType?.MediaType);

        held.Release();
        var answers = await Task.WhenAll(asked);
        Assert.Equal(fitting, answers.Count(answer => answer.StatusCode == HttpStatusCode.OK));
    }

    [Fact]
    public async Task Probes_and_catalogs_are_answered_while_all_calculations_are_taken()
    {
        using var held = new Held();
        await using var server = new KestrelServer(held.Nester);
        var asked = Enumerable.Range(0, Limits.Calculations + Limits.WaitingCalculations).Select(_ => Ask(server)).ToList();
        await held.Entered(Limits.Calculations);

        foreach (var path in new[] { "/health/live", "/health/ready", "/v1/service", "/openapi/v1.json" })
        {
            using var answer = await server.Client.GetAsync(new Uri(path, UriKind.Relative)).WaitAsync(Patience);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }
        Assert.All(asked, ask => Assert.False(ask.IsCompleted));
        Assert.All(held.Threads, thread => Assert.False(thread.IsPool));

        held.Release();
        Assert.All(await Task.WhenAll(asked), answer => Assert.Equal(HttpStatusCode.OK, answer.StatusCode));
    }

    [Fact]
    public async Task Bodies_that_come_in_slowly_take_no_calculation()
    {
        await using var server = new KestrelServer();
        const string head = "POST /v1/nests HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n\r\n{";
        var slow = await Task.WhenAll(Enumerable.Range(0, Limits.Calculations + Limits.WaitingCalculations).Select(_ => server.Connect(head)));

        using var answer = await Ask(server).WaitAsync(Patience);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);

        Array.ForEach(slow, socket => socket.Dispose());
    }

    [Fact]
    public async Task Requests_in_hand_are_bounded()
    {
        await using var server = new KestrelServer();
        const string head = "POST /v1/nests HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 1000\r\nConnection: close\r\n\r\n{";

        // One more than fit, none of which sends its body: one is refused at once, the rest are when they have been too slow.
        var answers = await Task.WhenAll(Enumerable.Range(0, Limits.RequestsInHand + 1).Select(_ => server.Raw(head)));

        Assert.Contains(answers, answer => answer.StartsWith("HTTP/1.1 503", StringComparison.Ordinal) && answer.Contains("\r\nRetry-After: ", StringComparison.Ordinal));
        Assert.Contains(answers, answer => answer.StartsWith("HTTP/1.1 408", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Calculation_whose_caller_goes_away_is_stopped()
    {
        using var held = new Held();
        await using var server = new KestrelServer(held.Nester);
        var body = NesterDouble.Request;
        var socket = await server.Connect($"POST /v1/nests HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n{body}");
        await held.Entered(1);

        socket.Dispose();

        await held.Stopped.WaitAsync(Patience);
        var line = await server.Log.RequestLine(entry => Equals(entry.Members["Route"], "/v1/nests")).WaitAsync(Patience);
        Assert.Equal(499, line.Members["Status"]);
    }

    [Fact]
    public async Task Calculation_in_hand_is_answered_when_the_service_is_told_to_stop()
    {
        using var held = new Held();
        await using var server = new KestrelServer(held.Nester);
        var asked = Ask(server);
        await held.Entered(1);

        var lifetime = server.Services.GetRequiredService<IHostApplicationLifetime>();
        lifetime.StopApplication();
        await Assert.ThrowsAnyAsync<Exception>(async () =>
        {
            for (var tries = 0; tries < 1_000; tries++)
                (await server.Connect("")).Dispose();
        });
        Assert.False(asked.IsCompleted);

        held.Release();
        using var answer = await asked.WaitAsync(Patience);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task Stop_waits_longer_than_the_longest_wait_and_calculation()
    {
        await using var server = new KestrelServer();

        var stop = server.Services.GetRequiredService<IOptions<HostOptions>>().Value.ShutdownTimeout;

        Assert.True(stop > TimeSpan.FromSeconds(Limits.WaitSeconds + Limits.Seconds + Limits.GraceSeconds));
    }

    private static async Task<HttpResponseMessage> Ask(KestrelServer server)
    {
        using var content = ServiceHost.Json(NesterDouble.Request);
        return await server.Client.PostAsync(new Uri("/v1/nests", UriKind.Relative), content);
    }

    /// <summary>A nester that holds every nest until it is let go.</summary>
    private sealed class Held : IDisposable
    {
        private readonly ManualResetEventSlim _released = new();
        private readonly SemaphoreSlim _entered = new(0);
        private readonly TaskCompletionSource _stopped = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Held() => Nester = new(Hold);

        public NesterDouble Nester { get; }

        public ConcurrentBag<(int Id, bool IsPool)> Threads { get; } = [];

        public Task Stopped => _stopped.Task;

        public async Task Entered(int count)
        {
            for (var i = 0; i < count; i++)
                Assert.True(await _entered.WaitAsync(Patience));
        }

        public void Release() => _released.Set();

        public void Dispose()
        {
            _released.Set();
            _released.Dispose();
            _entered.Dispose();
        }

        private void Hold(CancellationToken cancellation)
        {
            Threads.Add((Environment.CurrentManagedThreadId, Thread.CurrentThread.IsThreadPoolThread));
            _entered.Release();
            using var registration = cancellation.Register(() => _stopped.TrySetResult());
            _released.Wait(cancellation);
        }
    }
}
