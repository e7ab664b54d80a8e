namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>Says why a schedule is as it is.</summary>
public interface IScheduleExplainer
{
    /// <summary>The explanation of a clean schedule. Cancellation leaves out what was not looked for yet: other saws and cures.</summary>
    ScheduleExplanation Explain(ScheduleProblem problem, Schedule schedule, CancellationToken cancellation);
}
