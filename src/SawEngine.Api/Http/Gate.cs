using System.Threading.RateLimiting;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>Bounds the requests for calculations that are in hand at once, those whose bodies still come in included: they take memory.</summary>
internal static class Gate
{
    /// <summary>Name of the policy.</summary>
    public const string Policy = "calculations";

    public static void AddGate(this IServiceCollection services) => services.AddRateLimiter(static options =>
    {
        options.RejectionStatusCode = StatusCodes.Status503ServiceUnavailable;
        options.AddPolicy(Policy, static _ => RateLimitPartition.GetConcurrencyLimiter("all", static _ => new() { PermitLimit = Limits.RequestsInHand, QueueLimit = 0 }));
    });
}
