namespace SawEngine.Solvers.Scheduling;

/// <summary>A delivery with its jobs by index.</summary>
internal sealed record Promise(long? Due, long CostMicrosPerHourLate, int[] Jobs);
