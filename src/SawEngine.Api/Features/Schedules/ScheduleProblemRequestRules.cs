using FluentValidation;
using FluentValidation.Results;
using SawEngine.Api.Features.Plans;
using SawEngine.Api.Features.Shop;
using SawEngine.Api.Features.Stock;
using SawEngine.Api.Wire;
using SawEngine.Api.Wire.Rules;

namespace SawEngine.Api.Features.Schedules;

/// <summary>Rules of jobs and their shop that bounds on their members cannot state.</summary>
public abstract class ScheduleProblemRequestRules<T> : AbstractValidator<T> where T : ScheduleProblemRequest
{
    protected ScheduleProblemRequestRules()
    {
        RuleFor(request => request.Currency).IsCurrency();
        RuleFor(request => request.TimeZone).IsTimeZone();
        RuleFor(request => request.PlanStart).IsPlanStart();
        this.Unique(request => request.Jobs, job => job.JobId, nameof(ScheduleJobJson.JobId));
        this.Unique(request => request.Grades, grade => grade.GradeId, nameof(GradeJson.GradeId));
        RuleForEach(request => request.Grades).SetValidator(new GradeRules());
        RuleForEach(request => request.Jobs).SetValidator(new ScheduleJobRules());
        RuleFor(request => request.Jobs).Custom((jobs, context) => CheckJobs(context.InstanceToValidate, context));
        RuleFor(request => request.Jobs).Custom((jobs, context) => PrecedenceRules.Check(jobs, context));
        RuleFor(request => request.Jobs).Custom((jobs, context) => CheckRunning(context.InstanceToValidate, context));
        RuleFor(request => request.Previous!).Custom(CheckPrevious).When(request => request.Previous is not null);
        RuleFor(request => request.Shop).SetValidator(new ShopRules());
        RuleFor(request => request.Shop).Custom((shop, context) => context.CheckFirstDays(shop, context.InstanceToValidate.PlanStart));
    }

    protected override bool PreValidate(ValidationContext<T> context, ValidationResult result)
    {
        context.SetMaterials(new([], context.InstanceToValidate.Grades, new(context.InstanceToValidate.LengthUnit)));
        return true;
    }

    private static void CheckJobs(T request, ValidationContext<T> context)
    {
        var steps = request.Jobs.Sum(job => job.Options.Sum(option => (long)option.Steps + option.Loads));
        if (steps > ScheduleLimits.AllSteps)
            context.Fault("", FaultCode.TooMuchWork, $"All jobs on all their saws may have at most {ScheduleLimits.AllSteps} steps and loads, but have {steps}.");
        var blades = new BladesOfSaws(request.Shop, new(request.LengthUnit));
        for (var i = 0; i < request.Jobs.Count; i++)
        {
            var job = request.Jobs[i];
            context.CheckDate(job.Due, request.PlanStart, $"[{i}].{nameof(job.Due)}");
            context.CheckDate(job.Release, request.PlanStart, $"[{i}].{nameof(job.Release)}");
            context.CheckDate(job.Frozen?.Start, request.PlanStart, $"[{i}].{nameof(job.Frozen)}.{nameof(FrozenJson.Start)}");
            if (job.Frozen is { } frozen)
                CheckSaw(frozen.SawId, $"[{i}].{nameof(job.Frozen)}.{nameof(frozen.SawId)}", blades, context);
            for (var j = 0; j < job.Options.Count; j++)
                CheckOption(job.Options[j], $"[{i}].{nameof(job.Options)}[{j}]", blades, context);
        }
    }

    private static void CheckOption(JobOptionJson option, string path, BladesOfSaws blades, ValidationContext<T> context)
    {
        if (CheckSaw(option.SawId, $"{path}.{nameof(option.SawId)}", blades, context) && option.BladeId is { } blade && !blades.Knows(option.SawId, blade))
            context.Fault($"{path}.{nameof(option.BladeId)}", FaultCode.UnknownBlade, $"{Quoted.Text(blade)} is none of the saw's blades.{blades.NearestBlade(option.SawId, blade)}");
    }

    private static bool CheckSaw(string sawId, string path, BladesOfSaws blades, ValidationContext<T> context)
    {
        if (blades.KnowsSaw(sawId))
            return true;
        context.Fault(path, FaultCode.UnknownSaw, $"{Quoted.Text(sawId)} is none of the shop's saws.{blades.NearestSaw(sawId)}");
        return false;
    }

    /// <summary>One job at most is running on a saw.</summary>
    private static void CheckRunning(T request, ValidationContext<T> context)
    {
        var running = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = 0; i < request.Jobs.Count; i++)
        {
            if (request.Jobs[i] is { Frozen: { } frozen } job && frozen.Start <= request.PlanStart && !running.TryAdd(frozen.SawId, job.JobId))
                context.Fault(
                    $"[{i}].{nameof(job.Frozen)}",
                    FaultCode.FrozenJobsOverlap,
                    $"Job {Quoted.Text(running[frozen.SawId])} is running on this saw at `planStart` already: let this one start later, or leave it free.");
        }
    }

    private static void CheckPrevious(PreviousScheduleJson previous, ValidationContext<T> context)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < previous.Jobs.Count; i++)
        {
            var job = previous.Jobs[i];
            var path = $"{nameof(previous.Jobs)}[{i}]";
            if (!seen.Add(job.JobId))
                context.Fault($"{path}.{nameof(job.JobId)}", FaultCode.DuplicateId, $"{Quoted.Text(job.JobId)} stands in the list already; of a job in parts state the first.");
            context.CheckDate(job.Start, context.InstanceToValidate.PlanStart, $"{path}.{nameof(job.Start)}");
            context.CheckDate(job.Finish, context.InstanceToValidate.PlanStart, $"{path}.{nameof(job.Finish)}");
        }
    }
}
