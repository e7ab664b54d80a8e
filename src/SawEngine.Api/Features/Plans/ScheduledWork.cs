using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Plans;

/// <summary>Set-ups and work of a scheduled job from trade to wire.</summary>
internal static class ScheduledWork
{
    /// <summary>The set-ups; a blade that is mounted new says nothing of its life.</summary>
    public static IReadOnlyList<SetUpJson> ToSetUps(this ScheduledJob job, PlanClock clock) =>
    [
        .. job.SetUps.Select(setUp => new SetUpJson
        {
            Kind = setUp.Kind,
            Start = clock.At(setUp.Start),
            Finish = clock.At(setUp.Finish),
            Resource = "operator",
            OperatorId = setUp.OperatorId,
            MountedLife = setUp.MountedLife is { } life and < ScheduleSaw.FullBladeLife ? life / (decimal)ScheduleSaw.FullBladeLife : null,
        }),
    ];

    /// <summary>The work, with its steps where they are those of the request.</summary>
    public static IReadOnlyList<WorkSpanJson> ToWork(this ScheduledJob job, PlanClock clock, bool withSteps = false) =>
    [
        .. job.Work.Select(span => new WorkSpanJson
        {
            Start = clock.At(span.Start),
            Finish = clock.At(span.Finish),
            Steps = withSteps ? span.Steps : null,
            OperatorId = span.OperatorId,
            CraneId = span.CraneId,
        }),
    ];
}
