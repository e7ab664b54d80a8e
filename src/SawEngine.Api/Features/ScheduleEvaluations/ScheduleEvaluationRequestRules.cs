using FluentValidation;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Schedules;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.ScheduleEvaluations;

/// <summary>Rules of a request to evaluate a schedule: those of the jobs and their shop, spans that run forward near the start of the plan, and a bound on the work. What else an edit
/// may get wrong is no fault but part of the answer.</summary>
public sealed class ScheduleEvaluationRequestRules : ScheduleProblemRequestRules<ScheduleEvaluationRequest>
{
    public ScheduleEvaluationRequestRules() => RuleFor(request => request.Schedule.Jobs).Custom((jobs, context) => Check(jobs, context));

    private static void Check(IReadOnlyList<EditedJobJson> jobs, ValidationContext<ScheduleEvaluationRequest> context)
    {
        var spans = jobs.Sum(job => (long)job.SetUps.Count + job.Work.Count);
        if (spans > ScheduleLimits.Spans)
            context.Fault("", FaultCode.TooMuchWork, $"All jobs together may have at most {ScheduleLimits.Spans} set-ups and spans of work, but have {spans}.");
        for (var i = 0; i < jobs.Count; i++)
        {
            var job = jobs[i];
            for (var k = 0; k < job.SetUps.Count; k++)
                CheckSpan(job.SetUps[k].Start, job.SetUps[k].Finish, $"[{i}].{nameof(job.SetUps)}[{k}]", context);
            for (var k = 0; k < job.Work.Count; k++)
                CheckSpan(job.Work[k].Start, job.Work[k].Finish, $"[{i}].{nameof(job.Work)}[{k}]", context);
            if (job.Work.Sum(span => (long)span.Steps) > ScheduleLimits.Steps + ScheduleLimits.Loads)
                context.Fault($"[{i}].{nameof(job.Work)}", FaultCode.TooLarge, $"A job has at most {ScheduleLimits.Steps} steps and {ScheduleLimits.Loads} loads.");
        }
    }

    private static void CheckSpan(DateTimeOffset start, DateTimeOffset finish, string path, ValidationContext<ScheduleEvaluationRequest> context)
    {
        context.CheckDate(start, context.InstanceToValidate.PlanStart, $"{path}.{nameof(EditedWorkSpanJson.Start)}");
        context.CheckDate(finish, context.InstanceToValidate.PlanStart, $"{path}.{nameof(EditedWorkSpanJson.Finish)}");
        if (finish < start)
            context.Fault($"{path}.{nameof(EditedWorkSpanJson.Finish)}", FaultCode.SpanEndsBeforeItBegins, "A span does not end before it begins.");
    }
}
