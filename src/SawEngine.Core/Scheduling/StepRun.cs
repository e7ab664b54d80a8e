namespace SawEngine.Core.Scheduling;

/// <summary>A number of equal steps that follow one another. A step is not interrupted; between two steps the saw may stand still over a break.</summary>
/// <param name="Milliseconds">Duration of one step.</param>
/// <param name="Count">Number of steps, at least 1.</param>
/// <param name="BladeShare">Share of a new blade's life that one step uses, in billionths (0 for handling). At most 1e9: a longer cut has no blade.</param>
/// <param name="Kind">What it asks of the people at the saw.</param>
public readonly record struct StepRun(long Milliseconds, int Count, long BladeShare = 0, StepKind Kind = StepKind.Cut);
