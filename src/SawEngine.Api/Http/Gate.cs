using System.Threading.RateLimiting;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>Lets in only as many calculations as there are processors; a few may wait, the rest are told to come back.</summary>
internal static class Gate
{
    private const string RetryAfterSeconds = "2";

    public static void AddGate(this IServiceCollection services) => services.AddRateLimiter(options =>
    {
        options.RejectionStatusCode = StatusCodes.Status503ServiceUnavailable;
        options.OnRejected = static (context, _) =>
        {
            context.HttpContext.Response.Headers.RetryAfter = RetryAfterSeconds;
            return ValueTask.CompletedTask;
        };
        // One partition for all callers: the processors are shared.
        options.AddPolicy(OperationEndpoint.ConcurrencyPolicy, static _ => RateLimitPartition.GetConcurrencyLimiter("all", static _ => new()
        {
            PermitLimit = Limits.Calculations,
            QueueLimit = Limits.WaitingCalculations,
            QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
        }));
    });
}
