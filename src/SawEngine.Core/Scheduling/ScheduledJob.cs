namespace SawEngine.Core.Scheduling;

/// <summary>A job with its saw and times.</summary>
public sealed record ScheduledJob
{
    /// <summary>The job.</summary>
    public required string JobId { get; init; }

    /// <summary>The saw.</summary>
    public required string SawId { get; init; }

    /// <summary>Place in the saw's sequence, from 1.</summary>
    public required int Sequence { get; init; }

    /// <summary>The first of its steps that is done here, from 0; a job that was split is listed once for each part.</summary>
    public int FirstStep { get; init; }

    /// <summary>How many seconds before its turn its times were found, so that it has hands and cranes before others: what the same times can be found again by.</summary>
    public long Ahead { get; init; }

    /// <summary>Set-up parts before it, and changes of worn blades inside it, by start.</summary>
    public required IReadOnlyList<ScheduledSetUp> SetUps { get; init; }

    /// <summary>The work, by start; a new span begins after a pause or a blade change.</summary>
    public required IReadOnlyList<WorkSpan> Work { get; init; }

    /// <summary>Start of the first step.</summary>
    public long Start => Work[0].Start;

    /// <summary>End of the last step.</summary>
    public long Finish => Work[^1].Finish;
}
