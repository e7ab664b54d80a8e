using SawEngine.Api.Wire;

namespace SawEngine.Api.Operations;

/// <summary>What an operation needs beside its request.</summary>
/// <param name="requestDigest">Digest of the request.</param>
/// <param name="clock">Measures the time that the calculation takes; nothing else depends on it.</param>
/// <param name="cancellation">Set when the time limit is reached or the caller goes away: the best answer so far is wanted.</param>
public sealed class OperationContext(string requestDigest, TimeProvider clock, CancellationToken cancellation)
{
    private readonly long _start = clock.GetTimestamp();

    /// <summary>Digest of the request, for the answer.</summary>
    public string RequestDigest { get; } = requestDigest;

    /// <summary>When to stop.</summary>
    public CancellationToken Cancellation { get; } = cancellation;

    /// <summary>Warnings for the answer; those about ignored members stand in it from the start.</summary>
    public List<WarningJson> Warnings { get; } = [];

    /// <summary>Time since the operation began.</summary>
    public TimeSpan Elapsed => clock.GetElapsedTime(_start);

    /// <summary>The same in milliseconds, for the answer's timing.</summary>
    public int ElapsedMs => (int)Elapsed.TotalMilliseconds;
}
