using SawEngine.Api.Features.Plans;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Writes a schedule.</summary>
internal sealed class ScheduleAnswer(ScheduleRequest request, ScheduleMapping mapping, Schedule schedule)
{
    private const decimal SecondsPerHour = 3600m;

    private readonly Dictionary<string, ScheduleJobJson> _asked = request.Jobs.ToDictionary(job => job.JobId, StringComparer.Ordinal);

    public ScheduleResponse Write(OperationContext context)
    {
        context.Warnings.AddRange(Overdue());
        var jobs = schedule.Jobs.OrderBy(job => job.JobId, StringComparer.Ordinal).Select(Job).ToList();
        return new()
        {
            RequestDigest = context.RequestDigest,
            LengthUnit = WireEnum.Text(request.LengthUnit),
            Currency = request.Currency,
            TimeZone = request.TimeZone,
            Status = Completion.Text(schedule.Jobs.Count, request.Jobs.Count),
            Objective = Objective(),
            Totals = Totals(jobs),
            Jobs = jobs,
            Saws = [.. schedule.Jobs.GroupBy(job => job.SawId, StringComparer.Ordinal).OrderBy(saw => saw.Key, StringComparer.Ordinal).Select(Saw)],
            Unscheduled = [.. schedule.Unscheduled.OrderBy(job => job.JobId, StringComparer.Ordinal).Select(job => new UnscheduledJson { JobId = job.JobId, Reason = job.Reason })],
            Defaults = mapping.Defaults,
            StoppedBy = WireEnum.Text(Ended(context)),
            Warnings = context.Warnings,
            Timing = new() { TotalMs = context.ElapsedMs },
        };
    }

    private IEnumerable<WarningJson> Overdue() => _asked.Values.Where(job => job.Due < request.PlanStart)
        .OrderBy(job => job.JobId, StringComparer.Ordinal)
        .Select(job => new WarningJson { Code = WarningCode.JobOverdue, JobId = job.JobId, Detail = $"Job {job.JobId} was due before the plan starts." });

    private StoppedBy Ended(OperationContext context) =>
        schedule.Unscheduled.Count == 0 && schedule.BoundMicros >= schedule.CostMicros ? StoppedBy.Proof
        : context.Cancellation.IsCancellationRequested ? StoppedBy.TimeLimit
        : StoppedBy.Effort;

    private ScheduleObjectiveJson Objective()
    {
        var (value, bound) = (schedule.CostMicros, Math.Min(schedule.BoundMicros, schedule.CostMicros));
        return new()
        {
            Value = value / 1_000_000m,
            Bound = bound / 1_000_000m,
            Gap = Gap.Of(value, bound),
        };
    }

    private ScheduleTotalsJson Totals(List<ScheduledJobJson> jobs) => new()
    {
        Jobs = request.Jobs.Count,
        Scheduled = jobs.Count,
        LateJobs = jobs.Count(job => job.LateHours > 0),
        LateHours = jobs.Sum(job => job.LateHours ?? 0m),
        SetUpSeconds = schedule.Jobs.Sum(SetUpSeconds),
        WorkSeconds = schedule.Jobs.Sum(WorkSeconds),
        Finish = schedule.Jobs.Count == 0 ? null : mapping.Clock.At(schedule.Jobs.Max(job => job.Finish)),
    };

    private ScheduledJobJson Job(ScheduledJob job)
    {
        var asked = _asked[job.JobId];
        return new()
        {
            JobId = job.JobId,
            SawId = job.SawId,
            Sequence = job.Sequence,
            SetUps = job.ToSetUps(mapping.Clock),
            Start = mapping.Clock.At(job.Start),
            Finish = mapping.Clock.At(job.Finish),
            Work = job.ToWork(mapping.Clock),
            Due = asked.Due is { } due ? mapping.Clock.InZone(due) : null,
            LateHours = asked.Due is { } promised ? HoursLate(job, promised) : null,
            Attributes = asked.Attributes,
        };
    }

    private decimal HoursLate(ScheduledJob job, DateTimeOffset due) =>
        Math.Round(Math.Max(0, job.Finish - mapping.Clock.SecondsBefore(due)) / SecondsPerHour, 4, MidpointRounding.ToEven);

    private SawLoadJson Saw(IGrouping<string, ScheduledJob> jobs) => new()
    {
        SawId = jobs.Key,
        JobIds = [.. jobs.OrderBy(job => job.Sequence).Select(job => job.JobId)],
        WorkSeconds = jobs.Sum(WorkSeconds),
        SetUpSeconds = jobs.Sum(SetUpSeconds),
        Finish = mapping.Clock.At(jobs.Max(job => job.Finish)),
    };

    private static long SetUpSeconds(ScheduledJob job) => job.SetUps.Sum(setUp => setUp.Finish - setUp.Start);

    private static long WorkSeconds(ScheduledJob job) => job.Work.Sum(span => span.Finish - span.Start);
}
