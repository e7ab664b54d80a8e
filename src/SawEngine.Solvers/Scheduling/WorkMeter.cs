namespace SawEngine.Solvers.Scheduling;

/// <summary>Counts jobs placed, so that a search ends after the same work everywhere.</summary>
internal sealed class WorkMeter(long limit, CancellationToken cancellation)
{
    public long Limit => limit;

    public long Spent { get; private set; }

    public bool Stopped => Spent >= limit || cancellation.IsCancellationRequested;

    public void Count(long placements) => Spent += placements;
}
