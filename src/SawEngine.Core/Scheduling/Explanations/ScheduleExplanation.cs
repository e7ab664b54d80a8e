namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>Why a schedule is as it is.</summary>
/// <param name="Jobs">Each job, in the order of the schedule.</param>
/// <param name="Late">Each late delivery, by id.</param>
public sealed record ScheduleExplanation(IReadOnlyList<JobExplanation> Jobs, IReadOnlyList<LateDelivery> Late)
{
    /// <summary>Of a schedule without jobs.</summary>
    public static ScheduleExplanation None { get; } = new([], []);
}
