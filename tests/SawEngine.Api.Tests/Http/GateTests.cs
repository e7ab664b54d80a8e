using System.Net;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using SawEngine.Api.Wire;
using SawEngine.Core;
using SawEngine.Core.Nesting;

namespace SawEngine.Api.Tests.Http;

public sealed class GateTests
{
    private const string Request = """{"pieces":[{"pieceId":"p","length":1,"quantity":1}],"stock":[],"cut":{"kerf":0}}""";

    [Fact]
    public async Task More_calculations_than_fit_are_503_with_retry_after_and_the_rest_are_answered()
    {
        using var nester = new HeldNester();
        await using var factory = new WebApplicationFactory<Program>().WithWebHostBuilder(host => host.ConfigureTestServices(services => services.AddSingleton<INester>(nester)));
        using var client = factory.CreateClient();
        var fitting = Limits.Calculations + Limits.WaitingCalculations;
        var asked = Enumerable.Range(0, fitting + 1).Select(_ => client.PostAsync(new Uri("/v1/nests", UriKind.Relative), ServiceHost.Json(Request))).ToList();

        using var refused = await await Task.WhenAny(asked);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, refused.StatusCode);
        Assert.NotNull(refused.Headers.RetryAfter?.Delta);
        Assert.Equal("application/problem+json", refused.Content.Headers.ContentType?.MediaType);

        nester.Release();
        var answers = await Task.WhenAll(asked);
        Assert.Equal(fitting, answers.Count(answer => answer.StatusCode == HttpStatusCode.OK));
    }

    private sealed class HeldNester : INester, IDisposable
    {
        private readonly ManualResetEventSlim _released = new();

        public Nest Solve(NestProblem problem, Effort effort, CancellationToken cancellation)
        {
            _released.Wait(cancellation);
            return new() { Layouts = [], Unplaced = [], ValueMicros = 0, BoundMicros = 0, StoppedBy = StoppedBy.Proof };
        }

        public void Release() => _released.Set();

        public void Dispose() => _released.Dispose();
    }
}
