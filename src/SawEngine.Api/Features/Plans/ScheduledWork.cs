using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Plans;

/// <summary>Set-ups and work of a scheduled job from trade to wire.</summary>
internal static class ScheduledWork
{
    public static IReadOnlyList<SetUpJson> ToSetUps(this ScheduledJob job, PlanClock clock) =>
    [
        .. job.SetUps.Select(setUp => new SetUpJson { Kind = setUp.Kind, Start = clock.At(setUp.Start), Finish = clock.At(setUp.Finish), Resource = "operator" }),
    ];

    public static IReadOnlyList<WorkSpanJson> ToWork(this ScheduledJob job, PlanClock clock) =>
        [.. job.Work.Select(span => new WorkSpanJson { Start = clock.At(span.Start), Finish = clock.At(span.Finish) })];
}
