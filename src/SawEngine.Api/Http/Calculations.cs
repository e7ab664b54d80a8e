using System.Threading.RateLimiting;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;

namespace SawEngine.Api.Http;

/// <summary>
/// Runs as many calculations at once as there are processors, on threads of their own, so that those that answer probes and catalogs stay free. A few
/// wait for a while; the rest are told to come back.
/// </summary>
/// <param name="slots">Calculations at the same time.</param>
/// <param name="waiting">Calculations that may wait.</param>
/// <param name="patience">Longest wait.</param>
/// <param name="net">Time after which a calculation is given up that should have stopped by itself.</param>
/// <param name="log">Takes word of faults.</param>
internal sealed partial class Calculations(int slots, int waiting, TimeSpan patience, TimeSpan net, ILogger log) : IDisposable
{
    private readonly ConcurrencyLimiter _slots = new(new() { PermitLimit = slots, QueueLimit = waiting, QueueProcessingOrder = QueueProcessingOrder.OldestFirst });
    private readonly CalculationThreads _threads = new(slots);
    private int _runaways;

    /// <summary>Whether a calculation that was given up still runs.</summary>
    public bool HasRunaways => Volatile.Read(ref _runaways) > 0;

    /// <summary>Those of the service.</summary>
    public static Calculations OfService(ILogger<Calculations> log) => new(
        Limits.Calculations,
        Limits.WaitingCalculations,
        TimeSpan.FromSeconds(Limits.WaitSeconds),
        TimeSpan.FromSeconds(Limits.Seconds + Limits.GraceSeconds),
        log);

    /// <summary>Runs a calculation, which is to stop by itself when its caller goes away.</summary>
    public async Task<Calculated> Run(Func<Outcome> calculation, CancellationToken caller)
    {
        if (await Enter(caller) is not { } slot)
            return new(null, ProblemJson.Of(ProblemType.Busy, "All calculations are taken; try again after the time in Retry-After."));
        var work = Task.Factory.StartNew(calculation, CancellationToken.None, TaskCreationOptions.DenyChildAttach, _threads);
        // The slot is taken until the thread is free, not until the caller has an answer.
        var ended = work.ContinueWith(_ => slot.Dispose(), CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
        try
        {
            await ended.WaitAsync(net, CancellationToken.None);
        }
        catch (TimeoutException)
        {
            GiveUp(work);
            return new(null, ProblemJson.Of(ProblemType.OutOfTime, "The calculation did not end in time and was given up."));
        }
        try
        {
            return new(await work, null);
        }
        catch (OperationCanceledException)
        {
            return new(null, ProblemJson.Of(ProblemType.OutOfTime, "The calculation reached its time limit before it had an answer; ask for less at once."));
        }
    }

    public void Dispose()
    {
        _slots.Dispose();
        _threads.Dispose();
    }

    private async Task<RateLimitLease?> Enter(CancellationToken caller)
    {
        using var wait = CancellationTokenSource.CreateLinkedTokenSource(caller);
        wait.CancelAfter(patience);
        try
        {
            var slot = await _slots.AcquireAsync(1, wait.Token);
            return slot.IsAcquired ? slot : null;
        }
        catch (OperationCanceledException) when (!caller.IsCancellationRequested)
        {
            return null;
        }
    }

    private void GiveUp(Task work)
    {
        Interlocked.Increment(ref _runaways);
        LogGivenUp(log);
        _ = work.ContinueWith(
            ended =>
            {
                Interlocked.Decrement(ref _runaways);
                if (ended.Exception is { } fault)
                    LogFailedLate(log, fault);
            },
            CancellationToken.None,
            TaskContinuationOptions.ExecuteSynchronously,
            TaskScheduler.Default);
    }

    [LoggerMessage(LogLevel.Error, "A calculation did not stop at its time limit and was given up; it takes a slot until it ends.")]
    private static partial void LogGivenUp(ILogger logger);

    [LoggerMessage(LogLevel.Error, "A calculation that was given up has failed.")]
    private static partial void LogFailedLate(ILogger logger, Exception fault);
}
