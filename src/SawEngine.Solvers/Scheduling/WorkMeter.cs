namespace SawEngine.Solvers.Scheduling;

/// <summary>Counts jobs placed, so that a search ends after the same work everywhere.</summary>
internal sealed class WorkMeter(long limit, CancellationToken cancellation)
{
    private long spent;

    public bool Stopped => spent >= limit || cancellation.IsCancellationRequested;

    public void Count(long placements) => spent += placements;
}
