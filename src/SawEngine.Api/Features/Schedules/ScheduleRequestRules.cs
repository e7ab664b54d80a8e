using FluentValidation;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Rules of a request for a schedule that bounds on its members cannot state.</summary>
public sealed class ScheduleRequestRules : AbstractValidator<ScheduleRequest>
{
    public ScheduleRequestRules()
    {
        RuleFor(request => request.Currency).IsCurrency();
        RuleFor(request => request.TimeZone).IsTimeZone();
        RuleFor(request => request.PlanStart).IsPlanStart();
        this.Unique(request => request.Jobs, job => job.JobId, nameof(ScheduleJobJson.JobId));
        RuleForEach(request => request.Jobs).ChildRules(static job => job.Unique(one => one.Options, option => option.SawId, nameof(JobOptionJson.SawId)));
        RuleFor(request => request.Jobs).Custom((jobs, context) => CheckJobs(context.InstanceToValidate, context));
        RuleFor(request => request.Shop).SetValidator(new ShopRules());
        RuleFor(request => request.Shop).Custom((shop, context) => context.CheckFirstDays(shop, context.InstanceToValidate.PlanStart));
    }

    private static void CheckJobs(ScheduleRequest request, ValidationContext<ScheduleRequest> context)
    {
        var steps = request.Jobs.Sum(job => job.Options.Sum(option => (long)option.Steps));
        if (steps > ScheduleLimits.AllSteps)
            context.Fault("", FaultCode.TooMuchWork, $"All jobs on all their saws may have at most {ScheduleLimits.AllSteps} steps, but have {steps}.");
        var blades = new BladesOfSaws(request.Shop, new(request.LengthUnit));
        for (var i = 0; i < request.Jobs.Count; i++)
        {
            context.CheckDate(request.Jobs[i].Due, request.PlanStart, $"[{i}].{nameof(ScheduleJobJson.Due)}");
            context.CheckDate(request.Jobs[i].Release, request.PlanStart, $"[{i}].{nameof(ScheduleJobJson.Release)}");
            for (var j = 0; j < request.Jobs[i].Options.Count; j++)
                CheckOption(request.Jobs[i].Options[j], $"[{i}].{nameof(ScheduleJobJson.Options)}[{j}]", blades, context);
        }
    }

    private static void CheckOption(JobOptionJson option, string path, BladesOfSaws blades, ValidationContext<ScheduleRequest> context)
    {
        if (!blades.KnowsSaw(option.SawId))
            context.Fault($"{path}.{nameof(JobOptionJson.SawId)}", FaultCode.UnknownSaw, $"{Quoted.Text(option.SawId)} is none of the shop's saws.{blades.NearestSaw(option.SawId)}");
        else if (option.BladeId is { } blade && !blades.Knows(option.SawId, blade))
            context.Fault($"{path}.{nameof(JobOptionJson.BladeId)}", FaultCode.UnknownBlade, $"{Quoted.Text(blade)} is none of the saw's blades.{blades.NearestBlade(option.SawId, blade)}");
    }
}
