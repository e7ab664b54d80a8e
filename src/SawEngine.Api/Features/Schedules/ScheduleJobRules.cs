using FluentValidation;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Rules of a job by itself.</summary>
public sealed class ScheduleJobRules : AbstractValidator<ScheduleJobJson>
{
    public ScheduleJobRules()
    {
        this.Unique(job => job.Options, option => option.SawId, nameof(JobOptionJson.SawId));
        RuleForEach(job => job.Options).SetValidator(new JobOptionRules());
        RuleFor(job => job.Options)
            .Must((job, options) => job.MostParts == 1 || options.Select(JobSteps.Count).Distinct().Count() <= 1)
            .WithFault(FaultCode.StepsDiffer, "A job that may be split has as many steps, loads among them, on each of its saws, so that any of them can go on where another has stopped.");
    }
}
