using FluentValidation;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Rules of a job on one saw: a grade where it may run unattended, and what belongs to loads only where there are some.</summary>
public sealed class JobOptionRules : AbstractValidator<JobOptionJson>
{
    public JobOptionRules()
    {
        When(option => option.Grade is not null, () => RuleFor(option => option.Grade!).IsKnownGrade());
        RuleFor(option => option.MayRunUnattended)
            .Must((option, may) => !may || option.Grade is not null)
            .WithFault(FaultCode.GradeRequired, "Whether a job may run unattended depends on what it cuts: state its `grade`.");
        RuleFor(option => option.Loads)
            .Must((option, loads) => loads == 0 || loads <= option.Steps)
            .WithFault(FaultCode.MoreLoadsThanSteps, "There are more loads than steps: each load has at least one step after it.");
        RuleFor(option => option)
            .Must(option => option.Loads == 0 || option.LoadSeconds is not null)
            .WithFault(FaultCode.ValueRequired, "State how long each of the `loads` takes in `loadSeconds`.");
        RuleFor(option => option.LoadSeconds)
            .Must((option, seconds) => option.Loads > 0 || seconds is null)
            .WithFault(FaultCode.LoadsRequired, "State how many `loads` there are: without them `loadSeconds` counts for nothing.");
        RuleFor(option => option.CraneLoads)
            .Must((option, byCrane) => option.Loads > 0 || !byCrane)
            .WithFault(FaultCode.LoadsRequired, "State how many `loads` there are: without them `craneLoads` counts for nothing.");
    }
}
