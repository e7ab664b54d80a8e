namespace SawEngine.Core.Scheduling;

/// <summary>A span in which a saw can be attended at an extra price.</summary>
/// <param name="Window">The span; it overlaps no regular window of the saw and may touch one.</param>
/// <param name="CostMicrosPerSecond">Extra cost of each second of set-up and work in it, in millionths of the currency, not negative.</param>
public readonly record struct OvertimeWindow(TimeWindow Window, long CostMicrosPerSecond);
