using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Operations;
using SawEngine.Api.Wire;
using SawEngine.Core.Scheduling;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>Writes what was found of an edited schedule.</summary>
internal sealed class ScheduleEvaluationAnswer(
    ScheduleEvaluationRequest request, ScheduleMapping mapping, EditedSchedule edited, IReadOnlyList<FoundScheduleViolation> violations, Schedule? engine)
{
    private const int RatioDecimals = 6;

    private decimal Value => edited.Schedule.CostMicros / 1_000_000m;

    public ScheduleEvaluationResponse Write(OperationContext context)
    {
        var rows = new ScheduleRows(request, mapping, edited.Jobs);
        return new()
        {
            RequestDigest = context.RequestDigest,
            LengthUnit = WireEnum.Text(request.LengthUnit),
            Currency = request.Currency,
            TimeZone = request.TimeZone,
            IsClean = violations.Count == 0,
            Violations = [.. violations.Take(Limits.ViolationsReported).Select(Violation)],
            ViolationCount = violations.Count,
            TimedByEngine = edited.IsTimed,
            Cost = new() { Value = Value, Terms = ScheduleTermsJson.Of(edited.Terms) },
            Totals = rows.Totals(),
            Jobs = rows.Jobs(),
            Saws = rows.Saws(),
            Unscheduled = [.. edited.NoRoom.Select(job => new UnscheduledJson { JobId = job.JobId, Reason = job.Reason })],
            Changes = ScheduleChanges.Of(request, mapping, edited.Jobs),
            Comparison = engine is null ? null : Comparison(engine, context),
            Defaults = mapping.Defaults,
            Warnings = context.Warnings,
            Timing = new() { TotalMs = context.ElapsedMs },
        };
    }

    private static ScheduleViolationJson Violation(FoundScheduleViolation violation) =>
        new() { Pointer = violation.Pointer, Code = violation.Code, Detail = Quoted.Plain(violation.Detail) };

    private ScheduleComparisonJson Comparison(Schedule own, OperationContext context)
    {
        var (answer, totals) = (new ScheduleAnswer(request, mapping, own), new ScheduleRows(request, mapping, own.Jobs).Totals());
        var objective = answer.Objective();
        return new()
        {
            Status = Completion.Text(totals.Scheduled, totals.Jobs),
            Objective = objective,
            Totals = totals,
            Difference = Value - objective.Value,
            Ratio = objective.Value == 0 ? null : decimal.Round(Value / objective.Value, RatioDecimals, MidpointRounding.ToEven),
            StoppedBy = WireEnum.Text(answer.Ended(context)),
        };
    }
}
