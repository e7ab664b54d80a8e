namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>A share of the time from the start of the plan to the end of a late job. The causes of a job add up to that time.</summary>
/// <param name="Kind">What it is spent on.</param>
/// <param name="Seconds">How long.</param>
/// <param name="JobIds">The jobs that it is spent on, in the order of time; none for other causes.</param>
public sealed record LatenessCause(LatenessCauseKind Kind, long Seconds, IReadOnlyList<string> JobIds);
