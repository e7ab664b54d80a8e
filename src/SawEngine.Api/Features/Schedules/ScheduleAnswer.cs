using SawEngine.Api.Features.Plans;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Nesting;
using SawEngine.Core.Scheduling;
using SawEngine.Core.Scheduling.Explanations;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Writes a schedule.</summary>
internal sealed class ScheduleAnswer(ScheduleProblemRequest request, ScheduleMapping mapping, Schedule schedule)
{
    public ScheduleResponse Write(OperationContext context, ScheduleExplanation explanation)
    {
        context.Warnings.AddRange(mapping.Warnings());
        context.Warnings.AddRange(FrozenStarts.NotKept(mapping, schedule));
        context.Warnings.AddRange(LateAtNoCost());
        var rows = new ScheduleRows(request, mapping, schedule.Jobs);
        var totals = rows.Totals();
        return new()
        {
            RequestDigest = context.RequestDigest,
            LengthUnit = WireEnum.Text(request.LengthUnit),
            Currency = request.Currency,
            TimeZone = request.TimeZone,
            Status = Completion.Text(totals.Scheduled, totals.Jobs),
            Objective = Objective(),
            Totals = totals,
            Jobs = rows.Jobs(),
            Saws = rows.Saws(),
            Reasons = [.. explanation.Jobs.OrderBy(job => job.JobId, StringComparer.Ordinal).ThenBy(job => job.FirstStep).Select(JobReasonsJson.Of)],
            Lateness = [.. explanation.Late.Select(LatenessJson.Of)],
            Unscheduled = [.. schedule.Unscheduled.OrderBy(job => job.JobId, StringComparer.Ordinal).Select(job => new UnscheduledJson { JobId = job.JobId, Reason = job.Reason })],
            Changes = ScheduleChanges.Of(request, mapping, schedule.Jobs),
            Defaults = mapping.Defaults,
            StoppedBy = WireEnum.Text(Ended(context)),
            Warnings = context.Warnings,
            Timing = new() { TotalMs = context.ElapsedMs },
        };
    }

    /// <summary>A warning where jobs are late and nothing keeps them from that.</summary>
    private IEnumerable<WarningJson> LateAtNoCost()
    {
        var finish = schedule.Jobs.ToLookup(job => job.JobId, job => job.Finish, StringComparer.Ordinal);
        var late = mapping.Problem.Deliveries.Where(delivery => delivery.CostMicrosPerHourLate == 0)
            .Select(delivery => (delivery.DeliveryId, SecondsLate: delivery.JobIds.SelectMany(id => finish[id]).DefaultIfEmpty(delivery.Due ?? 0).Max() - delivery.Due))
            .Where(delivery => delivery.SecondsLate > 0).ToList();
        if (late.Count == 0)
            yield break;
        var latest = late.MaxBy(delivery => delivery.SecondsLate);
        yield return new()
        {
            Code = WarningCode.LateAtNoCost,
            JobId = latest.DeliveryId,
            Detail = $"{late.Count} of the jobs {(late.Count == 1 ? "ends" : "end")} after `due` at no cost, {latest.DeliveryId} the latest. State `costPerHourLate`, and a weight of tardiness above 0, where that matters.",
        };
    }

    /// <summary>What the schedule costs, and what is proved.</summary>
    public ScheduleObjectiveJson Objective()
    {
        var (value, bound) = (schedule.CostMicros, Math.Min(schedule.BoundMicros, schedule.CostMicros));
        return new()
        {
            Value = value / 1_000_000m,
            Bound = bound / 1_000_000m,
            Gap = Gap.Of(value, bound),
            BoundRule = WireEnum.Text(schedule.BoundRule),
            Terms = ScheduleTermsJson.Of(ScheduleCost.Terms(mapping.Problem, schedule.Jobs)),
        };
    }

    /// <summary>What ended the search.</summary>
    public StoppedBy Ended(OperationContext context) =>
        schedule.Unscheduled.Count == 0 && schedule.BoundMicros >= schedule.CostMicros ? StoppedBy.Proof
        : context.Cancellation.IsCancellationRequested ? StoppedBy.TimeLimit
        : StoppedBy.Effort;
}
