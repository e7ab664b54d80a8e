namespace SawEngine.Core.Scheduling.Verification;

/// <summary>A job, or a part of one, as the schedule lists it, with what the problem says of it.</summary>
/// <param name="Index">Its place in the list.</param>
/// <param name="Scheduled">Its saw and times.</param>
/// <param name="Job">The job.</param>
/// <param name="Option">How it runs on that saw.</param>
internal sealed record ListedJob(int Index, ScheduledJob Scheduled, ScheduleJob Job, JobOption Option)
{
    public long Start { get; } = Scheduled.Work.Count > 0 ? Scheduled.Work.Min(span => span.Start) : 0;

    public long Finish { get; } = Scheduled.Work.Count > 0 ? Scheduled.Work.Max(span => span.Finish) : 0;

    /// <summary>Whether it stays on this saw.</summary>
    public bool IsFrozen => Job.Frozen is { } place && string.Equals(place.SawId, Scheduled.SawId, StringComparison.Ordinal);

    /// <summary>Whether it was begun before the plan starts, so that the saw is set up for it.</summary>
    public bool IsRunning => IsFrozen && Job.Frozen!.Start <= 0 && Scheduled.FirstStep == 0;
}
