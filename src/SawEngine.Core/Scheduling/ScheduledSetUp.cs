namespace SawEngine.Core.Scheduling;

/// <summary>One set-up part with its interval in seconds since the start of the plan; it lies in one window.</summary>
/// <param name="Kind">See <see cref="SetUps.SetUpRules"/>.</param>
/// <param name="Start">First second.</param>
/// <param name="Finish">Second after the last.</param>
public sealed record ScheduledSetUp(string Kind, long Start, long Finish);
