using Microsoft.AspNetCore.Server.Kestrel.Core;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>The limits that the server itself keeps, and how it stops.</summary>
internal static class ServerLimits
{
    public static void AddServerLimits(this WebApplicationBuilder builder)
    {
        builder.Services.Configure<KestrelServerOptions>(static kestrel =>
        {
            var rate = new MinDataRate(Limits.BytesPerSecond, TimeSpan.FromSeconds(Limits.RateGraceSeconds));
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = Limits.BodyBytes;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(Limits.HeaderSeconds);
            kestrel.Limits.MinRequestBodyDataRate = rate;
            kestrel.Limits.MinResponseDataRate = rate;
            kestrel.Limits.MaxRequestLineSize = Limits.RequestLineBytes;
            kestrel.Limits.MaxRequestHeadersTotalSize = Limits.HeaderBytes;
            kestrel.Limits.MaxRequestHeaderCount = Limits.Headers;
            kestrel.Limits.MaxConcurrentConnections = Limits.Connections;
        });
        // Whoever is in hand when the service is told to stop still gets an answer.
        builder.Services.Configure<HostOptions>(static host =>
            host.ShutdownTimeout = TimeSpan.FromSeconds(Limits.WaitSeconds + Limits.Seconds + 2 * Limits.GraceSeconds));
    }
}
