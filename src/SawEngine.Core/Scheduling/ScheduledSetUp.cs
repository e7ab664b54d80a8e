namespace SawEngine.Core.Scheduling;

/// <summary>One set-up part with its interval in seconds since the start of the plan; it lies in attended time without a break.</summary>
/// <param name="Kind">See <see cref="SetUps.SetUpRules"/>.</param>
/// <param name="Start">First second.</param>
/// <param name="Finish">Second after the last.</param>
/// <param name="OperatorId">Whose hands are busy with it; null where the saw has no operators of its own.</param>
/// <param name="MountedLife">Remaining life of the blade that is mounted, in billionths; null where none is.</param>
public sealed record ScheduledSetUp(string Kind, long Start, long Finish, string? OperatorId = null, long? MountedLife = null);
