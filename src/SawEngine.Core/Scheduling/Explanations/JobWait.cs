namespace SawEngine.Core.Scheduling.Explanations;

/// <summary>Why a job does not start earlier on its saw.</summary>
/// <param name="Kind">What it waits for.</param>
/// <param name="JobId">The job that it waits for; null where it waits for none.</param>
public sealed record JobWait(WaitKind Kind, string? JobId = null);
