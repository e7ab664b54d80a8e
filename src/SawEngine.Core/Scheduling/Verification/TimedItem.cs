namespace SawEngine.Core.Scheduling.Verification;

/// <summary>A set-up part or a span of work of a job.</summary>
internal readonly record struct TimedItem(long Start, long Finish, ScheduledSetUp? Part, WorkSpan? Span)
{
    /// <summary>All of a job, by time.</summary>
    public static List<TimedItem> Of(ScheduledJob job) =>
    [
        .. job.SetUps.Select(part => new TimedItem(part.Start, part.Finish, part, null))
            .Concat(job.Work.Select(span => new TimedItem(span.Start, span.Finish, null, span)))
            .OrderBy(item => item.Start).ThenBy(item => item.Finish),
    ];
}
